using Finwright.Numerics;
using Finwright.Strength.Materials;
using MathNet.Numerics.Integration;

namespace Finwright.Strength.Plates;

/// <summary>The matrices of a plate, part by part, so that a factor on one part costs an addition.</summary>
/// <remarks>
/// Stiffness through the thickness: D = Σ Q ∫ (z − z₀)² dz over the layers, Q the plane-stress stiffness of the layer along x and y, z₀ the neutral surface for bending along the span; this is D − B²/A
/// for layers of one Poisson's ratio, and it stays where it is when factors change. Shear: 5/6 Σ G h. Unknowns: three a node, 3 × node + (w, βx, βy).
/// </remarks>
internal sealed class PlateAssembly
{
    private const double ShearFactor = 5.0 / 6;

    // Points each way: three integrate the element's own polynomials; more where a hole or sheet begins inside it.
    private const int SmoothPoints = 3, BrokenPoints = 10, RootPoints = 20;

    private readonly QuadraticElement _element = new();
    private readonly LayerSums _layers;
    private readonly double[] _wall = new double[QuadraticElement.Unknowns * QuadraticElement.Unknowns];
    private readonly double[] _core = new double[QuadraticElement.Unknowns * QuadraticElement.Unknowns];
    private readonly double[] _inertia = new double[QuadraticElement.Nodes * QuadraticElement.Nodes];
    private readonly double[] _rotary = new double[QuadraticElement.Nodes * QuadraticElement.Nodes];
    private readonly double[] _row = new double[QuadraticElement.Unknowns];
    private readonly GaussLegendreRule _smooth = new(-1, 1, SmoothPoints);
    private readonly GaussLegendreRule _broken = new(-1, 1, BrokenPoints);
    private double _mass, _momentX, _momentY, _momentZ;

    public PlateAssembly(PlateFin fin, PlateOptions options)
    {
        (Fin, Options) = (fin, options);
        Mesh = new(fin, options);
        Order = 3 * Mesh.Nodes;
        Bandwidth = 3 * (2 * Mesh.Columns + 2) + 2;
        _layers = new(fin, options.LeastThickness);
        (Wall, Core, Mass) = (Matrix(), Matrix(), Matrix());
        for (int e = 0; e < Mesh.ChordElements * Mesh.SpanElements; e++)
            AddElement(e);
        if (fin.Rods.Count > 0)
        {
            Rods = Matrix();
            Paths = [.. fin.Rods.Select(rod => new RodPath(rod, Mesh))];
            for (int r = 0; r < fin.Rods.Count; r++)
                AddRod(fin.Rods[r], Paths[r]);
        }

        if (fin.Root.Springs is { } springs)
        {
            (Springs, BendingSprings) = (Matrix(), Matrix());
            AddSprings(springs, Springs, BendingSprings);
        }

        MassProperties = new(_mass, _momentX / _mass, _momentY / _mass, _momentZ / _mass);
    }

    public PlateFin Fin { get; }

    public PlateOptions Options { get; }

    public PlateMesh Mesh { get; }

    public int Order { get; }

    public int Bandwidth { get; }

    /// <summary>Unknowns of the root; where it is clamped they are zero.</summary>
    public int RootUnknowns => 3 * Mesh.Columns;

    public BandMatrix Wall { get; }

    public BandMatrix Core { get; }

    public BandMatrix? Rods { get; }

    /// <summary>What holds the root against moving and twisting; null when clamped.</summary>
    public BandMatrix? Springs { get; }

    /// <summary>What holds the root against bending; null when clamped.</summary>
    public BandMatrix? BendingSprings { get; }

    public BandMatrix Mass { get; }

    public IReadOnlyList<RodPath> Paths { get; } = [];

    public double Area { get; private set; }

    public PlateMass MassProperties { get; }

