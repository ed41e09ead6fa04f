using Finwright.Geometry.Blades;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sections;
using Finwright.Water.Ventilation;

namespace Finwright.Assessment.Afloat;

/// <summary>Pressure round the section of one strip, at the angle at which the strip meets the water.</summary>
internal static class SectionPressure
{
    // When the flow does not converge at an angle, one close by is as good for a picture, radians.
    private static readonly double[] Beside = [0, 0.1 * Math.PI / 180, -0.1 * Math.PI / 180, 0.3 * Math.PI / 180, -0.3 * Math.PI / 180];

    /// <summary>Solves the flow past a strip's section once more, and keeps the pressure.</summary>
    /// <param name="afloat">The water.</param>
    /// <param name="blade">The blade.</param>
    /// <param name="family">Its sections, for finish and turbulence.</param>
    /// <param name="sailed">What the fin does.</param>
    /// <param name="strip">The strip.</param>
    /// <returns>The pressure; null for a strip without section, or when the flow does not converge.</returns>
    public static PressureAlong? Along(FinAfloat afloat, Blade blade, SectionPolarFamily family, LiftingResult sailed, StripResult strip)
    {
        if (strip.Section is not { } section || strip.MinimumCp is not double lowest || section.MinimumCp is 0)
            return null;
        int node = 0;
        for (int i = 1; i < family.Positions.Count; i++)
            if (Math.Abs(family.Positions[i] - strip.Depth / blade.Span) < Math.Abs(family.Positions[node] - strip.Depth / blade.Span))
                node = i;
        SectionConditions conditions = family.Tables[node].Curves[0].Conditions with
        {
            ReynoldsNumber = Math.Clamp(strip.ReynoldsNumber, PolarGrid.LeastReynoldsNumber, PolarGrid.GreatestReynoldsNumber),
        };
        SectionFlow flow = new(blade.SectionAt(strip.Depth));
        foreach (double beside in Beside)
        {
            SectionPoint point = flow.Solve(strip.SectionAngle + beside, conditions, withSurface: true);
            if (!point.Converged || point.Surface is not { } surface)
                continue;
            // From the stream square to the quarter-chord line to the whole stream.
            double share = lowest / section.MinimumCp;
            return new(strip.Depth, surface.X, [.. surface.Cp.Select(cp => share * cp)], -Cavitation.Number(afloat.Water, strip.Depth, sailed.Flow.Speed));
        }

        return null;
    }
}
