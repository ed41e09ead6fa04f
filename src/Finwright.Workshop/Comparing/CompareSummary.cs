using Finwright.Assessment.Packing;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Comparing;

/// <summary>
/// Two fins held side by side, as <c>finwright compare --json</c> gives it. Field names are these properties in lower case with underscores; numbers are in the unit that stands beside them.
/// </summary>
public sealed record CompareSummary
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = "finwright-compare";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>The first fin.</summary>
    public required ComparedSideSummary First { get; init; }

    /// <summary>The second fin.</summary>
    public required ComparedSideSummary Second { get; init; }

    /// <summary>Fields of the design that differ, in the order of the design file.</summary>
    public required IReadOnlyList<DesignChange> Inputs { get; init; }

    /// <summary>Results that differ, verdicts that changed their state first.</summary>
    public required IReadOnlyList<ResultChangeSummary> Results { get; init; }

    /// <summary>What was not worked out of both, and so not compared.</summary>
    public required IReadOnlyList<ResultGroup> NotCompared { get; init; }

    /// <summary>What was measured of both builds; empty unless both are builds.</summary>
    public required IReadOnlyList<MeasuredPair> Measured { get; init; }

    /// <summary>Compares two fins.</summary>
    /// <param name="store">The store.</param>
    /// <param name="first">The first.</param>
    /// <param name="second">The second.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static CompareSummary Of(WorkshopStore store, ComparedSide first, ComparedSide second, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        IReadOnlyList<DesignChange> inputs = DesignDifference.Of(first.Design, second.Design);
        IReadOnlyList<ResultChange> results = ResultDifference.Of(first.Results, second.Results);
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Sentence = Said(inputs, results),
            First = ComparedSideSummary.Of(store, first, programVersion),
            Second = ComparedSideSummary.Of(store, second, programVersion),
            Inputs = inputs,
            Results = [.. results.Select(ResultChangeSummary.Of)],
            NotCompared = [.. Enum.GetValues<ResultGroup>().Where(group => !first.Results.Groups.Contains(group) || !second.Results.Groups.Contains(group))],
            Measured = first.Review is { } one && second.Review is { } other ? MeasuredDifference.Of(one, other) : [],
        };
    }

    private static string Said(IReadOnlyList<DesignChange> inputs, IReadOnlyList<ResultChange> results)
    {
        int turned = results.Count(change => change.TurnsVerdict);
        string changed = inputs.Count == 0 ? "The designs are the same" : Counted(inputs.Count, "input") + (inputs.Count == 1 ? " differs" : " differ");
        string follows = results.Count == 0 ? "no result differs" : Counted(results.Count, "result") + (results.Count == 1 ? " differs" : " differ");
        return $"{changed}; {follows}.{(turned == 0 ? "" : $" {Counted(turned, "verdict")} changed {(turned == 1 ? "its" : "their")} state.")}";

        static string Counted(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";
    }
}

/// <summary>One of two fins.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Label">How a person calls it.</param>
/// <param name="Name">Name of the fin in its design.</param>
/// <param name="DesignSha256">SHA-256 of the design's content.</param>
/// <param name="Problem">Why results are missing, and what to do; null when none are.</param>
/// <param name="Used">What earlier builds taught that went into the results.</param>
/// <param name="Review">The build held against its prediction; null for a design.</param>
public sealed record ComparedSideSummary(ComparedKind Kind, string Label, string Name, string DesignSha256, string? Problem, IReadOnlyList<LearnedSummary> Used, ReviewSummary? Review)
{
    internal static ComparedSideSummary Of(WorkshopStore store, ComparedSide side, string programVersion) => new(
        side.Kind, side.Label, side.Design.Name, side.Results.DesignSha256, side.Results.Problem, [.. side.Used.Ratios.Select(ratio => LearnedSummary.Of(store, ratio))],
        side.Review is { } review ? ReviewSummary.Of(store, review, programVersion) : null);
}

/// <summary>A result that differs.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Unit of the numbers.</param>
/// <param name="Old">Number of the first; null when it has none.</param>
/// <param name="OldWord">Word of the first, or the state of its verdict.</param>
/// <param name="OldShown">The first as a person reads it; empty when it is missing.</param>
/// <param name="New">Number of the second.</param>
/// <param name="NewWord">Word of the second.</param>
/// <param name="NewShown">The second as a person reads it.</param>
/// <param name="Change">Change of the number.</param>
/// <param name="Percent">The same in per cent of the first.</param>
/// <param name="TurnsVerdict">Whether a verdict changed its state.</param>
public sealed record ResultChangeSummary(
    string Key, ResultGroup Group, string Name, string Unit, double? Old, string? OldWord, string OldShown, double? New, string? NewWord, string NewShown, double? Change, double? Percent, bool TurnsVerdict)
{
    internal static ResultChangeSummary Of(ResultChange change) => new(
        change.Key, change.Group, change.Name, (change.New ?? change.Old)!.Unit, change.Old?.Value, change.Old?.Word, change.Old?.Shown ?? "", change.New?.Value, change.New?.Word, change.New?.Shown ?? "",
        change.Change is double by ? Rounded.Digits(by) : null, change.Percent is double percent ? Rounded.Digits(percent) : null, change.TurnsVerdict);
}