    /// <summary>Plane-stress stiffness of a material along x and y.</summary>
    public static (double Q11, double Q12, double Q22, double Q66) PlaneStress(Elasticity material)
    {
        double common = 1 - material.PoissonXY * material.PoissonYX;
        return (material.ModulusX / common, material.PoissonXY * material.ModulusY / common, material.ModulusY / common, material.ShearXY);
    }

    /// <summary>Stiffness over a square of one thickness, as the patch tests want it.</summary>
    internal static void AddStiffness(QuadraticElement element, double[] matrix, (double D11, double D12, double D22, double D66) bending, double shearX, double shearY)
    {
        const int Unknowns = QuadraticElement.Unknowns;
        (double d11, double d12, double d22, double d66) = bending;
        for (int i = 0; i < QuadraticElement.Nodes; i++)
        {
            double xi = element.DX[i], yi = element.DY[i];
            int slopeX = (3 * i + 1) * Unknowns, slopeY = slopeX + Unknowns;
            for (int j = 0; j <= i; j++)
            {
                double xj = element.DX[j], yj = element.DY[j];
                int column = 3 * j + 1;
                matrix[slopeX + column] += d11 * xi * xj + d66 * yi * yj;
                matrix[slopeX + column + 1] += d12 * xi * yj + d66 * yi * xj;
                matrix[slopeY + column] += d12 * yi * xj + d66 * xi * yj;
                matrix[slopeY + column + 1] += d22 * yi * yj + d66 * xi * xj;
            }
        }

        for (int u = 0; u < Unknowns; u++)
        {
            double x = shearX * element.ShearX[u], y = shearY * element.ShearY[u];
            Span<double> row = matrix.AsSpan(u * Unknowns, u + 1);
            for (int v = 0; v <= u; v++)
                row[v] += x * element.ShearX[v] + y * element.ShearY[v];
        }
    }

    private BandMatrix Matrix() => new(Order, Math.Min(Bandwidth, Order - 1));

    private void AddElement(int e)
    {
        Array.Clear(_wall);
        Array.Clear(_core);
        Array.Clear(_inertia);
        Array.Clear(_rotary);
        _element.Take(Mesh, e);
        GaussLegendreRule rule = IsBroken(e) ? _broken : _smooth;
        bool anyWall = false, anyCore = false;
        for (int q = 0; q < rule.Order * rule.Order; q++)
        {
            int across = q / rule.Order, along = q % rule.Order;
            _element.At(rule.Abscissas[along], rule.Abscissas[across]);
            _element.Shear();
            double area = _element.Area * rule.Weights[along] * rule.Weights[across];
            _layers.At(_element.X, _element.Y);
            for (int kind = 0; kind < LayerSums.Kinds; kind++)
            {
                double thickness = _layers.Thickness[kind];
                if (thickness <= 0)
                    continue;
                (anyWall, anyCore) = (anyWall || kind is LayerSums.Wall, anyCore || kind is not LayerSums.Wall);
                Elasticity material = _layers.Of(kind);
                (double q11, double q12, double q22, double q66) = PlaneStress(material);
                double second = area * _layers.About(kind), shear = area * ShearFactor * thickness;
                AddStiffness(_element, kind is LayerSums.Wall ? _wall : _core, (q11 * second, q12 * second, q22 * second, q66 * second), shear * material.ShearXZ, shear * material.ShearYZ);
            }

            AddInertia(area);
        }

        if (anyWall)
            Scatter(e, _wall, Wall);
        if (anyCore)
            Scatter(e, _core, Core);
        ScatterInertia(e);
    }

