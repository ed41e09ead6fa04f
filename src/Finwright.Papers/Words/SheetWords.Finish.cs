using Finwright.Design;

namespace Finwright.Papers.Words;

/// <content>Joining, sanding and the box.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter on the strip.</summary>
    public abstract string Strip { get; }

    /// <summary>Its sentence.</summary>
    public abstract string StripSentence(string sheet, string overlap, string overhang);

    /// <summary>What the picture shows.</summary>
    public abstract string StripCaption { get; }

    /// <summary>Cut it.</summary>
    public abstract StepWords CutStrip(string length, string width, string over);

    /// <summary>Clean the slot.</summary>
    public abstract StepWords ClearSlot(string width, string depth);

    /// <summary>Roughen and wipe.</summary>
    public abstract StepWords RoughenStrip { get; }

    /// <summary>Bond it.</summary>
    public abstract StepWords BondStrip { get; }

    /// <summary>Trim it.</summary>
    public abstract StepWords TrimStrip { get; }

    /// <summary>Name of the chapter on base and blade.</summary>
    public abstract string Join { get; }

    /// <summary>Its sentence.</summary>
    public abstract string JoinSentence(Fixing fixing, bool isBonded);

    /// <summary>Roughen the faces.</summary>
    public abstract StepWords RoughenFaces { get; }

    /// <summary>Bond base and blade.</summary>
    public abstract StepWords BondBase { get; }

    /// <summary>Clamp with rods.</summary>
    public abstract StepWords ClampRods(string torques);

    /// <summary>Put them together without bond.</summary>
    public abstract StepWords JoinDry { get; }

    /// <summary>Look whether it stands straight.</summary>
    public abstract StepWords LookStraight { get; }

    /// <summary>Name of the chapter.</summary>
    public abstract string Sand { get; }

    /// <summary>Its sentence.</summary>
    public abstract string SandSentence(string starboard, string port);

    /// <summary>A finish.</summary>
    public abstract string FinishOf(Finish finish);

    /// <summary>Wash.</summary>
    public abstract StepWords Wash { get; }

    /// <summary>Sand to shape.</summary>
    public abstract StepWords SandShape { get; }

    /// <summary>Check by the templates.</summary>
    public abstract StepWords CheckSections { get; }

    /// <summary>Fill what is hollow.</summary>
    public abstract StepWords FillHollows { get; }

    /// <summary>Sand fair.</summary>
    public abstract StepWords SandFair { get; }

    /// <summary>Sand wet.</summary>
    public abstract StepWords SandWet { get; }

    /// <summary>The finish of a side.</summary>
    public abstract StepWords FinishSide(Side side, Finish finish);

    /// <summary>The trailing edge.</summary>
    public abstract StepWords TrailingEdge(string thickness);

    /// <summary>The trailing edge of a strip.</summary>
    public abstract StepWords StripEdge(string thickness);

    /// <summary>The leading edge.</summary>
    public abstract StepWords LeadingEdge { get; }

    /// <summary>Name of the chapter.</summary>
    public abstract string Fit { get; }

    /// <summary>Its sentence.</summary>
    public abstract string FitSentence { get; }

    /// <summary>Try the gauge again.</summary>
    public abstract StepWords GaugeAgain { get; }

    /// <summary>Find where it touches.</summary>
    public abstract StepWords Soap { get; }

    /// <summary>How it must sit.</summary>
    public abstract StepWords Knock { get; }

    /// <summary>What to do when it sits badly.</summary>
    public abstract string FitHead { get; }

    /// <summary>What is seen.</summary>
    public abstract string SymptomColumn { get; }

    /// <summary>What to do.</summary>
    public abstract string CureColumn { get; }

    /// <summary>What is seen and what to do, row by row.</summary>
    public abstract IReadOnlyList<(string Symptom, string Cure)> FitTable { get; }

    /// <summary>Allowances this base was made with.</summary>
    public abstract string Allowances(string length, string thickness, string depth);

    /// <summary>Blanks for better allowances.</summary>
    public abstract IReadOnlyList<string> AllowanceBlanks { get; }

    /// <summary>Choose bolts.</summary>
    public abstract StepWords BoltLengths { get; }

    /// <summary>A bolt.</summary>
    public abstract string BoltColumn { get; }

    /// <summary>The part inside the fin.</summary>
    public abstract string InsideColumn { get; }

    /// <summary>The board above the base.</summary>
    public abstract string BoardColumn { get; }

    /// <summary>Both together.</summary>
    public abstract string BuyColumn { get; }

    /// <summary>How hard.</summary>
    public abstract string TorqueColumn { get; }

    /// <summary>Why not harder.</summary>
    public abstract string TorqueLimitColumn { get; }

    /// <summary>What limits a torque.</summary>
    public abstract string LimitOf(Strength.Joints.TorqueLimit limit);

    /// <summary>No torque does both.</summary>
    public abstract string NoTorque(string least, string greatest);

    /// <summary>Tighten.</summary>
    public abstract StepWords Tighten(string byHand);

    /// <summary>Torques were not worked out.</summary>
    public abstract string TorqueUnknown { get; }

    /// <summary>Seal the bolt heads.</summary>
    public abstract StepWords SealBolts(string washer);

    /// <summary>No bolts from the deck.</summary>
    public abstract StepWords NoBolts { get; }

    /// <summary>Pin and screw of a long slot.</summary>
    public abstract StepWords PinAndScrew { get; }
}
