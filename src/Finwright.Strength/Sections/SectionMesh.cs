using Finwright.Numerics;

namespace Finwright.Strength.Sections;

/// <summary>Nine-node quadrilaterals on a section: columns along the chord, layers through wall, core and wall.</summary>
/// <remarks>
/// Node lines run along z at one x each, at equal steps of an angle (x ∝ 1 − cos): a side that grows like √x from the nose is then a quadratic within its first column, which
/// these elements follow exactly. Layers lie on the border of the wall where there is core enough; elsewhere the material is decided point by point.
/// </remarks>
internal sealed class SectionMesh
{
    // Sides that meet are held apart by this share of the greatest thickness, so that no element is empty.
    private const double LeastThicknessShare = 1e-3;

    // Layers of the wall take no more and no less of the thickness: thinner core, or wall, is decided point by point.
    private const double LargestWallShare = 0.4, LeastWallShare = 0.02;

    private readonly double[] _x, _low, _thickness, _wall, _z;
    private readonly double[] _edges;
    private readonly double _evenShare;

    public SectionMesh(CompositeSection section, SectionMeshOptions options)
    {
        (Columns, Layers) = (options.Columns, 2 * options.WallLayers + options.CoreLayers);
        int lines = 2 * Columns + 1;
        Rows = 2 * Layers + 1;
        _evenShare = (double)options.WallLayers / Layers;
        double[] angles = Angles(section, Columns);
        (_x, _low, _thickness, _wall) = (new double[lines], new double[lines], new double[lines], new double[lines]);
        _z = new double[lines * Rows];
        for (int i = 0; i < lines; i++)
        {
            double share = i == lines - 1 ? 1 : (1 - Math.Cos(angles[i])) / 2;
            _x[i] = section.LeadingX + share * (section.TrailingX - section.LeadingX);
            (double low, double high) = section.Surface(_x[i]);
            if (!(high >= low) || !double.IsFinite(high - low))
                throw new ArgumentException($"At x = {_x[i]} m the section's sides are at {low} m and {high} m; the second must not be below the first.", nameof(section));
            (_low[i], _thickness[i]) = (low, high - low);
        }

        double least = LeastThicknessShare * _thickness.Max();
        if (!(least > 0))
            throw new ArgumentException("The section has no thickness anywhere.", nameof(section));
        for (int i = 0; i < lines; i++)
        {
            if (_thickness[i] < least)
                (_low[i], _thickness[i]) = (_low[i] + (_thickness[i] - least) / 2, least);
        }

        // Where the sides end at a step, as at the blunt edge of a turned section, a quadratic would dip below nothing: there the column runs straight.
        for (int i = 1; i < lines; i += 2)
        {
            if (LeastBetween(_thickness[i - 1], _thickness[i], _thickness[i + 1]) < least / 2)
                (_low[i], _thickness[i]) = ((_low[i - 1] + _low[i + 1]) / 2, (_thickness[i - 1] + _thickness[i + 1]) / 2);
        }

        for (int i = 0; i < lines; i++)
        {
            // Deeper than through is through; a boundless depth would not survive interpolation.
            _wall[i] = Math.Min(Require.NotNegative(section.WallDepth(_x[i])), _thickness[i]);
        }

        for (int i = 0; i < lines; i++)
        {
            double wall = WallShare(i);
            // The middle of a column in which the layers leave the wall's border stays between both its ends, or a quadratic could cross its neighbour.
            if (i % 2 == 1 && (IsHeldBack(i - 1) || IsHeldBack(i) || IsHeldBack(i + 1)))
                wall = 0.5 * (WallShare(i - 1) + WallShare(i + 1));
            for (int j = 0; j < Rows; j++)
                _z[i * Rows + j] = _low[i] + Fraction(0.5 * j, wall, options) * _thickness[i];
        }

        _edges = new double[Columns + 1];
        for (int c = 0; c <= Columns; c++)
            _edges[c] = _x[2 * c];
    }

    /// <summary>Elements along the chord.</summary>
    public int Columns { get; }

    /// <summary>Elements through the thickness.</summary>
    public int Layers { get; }

    /// <summary>Nodes on a line.</summary>
    public int Rows { get; }

    public int Nodes => _x.Length * Rows;

    /// <summary>Nodes of one element lie no farther apart in their numbers.</summary>
    public int Bandwidth => 2 * Rows + 2;

    /// <summary>Number of a node of an element, its own number being 3 i + j: i along the chord, j through the thickness.</summary>
    public int Node(int column, int layer, int local) => (2 * column + local / 3) * Rows + 2 * layer + local % 3;

