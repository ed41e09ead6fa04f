using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;

namespace Finwright.Assessment;

/// <summary>Everything that was worked out about a design, as far as it came.</summary>
public sealed record AssessmentResult
{
    /// <summary>The design; null when its file could not be read.</summary>
    public required FinDesign? Design { get; init; }

    /// <summary>SHA-256 over the design's content in its canonical form, lower-case hexadecimal; empty when the input is wrong. The layout of the file does not matter.</summary>
    public required string DesignHash { get; init; }

    /// <summary>What was found, worst first, then in the order of the work; with lines where the design was read from text.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Whether the design file itself is wrong, so that no geometry was tried.</summary>
    public required bool InputIsWrong { get; init; }

    /// <summary>The blade as a smooth surface; null when it could not be drawn.</summary>
    public Blade? Blade { get; init; }

    /// <summary>Measures of the outline; null without a blade.</summary>
    public Planform? Planform { get; init; }

    /// <summary>Chord, thickness and twist along the span, root first; empty without a blade.</summary>
    public IReadOnlyList<SpanStation> Stations { get; init; } = [];

    /// <summary>The blade's closed skin, metres; null when it was not reached.</summary>
    public TriangleMesh? Skin { get; init; }

    /// <summary>The fin's solids with their features and hardware; null when they were not reached.</summary>
    public FinSolids? Solids { get; init; }

    /// <summary>The printed parts; null when they were not reached.</summary>
    public PartPlan? Parts { get; init; }

    /// <summary>What the sections do; null when it was not reached.</summary>
    public FinPolars? Polars { get; init; }

    /// <summary>What the fin does when it sails; null when it was not reached.</summary>
    public FinAfloat? Afloat { get; init; }

    /// <summary>The fin as a structure; null when it was not reached.</summary>
    public FinBuilt? Built { get; init; }

    /// <summary>How the fin swings; null when it was not reached.</summary>
    public FinVibration? Vibration { get; init; }

    /// <summary>What the bench should show; null when it was not reached.</summary>
    public FinOnBench? Bench { get; init; }

    /// <summary>What the loads of sailing do to the fin; null when it was not reached.</summary>
    public FinLoaded? Loaded { get; init; }

    /// <summary>How the parts are printed; null when it was not reached.</summary>
    public FinPrinted? Printed { get; init; }

    /// <summary>How they are poured; null when it was not reached.</summary>
    public FinPoured? Poured { get; init; }

    /// <summary>How they cure; null when it was not reached.</summary>
    public FinCured? Cured { get; init; }

    /// <summary>What all of it takes; null when it was not reached.</summary>
    public FinPlan? Plan { get; init; }

    /// <summary>How the fin stands to what is asked of it in the water, worst first; empty when it was not reached.</summary>
    public IReadOnlyList<Verdict> Verdicts { get; init; } = [];

    /// <summary>Whether it bends, twists, opens or breaks, worst first; empty when it was not reached.</summary>
    public IReadOnlyList<Verdict> StrengthVerdicts { get; init; } = [];

    /// <summary>Everything to buy and cut, as far as the work came.</summary>
    public IReadOnlyList<HardwareItem> Hardware => Solids is null || Design is null ? [] : HardwareList.Of(Solids, Parts, Design.Parts);

    /// <summary>Whether anything says that the fin cannot be made as described.</summary>
    public bool HasErrors => Findings.Any(finding => finding.IsError);
}
