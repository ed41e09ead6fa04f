namespace Finwright.Water.Lifting;

/// <summary>Finds the leeway at which the fin carries a side force.</summary>
internal static class LeewaySearch
{
    // Side force to a millionth, or leeway to rounding.
    private const double ForceAccuracy = 1e-6;
    private const double LeewayAccuracy = 1e-10;
    private const int LargestSteps = 60;

    public static LeewayResult Find(LiftingSurface surface, FlowState flow, double sideForce)
    {
        LiftingResult straight = surface.Solve(flow with { Leeway = 0 });
        bool positive = sideForce >= straight.SideForce;
        StallLimits limits = surface.StallOf(flow, positive);
        double limit = positive ? StallLimits.SearchLimit : -StallLimits.SearchLimit;
        LiftingResult end = limits.Onset ?? surface.Solve(flow with { Leeway = limit });
        if (!(Beyond(end) > 0))
            return Between(straight, end, LeewayStatus.Found);
        if (limits.Onset is null)
            return Answer(end, LeewayStatus.BeyondRange);
        if (limits.Maximum is not { } maximum)
            return Answer(end, LeewayStatus.BeyondRange);
        return Beyond(maximum) > 0 ? Answer(maximum, LeewayStatus.BeyondMaximum) : Between(end, maximum, LeewayStatus.FoundPastOnset);

        // Positive when the fin falls short of what was asked.
        double Beyond(LiftingResult result) => (positive ? 1 : -1) * (sideForce - result.SideForce);

        LeewayResult Answer(LiftingResult result, LeewayStatus status) => new()
        {
            Asked = sideForce,
            Result = result,
            Limits = limits,
            Status = result.Status is LiftingStatus.NotConverged or LiftingStatus.Singular ? LeewayStatus.NotConverged : status,
        };

        // Regula falsi with the Illinois rule.
        LeewayResult Between(LiftingResult low, LiftingResult high, LeewayStatus status)
        {
            double a = low.Flow.Leeway, b = high.Flow.Leeway, short1 = Beyond(low), short2 = Beyond(high);
            if (short1 <= 0)
                return Answer(low, status);
            LiftingResult found = high;
            int side = 0;
            double enough = ForceAccuracy * Math.Max(Math.Abs(sideForce), Math.Abs(high.SideForce));
            for (int i = 0; i < LargestSteps && Math.Abs(b - a) > LeewayAccuracy && Math.Abs(Beyond(found)) > enough; i++)
            {
                double at = b - short2 * (b - a) / (short2 - short1);
                found = surface.Solve(flow with { Leeway = at });
                double left = Beyond(found);
                if (left > 0)
                {
                    (a, short1) = (at, left);
                    short2 /= side > 0 ? 2 : 1;
                    side = 1;
                }
                else
                {
                    (b, short2) = (at, left);
                    short1 /= side < 0 ? 2 : 1;
                    side = -1;
                }
            }

            return Answer(found, status);
        }
    }
}
