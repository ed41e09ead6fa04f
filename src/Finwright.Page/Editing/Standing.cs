using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Page.Editing;

/// <summary>How far a design that is open has been worked out.</summary>
public enum Reach
{
    /// <summary>Only its shape.</summary>
    Shape,

    /// <summary>Water and strength, with sections solved before: good while the hand moves.</summary>
    Quick,

    /// <summary>Water and strength in full.</summary>
    Sailing,

    /// <summary>Parts, print and pour as well.</summary>
    Poured,

    /// <summary>Everything.</summary>
    Everything,
}

/// <summary>What is being worked out.</summary>
/// <param name="Words">In words.</param>
/// <param name="Fraction">Share that is done, 0 to 1.</param>
public sealed record WorkUnderWay(string Words, double Fraction);

/// <summary>A verdict, and whether the design was changed since.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="IsOld">Whether it speaks of the design before the last change.</param>
/// <param name="IsQuick">Whether it rests on sections solved before the change.</param>
public sealed record StandingVerdict(Verdict Verdict, bool IsOld, bool IsQuick);

/// <summary>An open design at one moment, with all that is known of it. Never changed; every change makes a new one.</summary>
public sealed record Standing
{
    /// <summary>The design.</summary>
    public required FinDesign Design { get; init; }

    /// <summary>Counts the changes: a higher one is later.</summary>
    public required long Version { get; init; }

    /// <summary>What is to be said against the design and its shape, worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Its shape; that of the last design that could be drawn when this one cannot.</summary>
    public AssessmentResult? Shape { get; init; }

    /// <summary>The blade's skin, for looking at: coarser than the one that is printed.</summary>
    public TriangleMesh? Skin { get; init; }

    /// <summary>The version that <see cref="Shape"/> and <see cref="Skin"/> show.</summary>
    public long ShapeVersion { get; init; }

    /// <summary>Water and strength; null before they were first worked out.</summary>
    public AssessmentResult? Sailing { get; init; }

    /// <summary>The version that <see cref="Sailing"/> shows.</summary>
    public long SailingVersion { get; init; }

    /// <summary>Whether <see cref="Sailing"/> rests on sections solved before the change.</summary>
    public bool SailingIsQuick { get; init; }

    /// <summary>Parts, print, pour and perhaps cure; null before they were first worked out.</summary>
    public AssessmentResult? Made { get; init; }

    /// <summary>The version that <see cref="Made"/> shows.</summary>
    public long MadeVersion { get; init; }

    /// <summary>How far this version has come.</summary>
    public Reach Reach { get; init; }

    /// <summary>What is being worked out; null when nothing is.</summary>
    public WorkUnderWay? Work { get; init; }

    /// <summary>Whether the maker stopped the work.</summary>
    public bool IsStopped { get; init; }

    /// <summary>Whether print, pour and cure wait to be asked for.</summary>
    public bool IsMakingOnRequest { get; init; }

    /// <summary>What went wrong in the program itself; null when nothing did.</summary>
    public string? Fault { get; init; }

    /// <summary>Whether water and strength speak of the design before the last change.</summary>
    public bool SailingIsOld => SailingVersion < Version;

    /// <summary>Whether print, pour and cure speak of the design before the last change.</summary>
    public bool MadeIsOld => MadeVersion < Version;

    /// <summary>All verdicts, worst first.</summary>
    public IReadOnlyList<StandingVerdict> Verdicts
    {
        get
        {
            IEnumerable<StandingVerdict> sailing = Sailing is null ? [] : Sailing.Verdicts.Concat(Sailing.StrengthVerdicts).Select(verdict => new StandingVerdict(verdict, SailingIsOld, SailingIsQuick));
            MakingResult? made = Made is null ? null : MakingResult.Of(Made);
            IEnumerable<StandingVerdict> making = made is null ? [] : made.PrintVerdicts.Concat(made.PourVerdicts).Concat(made.CureVerdicts).Select(verdict => new StandingVerdict(verdict, MadeIsOld, IsQuick: false));
            return [.. sailing.Concat(making).OrderBy(own => own.Verdict.State)];
        }
    }
}