    /// <summary>A place within an element, with what is needed to differentiate there.</summary>
    /// <param name="column">Element along the chord.</param>
    /// <param name="layer">Element through the thickness.</param>
    /// <param name="xi">−1 to 1 along the chord.</param>
    /// <param name="eta">−1 to 1 through the thickness.</param>
    public SectionMeshPoint Point(int column, int layer, double xi, double eta)
    {
        (double a, double b, double c) = Lagrange(xi);
        (double da, double db, double dc) = LagrangeSlope(xi);
        int i = 2 * column, at = i * Rows + 2 * layer;
        double bottom = a * _z[at] + b * _z[at + Rows] + c * _z[at + 2 * Rows], top = a * _z[at + 2] + b * _z[at + Rows + 2] + c * _z[at + 2 * Rows + 2];
        double bottomSlope = da * _z[at] + db * _z[at + Rows] + dc * _z[at + 2 * Rows], topSlope = da * _z[at + 2] + db * _z[at + Rows + 2] + dc * _z[at + 2 * Rows + 2];
        double z = 0.5 * ((1 - eta) * bottom + (1 + eta) * top);
        double low = a * _low[i] + b * _low[i + 1] + c * _low[i + 2], thickness = a * _thickness[i] + b * _thickness[i + 1] + c * _thickness[i + 2];
        double depth = Math.Min(z - low, low + thickness - z);
        return new(
            a * _x[i] + b * _x[i + 1] + c * _x[i + 2],
            z,
            da * _x[i] + db * _x[i + 1] + dc * _x[i + 2],
            0.5 * ((1 - eta) * bottomSlope + (1 + eta) * topSlope),
            0.5 * (top - bottom),
            depth < a * _wall[i] + b * _wall[i + 1] + c * _wall[i + 2]);
    }

    /// <summary>The element and the place in it where a point lies; the nearest inside for a point outside.</summary>
    public (int Column, int Layer, double Xi, double Eta) Locate(double x, double z)
    {
        int column = Array.BinarySearch(_edges, x);
        column = Math.Clamp(column < 0 ? ~column - 1 : column, 0, Columns - 1);
        // x is a quadratic of ξ with its middle near the mean: x = m + h ξ + s ξ².
        int i = 2 * column;
        double half = 0.5 * (_x[i + 2] - _x[i]), skew = 0.5 * (_x[i + 2] + _x[i]) - _x[i + 1], away = x - _x[i + 1];
        double xi = Math.Clamp(2 * away / (half + Math.Sqrt(Math.Max(half * half + 4 * skew * away, 0))), -1, 1);
        int layer = 0;
        while (layer < Layers - 1 && z > Point(column, layer, xi, 1).Z)
            layer++;
        SectionMeshPoint middle = Point(column, layer, xi, 0);
        return (column, layer, xi, Math.Clamp((z - middle.Z) / middle.SlopeZEta, -1, 1));
    }

    public static (double A, double B, double C) Lagrange(double s) => (0.5 * s * (s - 1), 1 - s * s, 0.5 * s * (s + 1));

    public static (double A, double B, double C) LagrangeSlope(double s) => (s - 0.5, -2 * s, s + 0.5);

    // Without a wall all layers are as thick as one another.
    private double WallShare(int line) => _wall[line] is 0 ? _evenShare : Math.Clamp(_wall[line] / _thickness[line], LeastWallShare, LargestWallShare);

    private bool IsHeldBack(int line) => _wall[line] is not 0 && !(_wall[line] >= LeastWallShare * _thickness[line] && _wall[line] <= LargestWallShare * _thickness[line]);

    // Element edges at equal angles; those nearest the ends of a hollow move onto them.
    private static double[] Angles(CompositeSection section, int columns)
    {
        double[] edges = new double[columns + 1];
        for (int c = 0; c <= columns; c++)
            edges[c] = Math.PI * c / columns;
        foreach (SectionVoid hollow in section.Voids)
        {
            foreach (double x in new[] { hollow.FromX, hollow.ToX })
            {
                double share = (x - section.LeadingX) / (section.TrailingX - section.LeadingX);
                if (!(share > 0 && share < 1))
                    continue;
                double angle = Math.Acos(1 - 2 * share);
                int nearest = Math.Clamp((int)Math.Round(angle / Math.PI * columns), 1, columns - 1);
                if (angle > edges[nearest - 1] && angle < edges[nearest + 1])
                    edges[nearest] = angle;
            }
        }

        double[] angles = new double[2 * columns + 1];
        for (int i = 0; i < angles.Length; i++)
            angles[i] = 0.5 * (edges[i / 2] + edges[(i + 1) / 2]);
        return angles;
    }

    // The least of a quadratic through three values at −1, 0 and 1.
    private static double LeastBetween(double first, double middle, double last)
    {
        double slope = (last - first) / 2, bend = (last + first) / 2 - middle;
        return bend > 0 && Math.Abs(slope) < 2 * bend ? middle - slope * slope / (4 * bend) : Math.Min(first, Math.Min(middle, last));
    }

    // Share of the thickness below a place counted in layers.
    private static double Fraction(double place, double wall, SectionMeshOptions options)
    {
        int walls = options.WallLayers, cores = options.CoreLayers;
        if (place <= walls)
            return wall * place / walls;
        return place <= walls + cores
            ? wall + (1 - 2 * wall) * (place - walls) / cores
            : 1 - wall * (2 * walls + cores - place) / walls;
    }
}

/// <summary>A place in an element of a section.</summary>
/// <param name="X">m.</param>
/// <param name="Z">m.</param>
/// <param name="SlopeX">∂x/∂ξ; ∂x/∂η is zero.</param>
/// <param name="SlopeZXi">∂z/∂ξ.</param>
/// <param name="SlopeZEta">∂z/∂η.</param>
/// <param name="IsWall">Whether it lies in the wall.</param>
internal readonly record struct SectionMeshPoint(double X, double Z, double SlopeX, double SlopeZXi, double SlopeZEta, bool IsWall);
