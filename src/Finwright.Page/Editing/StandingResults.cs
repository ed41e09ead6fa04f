using Finwright.Workshop.Comparing;

namespace Finwright.Page.Editing;

/// <summary>What is known of an open design as lines that can be held against those of another.</summary>
public static class StandingResults
{
    /// <summary>The lines; nothing that speaks of the design before the last change.</summary>
    /// <param name="standing">The design.</param>
    /// <returns>The lines; null when not even its shape is known.</returns>
    public static FinResults? Of(Standing standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        if (standing.Shape is not { } shape || standing.ShapeVersion != standing.Version)
            return null;
        FinResults results = FinResults.Of(shape).Only(ResultGroup.Shape);
        if (standing.Sailing is { } sailing && !standing.SailingIsOld)
            results = results.With(FinResults.Of(sailing), ResultGroup.Water, ResultGroup.Strength, ResultGroup.Bench, ResultGroup.Verdicts);
        if (standing.Made is { } made && !standing.MadeIsOld)
        {
            FinResults making = FinResults.Of(made);
            FinResults all = results.With(making, ResultGroup.Print, ResultGroup.Pour, ResultGroup.Cure, ResultGroup.Plan);
            // Each of both knows verdicts that the other does not.
            IEnumerable<ResultLine> verdicts = making.Lines.Where(line => line.Group is ResultGroup.Verdicts && all[line.Key] is null);
            results = all with { Lines = [.. all.Lines, .. verdicts] };
        }

        return results;
    }

    /// <summary>What differs; verdicts only where both have one.</summary>
    /// <param name="old">The other design.</param>
    /// <param name="now">The open one.</param>
    public static IReadOnlyList<ResultChange> Changes(FinResults old, FinResults now) =>
        [.. ResultDifference.Of(old, now).Where(change => change.Group is not ResultGroup.Verdicts || change is { Old: not null, New: not null })];

    /// <summary>Keys of the numbers that a maker looks at first, in the order of the job.</summary>
    public static IReadOnlyList<string> First { get; } =
    [
        "shape.area", "shape.span", "shape.aspect_ratio", "shape.rake", "shape.leading_edge_sweep", "shape.root.thickness", "shape.tip.thickness",
        "water.getting_going.share_of_stall", "water.cruise.leeway", "water.cruise.drag", "water.cruise.lift_over_drag", "water.cruise.stall_leeway", "water.top_speed.leeway",
        "strength.cruise.tip_deflection", "strength.cruise.tip_twist", "strength.overload.reserve", "bench.load.mid_chord",
        "print.plastic", "print.time", "pour.poured", "cure.peak", "plan.fin_mass", "plan.cost",
    ];
}
