namespace Finwright.Strength.Sections;

/// <summary>How a cross-section of the blade resists stretching, bending, shearing and twisting. SI; x aft, z to starboard.</summary>
public sealed record SectionStiffness
{
    /// <summary>EA, N.</summary>
    public required double AxialStiffness { get; init; }

    /// <summary>EI about the axis through the centroid parallel to x, for bending to the side, N m².</summary>
    public required double FlapRigidity { get; init; }

    /// <summary>EI about the axis through the centroid parallel to z, for bending fore and aft, N m².</summary>
    public required double EdgeRigidity { get; init; }

    /// <summary>∫E (x − centroid)(z − neutral z) dA, N m²: what couples both bendings; zero for a section that is symmetric to the chord plane.</summary>
    public required double ProductRigidity { get; init; }

    /// <summary>GJ, N m²: torque over twist per length.</summary>
    public required double TorsionRigidity { get; init; }

    /// <summary>5/6 ∫G_yz dA, N: shearing across the thickness.</summary>
    public required double FlapShearStiffness { get; init; }

    /// <summary>5/6 ∫G_xy dA, N: shearing fore and aft.</summary>
    public required double EdgeShearStiffness { get; init; }

    /// <summary>x of the centre of stretching, m.</summary>
    public required double Centroid { get; init; }

    /// <summary>z of the neutral axis of bending to the side, m.</summary>
    public required double NeutralZ { get; init; }

    /// <summary>x of the shear centre, m: a side force there does not twist the section.</summary>
    public required double ShearCentre { get; init; }

    /// <summary>z of the shear centre, m.</summary>
    public required double ShearCentreZ { get; init; }

    /// <summary>kg/m.</summary>
    public required double MassPerLength { get; init; }

    /// <summary>Area inside the surface less hollows, m².</summary>
    public required double Area { get; init; }

    /// <summary>Greatest shear stress of twisting in the wall; null when there is none.</summary>
    public required TorsionStress? WallTorsionStress { get; init; }

    /// <summary>Greatest shear stress of twisting in the core; null when there is none.</summary>
    public required TorsionStress? CoreTorsionStress { get; init; }

    /// <summary>Stress along the span from a bending moment about the x direction alone.</summary>
    /// <param name="flapMoment">N m; positive stretches the port side, as a force to starboard on a blade held at its root does.</param>
    /// <param name="x">Place, m.</param>
    /// <param name="z">Place, m.</param>
    /// <param name="modulus">Young's modulus along the span of what is there, Pa.</param>
    /// <returns>Pa, tension positive.</returns>
    /// <remarks>Plane sections stay plane; both bendings together when the section is not symmetric to the chord plane.</remarks>
    public double BendingStress(double flapMoment, double x, double z, double modulus)
    {
        double determinant = EdgeRigidity * FlapRigidity - ProductRigidity * ProductRigidity;
        double alongZ = EdgeRigidity * flapMoment / determinant, alongX = -ProductRigidity * flapMoment / determinant;
        return -modulus * (alongZ * (z - NeutralZ) + alongX * (x - Centroid));
    }
}

/// <summary>A greatest shear stress of twisting and where it is.</summary>
/// <param name="PerTorque">Shear stress over torque, Pa/(N m).</param>
/// <param name="X">Place, m.</param>
/// <param name="Z">Place, m.</param>
public sealed record TorsionStress(double PerTorque, double X, double Z);
