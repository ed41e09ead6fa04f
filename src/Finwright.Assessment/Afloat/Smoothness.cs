using Finwright.Water;
using Finwright.Water.Finishes;

namespace Finwright.Assessment.Afloat;

/// <summary>How smooth a blade has to be sanded.</summary>
/// <param name="Speed">m/s.</param>
/// <param name="Friction">Height of roughness below which it adds no friction, m.</param>
/// <param name="Ridges">Height of ridges across the stream, as of printed layers, above which they end the laminar layer a tenth of the mean chord behind the nose, m.</param>
public sealed record Smoothness(double Speed, double Friction, double Ridges)
{
    // The layer is thin enough there to feel every ridge, and still laminar on a clean fin.
    private const double ChordShare = 0.1;

    internal static Smoothness Of(WaterProperties water, double speed, double meanChord) =>
        new(speed, RoughnessHeights.Admissible(water, speed), RoughnessHeights.Tripping(water, speed, ChordShare * meanChord, SurfaceFinish.RidgesTrip));
}
