namespace Finwright.Bench.References;

/// <summary>One line of a comparison.</summary>
/// <param name="What">What was worked out.</param>
/// <param name="Size">How large the case is.</param>
/// <param name="Unit">Unit of both results; empty for a number without one.</param>
/// <param name="Ours">Our result.</param>
/// <param name="Theirs">The reference's.</param>
/// <param name="Difference">How far apart they are; negative never.</param>
/// <param name="DifferenceUnit">Its unit; empty for a share of the result.</param>
/// <param name="Limit">The difference above which they disagree, in the same unit.</param>
/// <param name="OurTimes">How long ours took; null where another line of the same work has it.</param>
/// <param name="TheirTimes">How long the reference took.</param>
internal sealed record ComparisonRow(
    string What, string Size, string Unit, double Ours, double Theirs, double Difference, string DifferenceUnit, double Limit, Times? OurTimes, Times? TheirTimes)
{
    /// <summary>Whether both agree; a difference that is no number is none.</summary>
    public bool Agrees => Difference <= Limit;

    /// <summary>A line whose difference is a share of the reference's result.</summary>
    public static ComparisonRow Relative(string what, string size, string unit, double ours, double theirs, double limit, Times? ourTimes, Times? theirTimes) =>
        new(what, size, unit, ours, theirs, Math.Abs(ours - theirs) / Math.Abs(theirs), "", limit, ourTimes, theirTimes);
}

/// <summary>A comparison as it was run.</summary>
/// <param name="Title">What is compared.</param>
/// <param name="Reference">What it is compared with.</param>
/// <param name="Rows">The lines.</param>
internal sealed record Comparison(string Title, string Reference, IReadOnlyList<ComparisonRow> Rows);
