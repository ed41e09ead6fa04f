using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Sections;

/// <summary>Stiffness of a composite cross-section: its integrals, and Saint-Venant's torsion by finite elements on the section.</summary>
/// <remarks>
/// Warping φ of unit twist per length: strains γ_xy = z + ∂φ/∂x, γ_yz = −x + ∂φ/∂z with the least energy ∫G γ² dA, which is GJ (Saint-Venant, 1855; Trefftz, 1935; both from
/// memory). The shear centre is Trefftz's, the pole about which the warping, weighted with E, neither stretches nor bends; it is at the same time that of flexure with ν = 0. It lies
/// at 0.3660 chords in a 0012 section, where the numerical reference has it. The exact flexural centre depends on ν and is not unique in its definition. Plane strain of the
/// parts against one another (different ν) is left out.
/// A rod stands in for what it replaces: its stretching exactly; its twisting as a lone round inclusion, which takes 2 G/(G + G_rod) of the strain around it (exact for a
/// small rod far from the surface, any smooth field). Shearing is 5/6 of ∫G dA, as in a plate, not the section's own energy: that falls far below for a wide thin section with
/// ν &gt; 0, a stiffness a blade clamped along its root does not show.
/// Limits: sections without stretching across the chord; hollows need edges along x and z, and their corners' stresses mean nothing.
/// </remarks>
public static class SectionSolver
{
    // Hollows keep this share of stiffness, so that the warping in them is defined.
    private const double VoidShare = 1e-7;

    // Plates' shear factor (Reissner, 1945, from memory).
    private const double ShearFactor = 5.0 / 6;

    private static readonly double[] GaussPlaces = [-Math.Sqrt(0.6), 0, Math.Sqrt(0.6)];
    private static readonly double[] GaussWeights = [5.0 / 9, 8.0 / 9, 5.0 / 9];

    /// <summary>Works out a section.</summary>
    /// <param name="section">The section; lengths in metres.</param>
    /// <param name="options">How finely; null for the usual 24 columns.</param>
    /// <exception cref="ArgumentException">Sides cross, no thickness, a modulus or rod that is not positive, or stiffnesses too far apart to be solved together.</exception>
    public static SectionStiffness Of(CompositeSection section, SectionMeshOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(section);
        options ??= new();
        Check(section, options);
        SectionMesh mesh = new(section, options);
        Integrals sums = new();
        BandMatrix stiffness = new(mesh.Nodes, Math.Min(mesh.Bandwidth, mesh.Nodes - 1));
        double[] warping = new double[mesh.Nodes];
        (double x, double z) pole = (0.5 * (section.LeadingX + section.TrailingX), 0);
        Assemble(section, mesh, pole, stiffness, warping, sums);
        // A constant warping costs nothing: one spring fixes it without changing anything else.
        int middle = mesh.Node(mesh.Columns / 2, mesh.Layers / 2, 0);
        stiffness.Add(middle, middle, stiffness[middle, middle]);
        BandCholesky factor = BandCholesky.TryFactor(stiffness)
            ?? throw new ArgumentException("The section's stiffnesses lie too far apart to be solved together.", nameof(section));
        factor.Solve(warping);
        WarpingField field = new(section, mesh, pole, warping);
        field.Sum(sums, GaussPlaces, GaussWeights);
        foreach (SectionRod rod in section.Rods)
            field.AddRod(rod, sums);
        return Result(section, field, pole, sums);
    }

    /// <summary>What is at a place: the material and the share of it that is there.</summary>
    internal static (Elasticity Material, double Share) At(CompositeSection section, in SectionMeshPoint point)
    {
        foreach (SectionVoid hollow in section.Voids)
            if (hollow.Contains(point.X, point.Z))
                return (section.Core, VoidShare);
        return (point.IsWall ? section.Wall : section.Core, 1);
    }

    private static void Check(CompositeSection section, SectionMeshOptions options)
    {
        Require.AtLeast(options.Columns, 4);
        Require.AtLeast(options.WallLayers, 1);
        Require.AtLeast(options.CoreLayers, 1);
        Require.Finite(section.LeadingX);
        Require.Positive(section.TrailingX - section.LeadingX);
        foreach (Elasticity material in new[] { section.Wall, section.Core })
        {
            Require.Positive(material.ModulusY);
            Require.Positive(material.ShearXY);
            Require.Positive(material.ShearYZ);
            Require.NotNegative(material.Density);
        }

        foreach (SectionRod rod in section.Rods)
        {
            Require.Finite(rod.X);
            Require.Finite(rod.Z);
            Require.Positive(rod.Diameter);
            Require.Positive(rod.Modulus);
            Require.Positive(rod.ShearModulus);
            Require.NotNegative(rod.Density);
        }
    }

