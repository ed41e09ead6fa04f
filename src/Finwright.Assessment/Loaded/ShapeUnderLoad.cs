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
/// In turn the blade bends under the load and the water meets the bent blade. A blade that washes out answers a load with less load and would swing from round to round, one near divergence creep;
/// Aitken's step (Irons and Tuck, 1969, Int. J. Numer. Methods Eng. 1, 275; from memory) on the loads damps the one and speeds up the other.
/// </remarks>
internal static class ShapeUnderLoad
{
    // Loads to a two-thousandth of their size, side force to a hundred-thousandth: far below what either is worth.
    private const double LoadAccuracy = 5e-4, ForceAccuracy = 1e-5;
    private const int MostPasses = 40, MostLeewaySteps = 12;

    // First share of a step, and the least and greatest that Aitken's rule may ask for.
    private const double FirstStep = 0.7, LeastStep = 0.05, GreatestStep = 1.5;

    // A fin whose tip goes this far is outside every assumption, spans.
    private const double FarthestShare = 0.5;

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

        double leeway = flow.Flow.Leeway, slope = leeway != 0 ? flow.SideForce / leeway : 0;
        return Settle(surface, plate, flow, bent =>
        {
            LiftingResult found = WithForce(bent, flow, straight.Asked, leeway, slope);
            leeway = found.Flow.Leeway;
            return Math.Abs(found.SideForce - straight.Asked) <= ForceAccuracy * Math.Abs(straight.Asked) ? found : null;
        });
    }

    /// <summary>The shape at the leeway of the straight fin; the side force becomes what it becomes.</summary>
    /// <param name="surface">The straight fin in the water.</param>
    /// <param name="plate">The blade.</param>
    /// <param name="straight">The straight fin at that leeway.</param>
    public static BentFin At(LiftingSurface surface, PlateModel plate, LiftingResult straight) => Settle(surface, plate, straight, bent => bent.Solve(straight.Flow));

    // The flow's own question is answered by the caller: null, or not converged, ends the search.
    private static BentFin Settle(LiftingSurface surface, PlateModel plate, LiftingResult straight, Func<LiftingSurface, LiftingResult?> answer)
    {
        PlateLoad[] loads = [.. StripPressure.Of(straight, surface)];
        double[] miss = new double[loads.Length], before = new double[loads.Length];
        double step = FirstStep;
        PlateSolution shape = plate.Solve(loads);
        if (shape.Status is not PlateStatus.Solved)
            return new(LoadedStatus.NotSolved, straight, loads, shape, 0);
        // A soft fin would unload long before it bends that far: start from less.
        for (; shape.DeflectionShare > FarthestShare; shape = plate.Solve(loads))
            loads = [.. StripPressure.Times(loads, 0.5)];
        int pass = 1;
        for (; pass <= MostPasses && shape.DeflectionShare <= FarthestShare; pass++)
        {
            LiftingSurface bent = surface.Bent(shape.Deflection);
            if (answer(bent) is not { Status: LiftingStatus.Attached or LiftingStatus.Stalled } flow)
                break;
            IReadOnlyList<PlateLoad> asked = StripPressure.Of(flow, bent);
            double size = 0, off = 0;
            for (int i = 0; i < loads.Length; i++)
            {
                miss[i] = asked[i].Force - loads[i].Force;
                size += asked[i].Force * asked[i].Force;
                off += miss[i] * miss[i];
            }

            if (off <= LoadAccuracy * LoadAccuracy * size)
                return new(LoadedStatus.Settled, flow, asked, shape, pass);
            if (pass > 1)
            {
                double along = 0, change = 0;
                for (int i = 0; i < miss.Length; i++)
                {
                    along += before[i] * (miss[i] - before[i]);
                    change += (miss[i] - before[i]) * (miss[i] - before[i]);
                }

                step = change > 0 ? Math.Clamp(Math.Abs(step * along / change), LeastStep, GreatestStep) : step;
            }

            for (int i = 0; i < loads.Length; i++)
                loads[i] = loads[i] with { Force = loads[i].Force + step * miss[i] };
            miss.CopyTo(before, 0);
            shape = plate.Solve(loads);
        }

        loads = [.. StripPressure.Of(straight, surface)];
        return new(LoadedStatus.NotSettled, straight, loads, plate.Solve(loads), pass);
    }

    // Secant: the bent fin's side force is nearly straight in leeway.
    private static LiftingResult WithForce(LiftingSurface bent, LiftingResult straight, double asked, double leeway, double slope)
    {
        LiftingResult found = bent.Solve(straight.Flow with { Leeway = leeway });
        for (int i = 0; i < MostLeewaySteps && Math.Abs(found.SideForce - asked) > ForceAccuracy * Math.Abs(asked) && Math.Abs(slope) > 0; i++)
        {
            double next = Math.Clamp(leeway + (asked - found.SideForce) / slope, -StallLimits.SearchLimit, StallLimits.SearchLimit);
            LiftingResult other = bent.Solve(straight.Flow with { Leeway = next });
            double rise = (other.SideForce - found.SideForce) / (next - leeway);
            if (double.IsFinite(rise) && rise != 0)
                slope = rise;
            (leeway, found) = (next, other);
        }

        return found;
    }
}
