using Finwright.Numerics;

namespace Finwright.Strength.Vibrations;

/// <summary>What the blade meets at its root when it shakes in the water.</summary>
public enum VibrationRoot
{
    /// <summary>An endless wall: the hull over the fin.</summary>
    Wall,

    /// <summary>Nothing: the blade ends there in open water.</summary>
    None,

    /// <summary>A free surface that gives way to every pressure.</summary>
    FreeSurface,
}

/// <summary>How finely the blade is divided for its added mass.</summary>
/// <param name="ChordPanels">Panels along the chord, at least 2.</param>
/// <param name="SpanPanels">Panels along the span, at least 2.</param>
public sealed record AddedMassOptions(int ChordPanels = 10, int SpanPanels = 16);

/// <summary>The water that a thin blade takes along when it moves sideways, on both its sides.</summary>
/// <remarks>
/// Potential flow without stream: a sheet of constant doublets (rings of vortices) on the planform, edges at equal steps of an angle and the flow met midway in that angle, which
/// suits jumps that grow like the root of the distance from the edges. Images at the root. The energy ½ρ∫Δφ w dA gives the mass (Lamb, Hydrodynamics, 1932; from memory).
/// Limits: a sheet without thickness (across its chord an ellipse of any thickness takes as much water along as the flat plate; Lamb, from memory), small motion, no stream past it: at
/// speed the water also damps and stiffens. The wall is endless, the hull is not: somewhat too much water near the root.
/// </remarks>
public sealed class AddedMass
{
    // A place this close to the line of a vortex, as a share of the squared lengths, gets nothing from it.
    private const double OnLine = 1e-20;

    private readonly int _chords, _spans;
    private readonly double[] _x, _y, _area;
    private readonly DenseLu _factor;

    private AddedMass(double span, Func<double, double> leadingEdge, Func<double, double> trailingEdge, VibrationRoot root, AddedMassOptions options)
    {
        (_chords, _spans) = (options.ChordPanels, options.SpanPanels);
        int panels = _chords * _spans, columns = _chords + 1;
        (_x, _y, _area) = (new double[panels], new double[panels], new double[panels]);
        double[] cornerX = new double[columns * (_spans + 1)], cornerY = new double[_spans + 1];
        for (int j = 0; j <= _spans; j++)
        {
            double y = cornerY[j] = span * SpanShare((double)j / _spans, root), leading = leadingEdge(y), chord = trailingEdge(y) - leading;
            for (int i = 0; i < columns; i++)
                cornerX[j * columns + i] = leading + chord * ChordShare((double)i / _chords);
        }

        for (int j = 0; j < _spans; j++)
        {
            // On the panels' own straight edges: on a round outline between them the flow would be met beside the middle of the panels, to a tip's great loss.
            double y = span * SpanShare((j + 0.5) / _spans, root), share = (y - cornerY[j]) / (cornerY[j + 1] - cornerY[j]);
            int near = j * columns, far = near + columns;
            double leading = (1 - share) * cornerX[near] + share * cornerX[far], chord = (1 - share) * cornerX[near + _chords] + share * cornerX[far + _chords] - leading;
            for (int i = 0; i < _chords; i++)
            {
                int at = j * columns + i, panel = j * _chords + i;
                (_x[panel], _y[panel]) = (leading + chord * ChordShare((i + 0.5) / _chords), y);
                _area[panel] = 0.5 * (cornerX[at + 1] - cornerX[at] + cornerX[at + columns + 1] - cornerX[at + columns]) * (cornerY[j + 1] - cornerY[j]);
                Area += _area[panel];
            }
        }

        _factor = new(panels);
        IsSolvable = _factor.Factor(Influence(cornerX, cornerY, root));
    }

    /// <summary>Area of the panels, m².</summary>
    public double Area { get; }

    /// <summary>Whether the panels determine the flow; false for a planform with no chord over most of its span.</summary>
    public bool IsSolvable { get; }

    /// <summary>Lays panels on a blade.</summary>
    /// <param name="span">Depth of the tip, m; the root is at y = 0.</param>
    /// <param name="leadingEdge">x of the leading edge at a depth, m.</param>
    /// <param name="trailingEdge">x of the trailing edge at a depth, m; nowhere before the leading edge.</param>
    /// <param name="root">What it meets at its root.</param>
    /// <param name="options">How finely; null for 10 by 16 panels.</param>
    public static AddedMass Create(double span, Func<double, double> leadingEdge, Func<double, double> trailingEdge, VibrationRoot root, AddedMassOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(leadingEdge);
        ArgumentNullException.ThrowIfNull(trailingEdge);
        options ??= new();
        Require.Positive(span);
        Require.AtLeast(options.ChordPanels, 2);
        Require.AtLeast(options.SpanPanels, 2);
        return new(span, leadingEdge, trailingEdge, root, options);
    }