    private static void Assemble(CompositeSection section, SectionMesh mesh, (double X, double Z) pole, BandMatrix stiffness, double[] load, Integrals sums)
    {
        Span<double> alongX = stackalloc double[9], alongZ = stackalloc double[9], element = stackalloc double[81], right = stackalloc double[9];
        for (int column = 0; column < mesh.Columns; column++)
        {
            for (int layer = 0; layer < mesh.Layers; layer++)
            {
                element.Clear();
                right.Clear();
                for (int p = 0; p < 9; p++)
                {
                    double xi = GaussPlaces[p / 3], eta = GaussPlaces[p % 3];
                    SectionMeshPoint point = mesh.Point(column, layer, xi, eta);
                    (Elasticity material, double share) = At(section, point);
                    double area = GaussWeights[p / 3] * GaussWeights[p % 3] * point.SlopeX * point.SlopeZEta;
                    double x = point.X - pole.X, z = point.Z - pole.Z;
                    sums.Add(material, share, area, x, z);
                    WarpingField.Slopes(point, xi, eta, alongX, alongZ);
                    double gx = share * material.ShearXY * area, gz = share * material.ShearYZ * area;
                    for (int a = 0; a < 9; a++)
                    {
                        right[a] += gz * x * alongZ[a] - gx * z * alongX[a];
                        for (int b = 0; b <= a; b++)
                            element[9 * a + b] += gx * alongX[a] * alongX[b] + gz * alongZ[a] * alongZ[b];
                    }
                }

                for (int a = 0; a < 9; a++)
                {
                    int row = mesh.Node(column, layer, a);
                    load[row] += right[a];
                    for (int b = 0; b <= a; b++)
                        stiffness.Add(row, mesh.Node(column, layer, b), element[9 * a + b]);
                }
            }
        }
    }

    private static SectionStiffness Result(CompositeSection section, WarpingField field, (double X, double Z) pole, Integrals s)
    {
        double x = s.StretchX / s.Stretch, z = s.StretchZ / s.Stretch;
        double edge = s.BendXX - s.Stretch * x * x, flap = s.BendZZ - s.Stretch * z * z, product = s.BendXZ - s.Stretch * x * z;
        // Warping about another pole (a, b): φ + b x − a z. Its moments with E x and E z about the centroid must vanish.
        double withX = s.WarpX - x * s.Warp, withZ = s.WarpZ - z * s.Warp, determinant = edge * flap - product * product;
        double shearX = (edge * withZ - product * withX) / determinant, shearZ = (product * withZ - flap * withX) / determinant;
        (TorsionStress? wall, TorsionStress? core) = field.Greatest(s.Torsion);
        return new()
        {
            AxialStiffness = s.Stretch,
            FlapRigidity = flap,
            EdgeRigidity = edge,
            ProductRigidity = product,
            TorsionRigidity = Require.Positive(s.Torsion),
            FlapShearStiffness = ShearFactor * s.ShearZ,
            EdgeShearStiffness = ShearFactor * s.ShearX,
            Centroid = pole.X + x,
            NeutralZ = pole.Z + z,
            ShearCentre = Require.Finite(pole.X + shearX),
            ShearCentreZ = Require.Finite(pole.Z + shearZ),
            MassPerLength = s.Mass,
            Area = s.Area,
            WallTorsionStress = wall,
            CoreTorsionStress = core,
        };
    }

    /// <summary>Sums over the section, about the pole.</summary>
    internal sealed class Integrals
    {
        public double Area, Mass, Stretch, StretchX, StretchZ, BendXX, BendZZ, BendXZ, ShearX, ShearZ, Torsion, Warp, WarpX, WarpZ;

        public void Add(Elasticity material, double share, double area, double x, double z)
        {
            Area += share * area;
            Mass += share * area * material.Density;
            ShearX += share * area * material.ShearXY;
            ShearZ += share * area * material.ShearYZ;
            AddStretch(share * area * material.ModulusY, x, z);
        }

        public void AddStretch(double stiffness, double x, double z)
        {
            Stretch += stiffness;
            StretchX += stiffness * x;
            StretchZ += stiffness * z;
            BendXX += stiffness * x * x;
            BendZZ += stiffness * z * z;
            BendXZ += stiffness * x * z;
        }

        public void AddWarping(double stiffness, double x, double z, double warping)
        {
            Warp += stiffness * warping;
            WarpX += stiffness * x * warping;
            WarpZ += stiffness * z * warping;
        }
    }
}
