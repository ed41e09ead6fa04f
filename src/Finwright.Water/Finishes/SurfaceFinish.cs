using Finwright.Numerics;
using Finwright.Water.Sections;

namespace Finwright.Water.Finishes;

/// <summary>A surface as the water meets it, in metres: how high its roughness stands, when that trips, and what sand would rub as much.</summary>
public sealed record SurfaceFinish
{
    /// <summary>
    /// Roughness Reynolds number at which single grains trip a laminar layer (Braslow and Knox, 1958, NACA TN 4363; from memory).
    /// </summary>
    public const double GrainsTrip = 600;

    /// <summary>
    /// Roughness Reynolds number at which ridges across the stream trip: 100 to 250 (same source, from memory); the upper part of the range,
    /// since printed ridges are rounded.
    /// </summary>
    public const double RidgesTrip = 200;

    // Flack and Schultz (2010), Review of hydraulic roughness scales in the fully rough regime, J. Fluids Eng. 132, 041203:
    // k_s = 4.43 k_rms (1 + Sk)^1.37 (coefficients from memory). Stairs of height k are a saw-tooth: k_rms = k/√12, Sk = 0.
    private const double SandPerStep = 1.279;

    // Judgement: grooves along the stream have no face toward it; what is left is their wetted area and their waviness.
    private const double SandPerGroove = 0.25;

    // From memory: profiles of upright printed walls show valleys between the rounded beads of about a fifth of the layer.
    private const double CuspPerLayer = 0.2;

    /// <summary>Height of the roughness elements, m.</summary>
    public required double ElementHeight { get; init; }

    /// <summary>Roughness Reynolds number u_k k/ν at which they trip a laminar layer.</summary>
    public double CriticalRoughnessReynoldsNumber { get; init; } = GrainsTrip;

    /// <summary>Equivalent sand roughness, m.</summary>
    public required double SandRoughness { get; init; }

    /// <summary>How sure the heights are.</summary>
    public Certainty Certainty { get; init; } = Certainty.Judgement;

    /// <summary>What it is, in plain words.</summary>
    public required string Description { get; init; }

    /// <summary>Polished until it shines: under a micrometre, far below anything the water can feel (judgement).</summary>
    public static SurfaceFinish Polished { get; } = new() { ElementHeight = 0.5e-6, SandRoughness = 0.5e-6, Description = "polished" };

    /// <summary>
    /// Filled and wet-sanded with 400 grit. The grains of the paper are about 35 µm; the scratches they leave in hard filler are a few µm
    /// (judgement), below the admissible height at any speed of sailing.
    /// </summary>
    public static SurfaceFinish Grit400 { get; } = new() { ElementHeight = 5e-6, SandRoughness = 5e-6, Description = "wet-sanded with 400 grit" };

    /// <summary>Print lines left as they are.</summary>
    /// <param name="layer">Layer height, m, 0.02 to 1 mm.</param>
    /// <param name="inclination">Angle between the wall and the plane of the layers, radians, 0 to π/2: π/2 is an upright wall.</param>
    /// <param name="lineAngle">
    /// Angle between the lines and the stream, radians, 0 to π/2: 0 for a blade printed standing, whose lines run along the chord; π/2 for a
    /// blade printed lying, whose lines run down the span.
    /// </param>
    /// <remarks>
    /// Height: the stairs, or the valleys between beads where the wall is so upright that there are no stairs. Between lines along and across the
    /// stream, trip and friction are turned over by the square of the sine of the angle. Lines along the stream trip like single grains here: what
    /// trips is their starts, seams and waviness. Closely packed roughness is said to trip at 120 (from memory), so this is the hopeful end for a
    /// printer that leaves blobs. All judgement.
    /// </remarks>
    public static SurfaceFinish BarePrint(double layer, double inclination, double lineAngle)
    {
        Require.Between(layer, 2e-5, 1e-3);
        Require.Between(inclination, 0, Math.PI / 2);
        Require.Between(lineAngle, 0, Math.PI / 2);
        double height = Math.Max(StepHeight(layer, inclination), CuspPerLayer * layer);
        double across = Math.Sin(lineAngle) * Math.Sin(lineAngle);
        return new()
        {
            ElementHeight = height,
            CriticalRoughnessReynoldsNumber = across * RidgesTrip + (1 - across) * GrainsTrip,
            SandRoughness = (across * SandPerStep + (1 - across) * SandPerGroove) * height,
            Description = across > 0.5 ? "bare print, lines across the stream" : "bare print, lines along the stream",
        };
    }

    /// <summary>Height of the stairs that layers make on a wall, square to it: t cos a; m.</summary>
    /// <param name="layer">Layer height t, m.</param>
    /// <param name="inclination">Angle a between the wall and the plane of the layers, radians.</param>
    public static double StepHeight(double layer, double inclination) => layer * Math.Cos(inclination);

    /// <summary>The finish on a section of some chord.</summary>
    /// <param name="chord">m, above zero.</param>
    public SideFinish OnChord(double chord)
    {
        Require.Positive(chord);
        return new()
        {
            RoughnessHeight = ElementHeight / chord,
            CriticalRoughnessReynoldsNumber = CriticalRoughnessReynoldsNumber,
            SandRoughness = SandRoughness / chord,
        };
    }
}
