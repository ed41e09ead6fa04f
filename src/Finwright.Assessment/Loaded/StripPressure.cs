using Finwright.Strength.Plates;
using Finwright.Water.Lifting;

namespace Finwright.Assessment.Loaded;

/// <summary>From what the strips of a lifting surface carry to forces spread over the blade.</summary>
/// <remarks>
/// Along the chord the load of a strip is taken as that of a thin section: a part that acts at the quarter chord, falling off from the nose as cot(θ/2), and a part that makes the strip's moment,
/// sin θ (first two terms of Glauert's series, 1926, The Elements of Aerofoil and Airscrew Theory; from memory). Sums over the points below give both exactly. What acts along the tip and along a
/// swept nose is put there.
/// </remarks>
internal static class StripPressure
{
    // The points meet the sums of the series exactly from three on; six spread the load evenly enough for a plate.
    private const int Points = 6;

    /// <summary>Forces along z.</summary>
    /// <param name="result">What the lifting surface answers.</param>
    /// <param name="surface">The lifting surface.</param>
    public static IReadOnlyList<PlateLoad> Of(LiftingResult result, LiftingSurface surface)
    {
        List<PlateLoad> loads = [];
        double carried = result.Strips.Sum(strip => strip.Load * strip.Width);
        foreach (StripResult strip in result.Strips)
        {
            double force = strip.Load * strip.Width, moment = strip.Moment * strip.Width, chord = strip.Chord, nose = strip.QuarterChord - chord / 4;
            // In units of force: the total of each part over the strip.
            double turning = -4 * moment / chord, steady = force - turning;
            for (int k = 0; k < Points; k++)
            {
                double angle = (k + 0.5) * Math.PI / Points, sine = Math.Sin(angle), cosine = Math.Cos(angle);
                double share = steady * (1 + cosine) / Points + turning * 2 * sine * sine / Points;
                loads.Add(new(nose + chord * (1 - cosine) / 2, strip.Depth, share));
            }

            if (carried != 0)
                loads.Add(new(nose, strip.Depth, result.VortexForce * force / carried));
        }

        double tip = surface.Fin.Span;
        loads.Add(new((surface.Fin.LeadingEdge(tip) + surface.Fin.TrailingEdge(tip)) / 2, tip, result.TipForce));
        return loads;
    }

    /// <summary>The same forces times a factor.</summary>
    public static IReadOnlyList<PlateLoad> Times(IReadOnlyList<PlateLoad> loads, double factor) => [.. loads.Select(load => load with { Force = factor * load.Force })];
}
