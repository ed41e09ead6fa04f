using Finwright.Design;
using Finwright.Making.Resins;

namespace Finwright.Assessment.Made;

/// <summary>Mixed resin that stands outside the part: in the cup, and in tube and funnel on a port.</summary>
internal static class Vessels
{
    /// <summary>How long they are followed, s: a slow resin needs two days to come to its end.</summary>
    public const double Watched = 60 * 3600;

    private const double Kelvin = 273.15, Grams = 1e-3, Millilitres = 1e-6;

    // Cups for 100 g are some 65 mm wide; a tube or funnel on a port is held as slim as a syringe's tip allows (judgement).
    private const double CupDiameter = 0.065, ReservoirDiameter = 0.02;

    /// <summary>One full cup left standing.</summary>
    public static CupRun Cup(Pour pour, ResinSystem resin, CancellationToken cancellation) => Stand(pour, resin, pour.CupGrams * Grams, CupDiameter, cancellation);

    /// <summary>The resin on a port; null when there is none.</summary>
    public static CupRun? Reservoir(Pour pour, ResinSystem resin, CancellationToken cancellation) =>
        pour.ReservoirMl > 0 ? Stand(pour, resin, pour.ReservoirMl * Millilitres * resin.Density, ReservoirDiameter, cancellation) : null;

    private static CupRun Stand(Pour pour, ResinSystem resin, double mass, double diameter, CancellationToken cancellation) => CupModel.Solve(
        new()
        {
            Resin = resin,
            Mass = mass,
            Diameter = diameter,
            StartTemperature = (pour.ResinCelsius ?? pour.RoomCelsius) + Kelvin,
            RoomTemperature = pour.RoomCelsius + Kelvin,
            Duration = Watched,
        },
        cancellation);
}
