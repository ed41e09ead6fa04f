using Finwright.Strength.Plates;
using Finwright.Water.Lifting;

namespace Finwright.Assessment.Loaded;

/// <summary>A fin in the shape that its own load gives it.</summary>
/// <param name="Status">How it came out.</param>
/// <param name="Flow">What the water does; of the straight fin when the search did not settle.</param>
/// <param name="Loads">Forces on the blade.</param>
/// <param name="Plate">The blade under them.</param>
/// <param name="Passes">Rounds between water and blade.</param>
internal sealed record BentFin(LoadedStatus Status, LiftingResult Flow, IReadOnlyList<PlateLoad> Loads, PlateSolution Plate, int Passes);

/// <summary>Brings the water's load and the blade's shape together.</summary>
/// <remarks>
/// In turn the blade bends under the load and the water meets the bent blade, while the leeway follows the side force asked for. At a fixed side force only the spread of the load changes, and a few rounds
/// do; at a fixed leeway the rounds gain by dynamic pressure over that of divergence and stop short of it.
/// </remarks>
internal static class ShapeUnderLoad
{
    // Shape to a thousandth, side force to a hundred-thousandth: far below what either is worth.
    private const double ShapeAccuracy = 1e-3, ForceAccuracy = 1e-5;
    private const int MostPasses = 40;

    /// <summary>The shape at which the fin carries a side force.</summary>
    /// <param name="surface">The straight fin in the water.</param>
    /// <param name="plate">The blade.</param>
    /// <param name="straight">The straight fin carrying the side force.</param>
    public static BentFin Carrying(LiftingSurface surface, PlateModel plate, LeewayResult straight)
    {
        LiftingResult flow = straight.Result;
        IReadOnlyList<PlateLoad> loads = StripPressure.Of(flow, surface);
        if (straight.Status is not (LeewayStatus.Found or LeewayStatus.FoundPastOnset))
        {
            double factor = flow.SideForce != 0 ? straight.Asked / flow.SideForce : 1;
            loads = StripPressure.Times(loads, factor);
            return new(LoadedStatus.NotCarried, flow, loads, plate.Solve(loads), 0);
        }

        PlateSolution shape = plate.Solve(loads);
        if (shape.Status is not PlateStatus.Solved)
            return new(LoadedStatus.NotSolved, flow, loads, shape, 0);
        double leeway = flow.Flow.Leeway, slope = leeway != 0 ? flow.SideForce / leeway : 0, before = shape.MaximumDeflection;
        for (int pass = 1; pass <= MostPasses; pass++)
        {
            LiftingSurface bent = surface.Bent(shape.Deflection);
            LiftingResult next = bent.Solve(flow.Flow with { Leeway = leeway });
            if (next.Status is LiftingStatus.NotConverged or LiftingStatus.Singular)
                return new(LoadedStatus.NotSettled, straight.Result, loads, shape, pass);
            double missing = straight.Asked - next.SideForce;
            bool carries = Math.Abs(missing) <= ForceAccuracy * Math.Abs(straight.Asked);
            flow = next;
            loads = StripPressure.Of(flow, bent);
            shape = plate.Solve(loads);
            if (carries && Math.Abs(shape.MaximumDeflection - before) <= ShapeAccuracy * Math.Abs(before))
                return new(LoadedStatus.Settled, flow, loads, shape, pass);
            before = shape.MaximumDeflection;
            if (!(Math.Abs(slope) > 0))
                break;
            leeway = Math.Clamp(leeway + missing / slope, -StallLimits.SearchLimit, StallLimits.SearchLimit);
        }

        return new(LoadedStatus.NotSettled, straight.Result, loads, shape, MostPasses);
    }

    /// <summary>The shape at a given leeway; the side force becomes what it becomes.</summary>
    /// <param name="surface">The straight fin in the water.</param>
    /// <param name="plate">The blade.</param>
    /// <param name="straight">The straight fin at that leeway.</param>
    public static BentFin At(LiftingSurface surface, PlateModel plate, LiftingResult straight)
    {
        LiftingResult flow = straight;
        IReadOnlyList<PlateLoad> loads = StripPressure.Of(flow, surface);
        PlateSolution shape = plate.Solve(loads);
        if (shape.Status is not PlateStatus.Solved)
            return new(LoadedStatus.NotSolved, flow, loads, shape, 0);
        for (int pass = 1; pass <= MostPasses; pass++)
        {
            double before = shape.MaximumDeflection;
            LiftingSurface bent = surface.Bent(shape.Deflection);
            LiftingResult next = bent.Solve(straight.Flow);
            if (next.Status is LiftingStatus.NotConverged or LiftingStatus.Singular)
                break;
            flow = next;
            loads = StripPressure.Of(flow, bent);
            shape = plate.Solve(loads);
            if (Math.Abs(shape.MaximumDeflection - before) <= ShapeAccuracy * Math.Abs(before))
                return new(LoadedStatus.Settled, flow, loads, shape, pass);
        }

        return new(LoadedStatus.NotSettled, straight, loads, shape, MostPasses);
    }
}
