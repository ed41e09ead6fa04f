namespace Finwright.Papers.Words;

/// <content>Dry fit, bonding and sealing.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Bonding { get; }

    /// <summary>Its sentence.</summary>
    public abstract string BondingSentence { get; }

    /// <summary>Clean the parts.</summary>
    public abstract StepWords CleanParts { get; }

    /// <summary>Try bolts in their nuts.</summary>
    public abstract StepWords TryBolts(string bore);

    /// <summary>Keep resin out of bores and threads.</summary>
    public abstract StepWords GreaseThreads { get; }

    /// <summary>Cut rods.</summary>
    public abstract StepWords CutRods(string lengths);

    /// <summary>Try rods.</summary>
    public abstract StepWords TryRods { get; }

    /// <summary>Bond rods.</summary>
    public abstract StepWords BondRods { get; }

    /// <summary>Put the pieces together dry.</summary>
    public abstract StepWords TryPieces(int pieces, string dowels);

    /// <summary>No dowels.</summary>
    public abstract string NoDowels { get; }

    /// <summary>Bond the pieces.</summary>
    public abstract StepWords BondPieces(string gap);

    /// <summary>Try base and blade together.</summary>
    public abstract StepWords TryBase { get; }

    /// <summary>Try lids.</summary>
    public abstract StepWords TryLids { get; }

    /// <summary>Let the bond harden.</summary>
    public abstract StepWords BondHardens { get; }

    /// <summary>Name of the chapter.</summary>
    public abstract string Sealing { get; }

    /// <summary>Its sentence.</summary>
    public abstract string SealingSentence { get; }

    /// <summary>Close seams, bores and slot.</summary>
    public abstract StepWords TapeOpenings(bool hasSlot);

    /// <summary>First coat.</summary>
    public abstract StepWords FirstCoat { get; }

    /// <summary>Second coat.</summary>
    public abstract StepWords SecondCoat { get; }

    /// <summary>Drill the feeds.</summary>
    public abstract StepWords DrillFeeds { get; }

    /// <summary>Look for leaks.</summary>
    public abstract StepWords LeakTest { get; }

    /// <summary>Dry and mend.</summary>
    public abstract StepWords MendLeaks { get; }
}
