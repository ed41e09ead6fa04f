namespace Finwright.Water.Lifting;

/// <summary>Finds where stall starts and where side force peaks.</summary>
internal static class StallSearch
{
    // A hundredth of a degree: far below what onset of stall can be known to.
    private const double LeewayAccuracy = 0.01 * Math.PI / 180;

    private const double FirstStep = 3 * Math.PI / 180;
    private const double PeakStep = 0.5 * Math.PI / 180;
    private const int LargestSteps = 60;

    // Side force this far below its best means that the peak is behind, and not only a ripple of single strips.
    private const double PastPeak = 0.97;

    public static StallLimits Find(LiftingSurface surface, FlowState flow, bool positive)
    {
        double sign = positive ? 1 : -1;
        double Share(double size) => surface.DecidingStallShare(flow with { Leeway = sign * size }, positive);
        double low = 0, high = double.NaN, share = Share(0), lowShare = share, next = FirstStep;
        if (share > 1)
            high = 0;
        for (int i = 0; i < LargestSteps && share <= 1 && double.IsNaN(high); i++)
        {
            share = Share(next);
            if (share > 1)
            {
                high = next;
                break;
            }

            if (next >= StallLimits.SearchLimit)
                return new(onset: null, () => null);
            // Stall share grows almost in a line; aim a little short of its 1, since it jumps beyond.
            double rise = (share - lowShare) / (next - low);
            (low, lowShare) = (next, share);
            double aim = rise > 0 ? 0.9 * (1 - share) / rise : FirstStep;
            next = Math.Min(low + Math.Clamp(aim, LeewayAccuracy, 2 * FirstStep), StallLimits.SearchLimit);
        }

        while (high - low > LeewayAccuracy)
        {
            double middle = (low + high) / 2;
            if (Share(middle) > 1)
                high = middle;
            else
                low = middle;
        }

        LiftingResult onset = surface.Solve(flow with { Leeway = sign * low });
        return new(onset, () => Peak(surface, flow, sign, onset));
    }

    private static LiftingResult? Peak(LiftingSurface surface, FlowState flow, double sign, LiftingResult onset)
    {
        LiftingResult best = onset;
        for (double size = Math.Abs(onset.Flow.Leeway) + PeakStep; size <= StallLimits.SearchLimit; size += PeakStep)
        {
            LiftingResult next = surface.Solve(flow with { Leeway = sign * size });
            if (next.Status == LiftingStatus.NotConverged)
                continue;
            // The lesser of two answers: what the fin holds for sure.
            double held = Held(next);
            if (held > Held(best))
                best = next;
            else if (held < PastPeak * Held(best))
                return best;
        }

        return null;

        double Held(LiftingResult result) => Math.Min(sign * result.SideForce, sign * result.OtherSideForce);
    }
}