    private void AddInertia(double area)
    {
        double mass = 0, rotary = 0, height = 0;
        for (int kind = 0; kind < LayerSums.Kinds; kind++)
        {
            double density = _layers.Of(kind).Density;
            mass += density * _layers.Thickness[kind];
            height += density * _layers.First[kind];
            rotary += density * _layers.Second[kind];
        }

        Area += area;
        _mass += area * mass;
        _momentX += area * mass * _element.X;
        _momentY += area * mass * _element.Y;
        _momentZ += area * height;
        for (int i = 0; i < QuadraticElement.Nodes; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double product = area * _element.N[i] * _element.N[j];
                _inertia[i * QuadraticElement.Nodes + j] += mass * product;
                _rotary[i * QuadraticElement.Nodes + j] += rotary * product;
            }
        }
    }

    // Whether a hole or a sheet may begin inside an element.
    private bool IsBroken(int e)
    {
        if (Fin.Sheet is null && Fin.Voids.Count is 0)
            return false;
        double left = double.MaxValue, right = double.MinValue, top = double.MaxValue, bottom = double.MinValue;
        int covered = 0;
        for (int k = 0; k < QuadraticElement.Nodes; k++)
        {
            int node = Mesh.Node(e, k);
            double x = Mesh.X[node], y = Mesh.Y(node);
            (left, right, top, bottom) = (Math.Min(left, x), Math.Max(right, x), Math.Min(top, y), Math.Max(bottom, y));
            covered += Fin.Sheet is { } sheet && sheet.Covers(x, y) ? 1 : 0;
        }

        if (covered is > 0 and < QuadraticElement.Nodes)
            return true;
        foreach (PlateVoid hole in Fin.Voids)
        {
            if (hole.X + hole.HalfWidthX >= left && hole.X - hole.HalfWidthX <= right && hole.Y + hole.HalfWidthY >= top && hole.Y - hole.HalfWidthY <= bottom)
                return true;
        }

        return false;
    }

    private void Scatter(int e, double[] matrix, BandMatrix into)
    {
        Span<int> unknowns = stackalloc int[QuadraticElement.Unknowns];
        for (int u = 0; u < unknowns.Length; u++)
            unknowns[u] = 3 * Mesh.Node(e, u / 3) + u % 3;
        for (int u = 0; u < unknowns.Length; u++)
        {
            for (int v = 0; v <= u; v++)
                into.Add(unknowns[u], unknowns[v], matrix[u * QuadraticElement.Unknowns + v]);
        }
    }

    private void ScatterInertia(int e)
    {
        for (int i = 0; i < QuadraticElement.Nodes; i++)
        {
            int row = 3 * Mesh.Node(e, i);
            for (int j = 0; j <= i; j++)
            {
                int column = 3 * Mesh.Node(e, j), at = i * QuadraticElement.Nodes + j;
                Mass.Add(row, column, _inertia[at]);
                Mass.Add(row + 1, column + 1, _rotary[at]);
                Mass.Add(row + 2, column + 2, _rotary[at]);
            }
        }
    }

    // The rod bends and twists with the plate; what it displaces is taken off the part it lies in.
    private void AddRod(PlateRod rod, RodPath path)
    {
        double area = Math.PI * rod.Diameter * rod.Diameter / 4, own = area * rod.Diameter * rod.Diameter / 16;
        (double tx, double ty) = path.Direction;
        int element = -1;
        foreach (RodPoint point in path.Points)
        {
            if (point.Place.Element != element)
                _element.Take(Mesh, element = point.Place.Element);
            _element.At(point.Place.Xi, point.Place.Eta);
            _layers.At(_element.X, _element.Y);
            double height = rod.Z - _layers.Neutral, second = own + area * height * height;
            bool isWall = Math.Abs(rod.Z) >= _layers.CoreHalf;
            BandMatrix part = isWall ? Wall : Core;
            Elasticity around = isWall ? Fin.Wall : Fin.Core;
            double along = 1 / (tx * tx * tx * tx / around.ModulusX + ty * ty * ty * ty / around.ModulusY
                + tx * tx * ty * ty * (1 / around.ShearXY - 2 * around.PoissonXY / around.ModulusX));
            RodBending(_element, tx, ty, _row);
            AddProduct(element, Rods!, point.Length * rod.Modulus * second);
            AddProduct(element, part, -point.Length * along * second);
            RodTwisting(tx, ty);
            AddProduct(element, Rods!, point.Length * rod.ShearModulus * 2 * own);
            AddProduct(element, part, -point.Length * around.ShearXY * 2 * own);
            double extra = point.Length * (rod.Density - around.Density);
            AddRodMass(element, extra * area, extra * (own + area * rod.Z * rod.Z));
            _mass += extra * area;
            _momentX += extra * area * _element.X;
            _momentY += extra * area * _element.Y;
            _momentZ += extra * area * rod.Z;
        }
    }

    /// <summary>Curvature along a direction for each unknown.</summary>
    private static void RodBending(QuadraticElement element, double tx, double ty, double[] row)
    {
        for (int k = 0; k < QuadraticElement.Nodes; k++)
        {
            double along = tx * element.DX[k] + ty * element.DY[k];
            (row[3 * k], row[3 * k + 1], row[3 * k + 2]) = (0, tx * along, ty * along);
        }
    }

    // Change along the rod of the slope across it.
    private void RodTwisting(double tx, double ty)
    {
        for (int k = 0; k < QuadraticElement.Nodes; k++)
        {
            double along = tx * _element.DX[k] + ty * _element.DY[k];
            (_row[3 * k], _row[3 * k + 1], _row[3 * k + 2]) = (0, -ty * along, tx * along);
        }
    }

    private void AddProduct(int e, BandMatrix into, double factor)
    {
        for (int u = 0; u < QuadraticElement.Unknowns; u++)
        {
            if (_row[u] is 0)
                continue;
            int row = 3 * Mesh.Node(e, u / 3) + u % 3;
            for (int v = 0; v <= u; v++)
            {
                if (_row[v] is not 0)
                    into.Add(row, 3 * Mesh.Node(e, v / 3) + v % 3, factor * _row[u] * _row[v]);
            }
        }
    }

    private void AddRodMass(int e, double mass, double rotary)
    {
        for (int i = 0; i < QuadraticElement.Nodes; i++)
        {
            int row = 3 * Mesh.Node(e, i);
            for (int j = 0; j <= i; j++)
            {
                int column = 3 * Mesh.Node(e, j);
                double product = _element.N[i] * _element.N[j];
                Mass.Add(row, column, mass * product);
                Mass.Add(row + 1, column + 1, rotary * product);
                Mass.Add(row + 2, column + 2, rotary * product);
            }
        }
    }

    private void AddSprings(Func<double, RootSpring> springs, BandMatrix into, BandMatrix bending)
    {
        GaussLegendreRule rule = new(-1, 1, RootPoints);
        Span<double> n = stackalloc double[3];
        for (int e = 0; e < Mesh.ChordElements; e++)
        {
            double from = Mesh.X[2 * e], half = (Mesh.X[2 * e + 2] - from) / 2;
            for (int q = 0; q < RootPoints; q++)
            {
                double xi = rule.Abscissas[q], length = half * rule.Weights[q];
                RootSpring spring = springs(from + half * (1 + xi));
                Require.NotNegative(spring.Deflection);
                Require.NotNegative(spring.Bending);
                Require.NotNegative(spring.Twisting);
                (n[0], n[1], n[2]) = (xi * (xi - 1) / 2, 1 - xi * xi, xi * (xi + 1) / 2);
                for (int i = 0; i < 3; i++)
                {
                    for (int j = 0; j <= i; j++)
                    {
                        int row = 3 * (2 * e + i), column = 3 * (2 * e + j);
                        double product = length * n[i] * n[j];
                        into.Add(row, column, spring.Deflection * product);
                        into.Add(row + 1, column + 1, spring.Twisting * product);
                        bending.Add(row + 2, column + 2, spring.Bending * product);
                    }
                }
            }
        }
    }
}
