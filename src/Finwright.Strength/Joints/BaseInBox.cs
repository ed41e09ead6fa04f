using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>The base inside its box under a side force on the blade: it turns until one side bears at the hull edge and the other at the top.</summary>
/// <remarks>
/// The base is taken as stiff beside what lies between it and the box, so the pressure runs linearly over the depth, on one side near the hull and on the other
/// near the top; the same along the length. Bolts and end faces are left out, which help. A soft base bears more at the hull edge than this. Estimates.
/// </remarks>
public sealed record BaseInBox
{
    // Of a rectangle.
    private const double ShearShare = 5.0 / 6;

    /// <summary>Length of the base along the board, m.</summary>
    public required double Length { get; init; }

    /// <summary>Thickness of the base across the fin, m.</summary>
    public required double Width { get; init; }

    /// <summary>Depth of the base above the hull, m; for a sloping top edge the mean.</summary>
    public required double Depth { get; init; }

    /// <summary>Width of the box less that of the base, m.</summary>
    public double Clearance { get; init; }

    /// <summary>Solves for the pressures.</summary>
    /// <param name="force">Side force on the blade, N, not negative.</param>
    /// <param name="moment">Moment of the side force about the hull plane, N·m, not negative.</param>
    public BaseInBoxState Solve(double force, double moment)
    {
        Require.NotNegative(force);
        Require.NotNegative(moment);
        Require.Positive(Length);
        Require.Positive(Width);
        double d = Require.Positive(Depth);

        // Force per depth q(s) = a + b s, s up from the hull: ∫q ds = F and ∫q s ds = -M.
        double a = 4 * force / d + 6 * moment / (d * d), b = -(6 * force * d + 12 * moment) / (d * d * d);
        // The moment in the base is greatest where the pressure has taken up the force: a s + b s²/2 = F.
        double root = a * a + 2 * b * force, s = b is 0 ? 0 : (-a + Math.Sqrt(Math.Max(root, 0))) / b;
        double greatest = moment + force * s - a * s * s / 2 - b * s * s * s / 6;
        double section = Length * Width * Width / 6;
        return new()
        {
            HullEdgePressure = a / Length,
            TopEdgePressure = -(a + b * d) / Length,
            BendingStressAtHull = moment / section,
            GreatestBendingStress = greatest / section,
            GreatestBendingAt = s,
        };
    }

    /// <summary>How stiffly the base, as a beam held at the hull edge and at the top edge, holds the blade against bending, N·m per radian.</summary>
    /// <param name="modulus">Young's modulus across the depth, Pa.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    /// <returns>M/θ with θ = M d/(3 E I) for bending plus M/(5/6 G A d) for shear.</returns>
    public double RotationStiffness(double modulus, double shearModulus)
    {
        double d = Require.Positive(Depth), area = Require.Positive(Length) * Require.Positive(Width), inertia = area * Width * Width / 12;
        return 1 / (d / (3 * Require.Positive(modulus) * inertia) + 1 / (ShearShare * Require.Positive(shearModulus) * area * d));
    }

    /// <summary>Angle by which the blade leans to each side before the base bears, radians: clearance over depth.</summary>
    public double Play => Require.NotNegative(Clearance) / Require.Positive(Depth);
}

/// <summary>Pressures and stresses of a base in its box.</summary>
public sealed record BaseInBoxState
{
    /// <summary>Greatest pressure at the hull edge, on the side to which the blade is pushed, Pa.</summary>
    public required double HullEdgePressure { get; init; }

    /// <summary>Greatest pressure at the top edge, on the other side, Pa.</summary>
    public required double TopEdgePressure { get; init; }

    /// <summary>Bending stress of the base in the hull plane, Pa, the base taken as one solid.</summary>
    public required double BendingStressAtHull { get; init; }

    /// <summary>Greatest bending stress of the base, Pa, a little way inside the box.</summary>
    public required double GreatestBendingStress { get; init; }

    /// <summary>How far inside the box that is, m.</summary>
    public required double GreatestBendingAt { get; init; }
}
