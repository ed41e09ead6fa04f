using Finwright.Strength.Materials;

namespace Finwright.Strength.Sections;

/// <summary>The warping of a section under unit twist per length, once solved.</summary>
internal sealed class WarpingField
{
    // Seven points on a disc, exact to the fifth power (Stroud, S2 5-1, from memory): the middle with a quarter, six on a circle of √(2/3) of the radius with an eighth each.
    private static readonly double DiscRadius = Math.Sqrt(2.0 / 3);

    // Where strains of these elements are best, along the chord.
    private static readonly double[] StressPlaces = [-1 / Math.Sqrt(3), 0, 1 / Math.Sqrt(3)];

    private readonly CompositeSection _section;
    private readonly SectionMesh _mesh;
    private readonly (double X, double Z) _pole;
    private readonly double[] _warping;

    public WarpingField(CompositeSection section, SectionMesh mesh, (double X, double Z) pole, double[] warping) => (_section, _mesh, _pole, _warping) = (section, mesh, pole, warping);

    /// <summary>Derivatives of the nine shape functions.</summary>
    public static void Slopes(in SectionMeshPoint point, double xi, double eta, Span<double> alongX, Span<double> alongZ)
    {
        (double a0, double a1, double a2) = SectionMesh.Lagrange(xi);
        (double da0, double da1, double da2) = SectionMesh.LagrangeSlope(xi);
        (double b0, double b1, double b2) = SectionMesh.Lagrange(eta);
        (double db0, double db1, double db2) = SectionMesh.LagrangeSlope(eta);
        ReadOnlySpan<double> a = [a0, a1, a2], da = [da0, da1, da2], b = [b0, b1, b2], db = [db0, db1, db2];
        for (int k = 0; k < 9; k++)
        {
            double perEta = a[k / 3] * db[k % 3] / point.SlopeZEta;
            alongZ[k] = perEta;
            alongX[k] = (da[k / 3] * b[k % 3] - point.SlopeZXi * perEta) / point.SlopeX;
        }
    }

    /// <summary>Adds torsional stiffness and the warping's moments.</summary>
    public void Sum(SectionSolver.Integrals sums, double[] places, double[] weights)
    {
        for (int column = 0; column < _mesh.Columns; column++)
        {
            for (int layer = 0; layer < _mesh.Layers; layer++)
            {
                for (int p = 0; p < 9; p++)
                {
                    double xi = places[p / 3], eta = places[p % 3];
                    State state = At(column, layer, xi, eta);
                    (Elasticity material, double share) = SectionSolver.At(_section, state.Point);
                    double area = share * weights[p / 3] * weights[p % 3] * state.Point.SlopeX * state.Point.SlopeZEta;
                    sums.Torsion += area * (material.ShearXY * state.StrainX * state.StrainX + material.ShearYZ * state.StrainZ * state.StrainZ);
                    sums.AddWarping(area * material.ModulusY, state.Point.X - _pole.X, state.Point.Z - _pole.Z, state.Warping);
                }
            }
        }
    }

    /// <summary>Puts a rod in place of what is there.</summary>
    public void AddRod(SectionRod rod, SectionSolver.Integrals sums)
    {
        double radius = rod.Diameter / 2, whole = Math.PI * radius * radius;
        for (int p = 0; p < 7; p++)
        {
            double angle = p * Math.PI / 3, away = p == 6 ? 0 : DiscRadius * radius, area = whole * (p == 6 ? 0.25 : 0.125);
            double x = rod.X + away * Math.Cos(angle), z = rod.Z + away * Math.Sin(angle);
            (int column, int layer, double xi, double eta) = _mesh.Locate(x, z);
            State state = At(column, layer, xi, eta);
            (Elasticity material, double share) = SectionSolver.At(_section, state.Point);
            double stretch = area * (rod.Modulus - share * material.ModulusY);
            sums.Area += area * (1 - share);
            sums.Mass += area * (rod.Density - share * material.Density);
            sums.AddStretch(stretch, x - _pole.X, z - _pole.Z);
            sums.AddWarping(stretch, x - _pole.X, z - _pole.Z, state.Warping);
            double around = share * (material.ShearXY + material.ShearYZ) / 2, more = area * (rod.ShearModulus - around);
            sums.ShearX += area * (rod.ShearModulus - share * material.ShearXY);
            sums.ShearZ += area * (rod.ShearModulus - share * material.ShearYZ);
            // Its own twist, and the strain of the place around it, which it takes up in part.
            double restX = state.StrainX - (z - rod.Z), restZ = state.StrainZ + (x - rod.X);
            sums.Torsion += more * (away * away + 2 * around / (around + rod.ShearModulus) * (restX * restX + restZ * restZ));
        }
    }

    /// <summary>Greatest shear stress over torque in wall and core.</summary>
    /// <param name="rigidity">Torsional stiffness.</param>
    public (TorsionStress? Wall, TorsionStress? Core) Greatest(double rigidity)
    {
        TorsionStress? wall = null, core = null;
        for (int column = 0; column < _mesh.Columns; column++)
        {
            for (int layer = 0; layer < _mesh.Layers; layer++)
            {
                // Which material it is the inside tells: the border itself belongs to both.
                bool isWall = _mesh.Point(column, layer, 0, 0).IsWall;
                foreach (double xi in StressPlaces)
                {
                    for (int side = -1; side <= 1; side += 2)
                    {
                        State state = At(column, layer, xi, side);
                        (_, double share) = SectionSolver.At(_section, state.Point);
                        if (share < 1)
                            continue;
                        Elasticity material = isWall ? _section.Wall : _section.Core;
                        double stress = double.Hypot(material.ShearXY * state.StrainX, material.ShearYZ * state.StrainZ) / rigidity;
                        ref TorsionStress? greatest = ref isWall ? ref wall : ref core;
                        if (greatest is null || stress > greatest.PerTorque)
                            greatest = new(stress, state.Point.X, state.Point.Z);
                    }
                }
            }
        }

        return (wall, core);
    }

    private State At(int column, int layer, double xi, double eta)
    {
        SectionMeshPoint point = _mesh.Point(column, layer, xi, eta);
        Span<double> alongX = stackalloc double[9], alongZ = stackalloc double[9];
        Slopes(point, xi, eta, alongX, alongZ);
        (double a0, double a1, double a2) = SectionMesh.Lagrange(xi);
        (double b0, double b1, double b2) = SectionMesh.Lagrange(eta);
        ReadOnlySpan<double> a = [a0, a1, a2], b = [b0, b1, b2];
        double warping = 0, slopeX = 0, slopeZ = 0;
        for (int k = 0; k < 9; k++)
        {
            double value = _warping[_mesh.Node(column, layer, k)];
            warping += a[k / 3] * b[k % 3] * value;
            slopeX += alongX[k] * value;
            slopeZ += alongZ[k] * value;
        }

        return new(point, warping, point.Z - _pole.Z + slopeX, slopeZ - (point.X - _pole.X));
    }

    /// <summary>Warping and strains at a place, for unit twist per length.</summary>
    private readonly record struct State(SectionMeshPoint Point, double Warping, double StrainX, double StrainZ);
}
