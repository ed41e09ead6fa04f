using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.Plates;
using Finwright.Strength.Vibrations;
using Finwright.Water.FromDesign;

namespace Finwright.Assessment.Loaded;

/// <summary>How the fin swings by itself, in air and in water, and what may make it hum.</summary>
public sealed record FinVibration
{
    // Modes shown, and modes that stand for the shapes in water.
    private const int Shown = 3, Kept = 8;

    // Along this share of the span the thickness of the trailing edge counts: a rounded tip runs out.
    private const double EdgeTo = 0.9;
    private const int EdgeSteps = 18;

    /// <summary>Why there are no frequencies, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>First frequencies in air, Hz, rising.</summary>
    public IReadOnlyList<double> Dry { get; init; } = [];

    /// <summary>First frequencies in water under a rigid hull, Hz, rising; empty when they could not be worked out.</summary>
    public IReadOnlyList<double> Wet { get; init; } = [];

    /// <summary>Mass of the blade below the hull, kg.</summary>
    public double BladeMass { get; init; }

    /// <summary>Frequencies at which eddies leave the blunt trailing edge, from getting going to top speed.</summary>
    public HumBand? Eddies { get; init; }

    /// <summary>The wet frequencies that the eddies may meet, by number from 0.</summary>
    public IReadOnlyList<int> Humming => Eddies?.Within(Wet) ?? [];

    internal static FinVibration Of(Brief brief, Blade blade, FinBuilt built)
    {
        if (built.Structure is not { } structure)
            return new() { Problem = built.Problem };
        PlateModel plate = structure.Plate;
        PlateModes modes = plate.Modes(Kept);
        if (modes.Status is not PlateStatus.Solved)
            return new() { Problem = "The frequencies of the blade did not settle. Look at the outline: a very thin end swings by itself." };
        double density = WaterFromDesign.Properties(brief).Density;
        AddedMass water = AddedMass.Create(plate.MeshEnd, plate.Fin.LeadingEdge, plate.Fin.TrailingEdge, VibrationRoot.Wall);
        WetModes? wet = WetModes.Of(modes.AngularFrequencies, modes.Shapes, water, density);
        double[] edges = [.. Enumerable.Range(0, EdgeSteps + 1).Select(i => blade.EdgeThickness(EdgeTo * blade.Span * i / EdgeSteps)).Where(edge => edge > 0)];
        return new()
        {
            Dry = [.. modes.AngularFrequencies.Take(Shown).Select(Hertz)],
            Wet = wet is null ? [] : [.. wet.AngularFrequencies.Take(Shown).Select(Hertz)],
            BladeMass = plate.MassProperties.Mass,
            Eddies = edges.Length == 0 ? null : HumBand.Of(brief.GettingGoingSpeedMPerS, brief.TopSpeedMPerS, edges.Min(), edges.Max()),
        };
    }

    private static double Hertz(double angular) => angular / (2 * Math.PI);
}