    /// <summary>Generalised added mass of shapes of motion.</summary>
    /// <param name="shapes">Sideways motion at (x, y) of each shape; no unit for a mass in kg.</param>
    /// <param name="density">Of the water, kg/m³.</param>
    /// <returns>Symmetric matrix, row by row: energy of the water is half of it between the speeds of the shapes. Null when the panels do not determine the flow.</returns>
    public double[]? Matrix(IReadOnlyList<Func<double, double, double>> shapes, double density)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        Require.NotNegative(density);
        if (!IsSolvable)
            return null;
        int count = shapes.Count, panels = _x.Length;
        double[] motion = new double[panels * count], jump = new double[panels * count], mass = new double[count * count];
        for (int p = 0; p < panels; p++)
            for (int k = 0; k < count; k++)
                motion[p * count + k] = Require.Finite(shapes[k](_x[p], _y[p]));
        _factor.SolveMany(motion, count, jump);
        for (int p = 0; p < panels; p++)
            for (int k = 0; k < count; k++)
                for (int l = 0; l < count; l++)
                    mass[k * count + l] += 0.5 * density * _area[p] * (motion[p * count + k] * jump[p * count + l] + motion[p * count + l] * jump[p * count + k]);
        return mass;
    }

    private static double ChordShare(double share) => 0.5 * (1 - Math.Cos(Math.PI * share));

    // Panels crowd towards free ends; at an image there is none.
    private static double SpanShare(double share, VibrationRoot root) => root is VibrationRoot.None ? ChordShare(share) : Math.Sin(0.5 * Math.PI * share);

    private double[] Influence(double[] cornerX, double[] cornerY, VibrationRoot root)
    {
        int panels = _x.Length, columns = _chords + 1;
        double image = root switch { VibrationRoot.Wall => 1, VibrationRoot.FreeSurface => -1, _ => 0 };
        double[] influence = new double[panels * panels];
        // Each edge once, for both rings it belongs to: along the span between rings fore and aft, along the chord between rings above and below.
        for (int p = 0; p < panels; p++)
        {
            Span<double> row = influence.AsSpan(p * panels, panels);
            double x = _x[p], y = _y[p];
            for (int j = 0; j <= _spans; j++)
            {
                for (int i = 0; i <= _chords; i++)
                {
                    int at = j * columns + i, panel = j * _chords + i;
                    if (j < _spans)
                    {
                        double edge = Edge(x, y, image, cornerX[at], cornerY[j], cornerX[at + columns], cornerY[j + 1]);
                        if (i < _chords)
                            row[panel] -= edge;
                        if (i > 0)
                            row[panel - 1] += edge;
                    }

                    if (i < _chords)
                    {
                        double edge = Edge(x, y, image, cornerX[at], cornerY[j], cornerX[at + 1], cornerY[j]);
                        if (j < _spans)
                            row[panel] += edge;
                        if (j > 0)
                            row[panel - _chords] -= edge;
                    }
                }
            }
        }

        return influence;
    }

    private static double Edge(double x, double y, double image, double fromX, double fromY, double toX, double toY)
    {
        double own = Segment(x, y, fromX, fromY, toX, toY);
        return image is 0 ? own : own + image * Segment(x, -y, fromX, fromY, toX, toY);
    }

    /// <summary>Speed along z at a place in the plane of a straight vortex of unit strength (Biot and Savart).</summary>
    private static double Segment(double x, double y, double fromX, double fromY, double toX, double toY)
    {
        double ax = x - fromX, ay = y - fromY, bx = x - toX, by = y - toY, cross = ax * by - ay * bx;
        double a = ax * ax + ay * ay, b = bx * bx + by * by;
        if (cross * cross <= OnLine * a * b)
            return 0;
        double sx = toX - fromX, sy = toY - fromY;
        return ((sx * ax + sy * ay) / Math.Sqrt(a) - (sx * bx + sy * by) / Math.Sqrt(b)) / (4 * Math.PI * cross);
    }
}
