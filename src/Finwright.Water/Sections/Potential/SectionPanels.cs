using Finwright.Geometry;
using Finwright.Geometry.Sections;

namespace Finwright.Water.Sections.Potential;

/// <summary>
/// Nodes round a section, from the upper trailing edge over the nose to the lower trailing edge, with a panel between each pair of
/// neighbours. Chord 1, nose at the origin.
/// </summary>
public sealed class SectionPanels
{
    /// <summary>A trailing edge thinner than this share of the chord is taken as sharp.</summary>
    public const double SharpEdge = 1e-4;

    // Fine steps from which nodes are picked; the lookup between them is of fourth order.
    private const int Samples = 800;

    private SectionPanels(double[] x, double[] y, int nose)
    {
        (X, Y, Nose) = (x, y, nose);
        Length = new double[x.Length - 1];
        for (int i = 0; i < Length.Length; i++)
            Length[i] = Math.Sqrt(Squared(x[i + 1] - x[i]) + Squared(y[i + 1] - y[i]));
        Arc = new double[x.Length];
        for (int i = 1; i < x.Length; i++)
            Arc[i] = Arc[i - 1] + Length[i - 1];
    }

    /// <summary>x/c of the nodes.</summary>
    public double[] X { get; }

    /// <summary>y/c of the nodes.</summary>
    public double[] Y { get; }

    /// <summary>Length of the panel from each node to the next, chords.</summary>
    public double[] Length { get; }

    /// <summary>Length along the surface from the first node to each node, chords.</summary>
    public double[] Arc { get; }

    /// <summary>Index of the node nearest the nose on the upper side; the next is the first of the lower side.</summary>
    public int Nose { get; }

    /// <summary>Number of nodes.</summary>
    public int Count => X.Length;

    /// <summary>Distance between the two trailing edge corners, chords.</summary>
    public double Gap => Math.Sqrt(Squared(X[0] - X[^1]) + Squared(Y[0] - Y[^1]));

    /// <summary>Whether both sides meet in one point.</summary>
    public bool IsSharp => Gap < SharpEdge;

    /// <summary>Whether the lower side mirrors the upper to the last bit.</summary>
    public bool IsSymmetric { get; private init; }

    /// <summary>Unit vector that halves the angle between both sides at the trailing edge, pointing aft.</summary>
    public Point2 Bisector
    {
        get
        {
            int last = Count - 1;
            Point2 upper = new((X[0] - X[1]) / Length[0], (Y[0] - Y[1]) / Length[0]);
            Point2 lower = new((X[last] - X[last - 1]) / Length[last - 1], (Y[last] - Y[last - 1]) / Length[last - 1]);
            Point2 sum = upper + lower;
            return (1 / sum.Length) * sum;
        }
    }

    /// <summary>Lays nodes on a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="fineness">Multiplies the number of panels; 1 is the usual number, about 105.</param>
    /// <returns>Panels that are short at the nose in proportion to its radius, short at the trailing edge, and grow evenly between.</returns>
    public static SectionPanels Of(Section section, double fineness = 1)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fineness);
        bool symmetric = section.MaximumCamber is 0;
        Spacing spacing = new(SectionGeometry.Properties(section).LeadingEdgeRadius, fineness);
        (double[] upperX, double[] upperY) = Side(section, +1, spacing);
        double[] lowerX = upperX, lowerY = [.. upperY.Select(y => -y)];
        if (!symmetric)
            (lowerX, lowerY) = Side(section, -1, spacing);
        int nose = upperX.Length - 1;
        double[] x = [.. upperX.Reverse(), .. lowerX];
        double[] y = [.. upperY.Reverse(), .. lowerY];
        SectionPanels panels = new(x, y, nose) { IsSymmetric = symmetric };
        return panels.IsSharp ? panels.Closed() : panels;
    }

    /// <summary>Panels through given nodes, upper trailing edge first.</summary>
    /// <param name="points">At least 20 nodes in chords, once round, over the nose.</param>
    public static SectionPanels Through(IReadOnlyList<Point2> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 20)
            throw new ArgumentException($"{points.Count} nodes do not describe a section; give at least 20.", nameof(points));
        double[] x = [.. points.Select(p => p.X)], y = [.. points.Select(p => p.Y)];
        SectionPanels panels = new(x, y, Array.IndexOf(x, x.Min()));
        return panels.IsSharp ? panels.Closed() : panels;
    }

    /// <summary>Both corners brought to the same place.</summary>
    private SectionPanels Closed()
    {
        double[] x = [.. X], y = [.. Y];
        x[0] = x[^1] = (X[0] + X[^1]) / 2;
        y[0] = y[^1] = (Y[0] + Y[^1]) / 2;
        return new(x, y, Nose) { IsSymmetric = IsSymmetric };
    }

    /// <summary>Nodes of one side, nose first.</summary>
    private static (double[] X, double[] Y) Side(Section section, int side, Spacing spacing)
    {
        double[] station = new double[Samples + 1], arc = new double[Samples + 1];
        Point2 before = new(0, 0);
        for (int i = 0; i <= Samples; i++)
        {
            station[i] = 0.5 - 0.5 * Math.Cos(Math.PI * i / Samples);
            Point2 point = SectionGeometry.SurfaceAt(section, station[i], side);
            arc[i] = i == 0 ? 0 : arc[i - 1] + (point - before).Length;
            before = point;
        }

        double[] places = spacing.Places(arc[^1]);
        double[] x = new double[places.Length], y = new double[places.Length];
        int from = 0;
        for (int k = 0; k < places.Length; k++)
        {
            while (from < Samples - 1 && arc[from + 1] < places[k])
                from++;
            double share = Math.Clamp((places[k] - arc[from]) / (arc[from + 1] - arc[from]), 0, 1);
            double turn = Math.PI * (from + share) / Samples;
            double at = k == places.Length - 1 ? 1 : 0.5 - 0.5 * Math.Cos(turn);
            Point2 point = SectionGeometry.SurfaceAt(section, at, side);
            (x[k], y[k]) = (point.X, point.Y);
        }

        return (x, y);
    }

    private static double Squared(double x) => x * x;

    /// <summary>How long panels are along a side.</summary>
    private readonly record struct Spacing(double NoseRadius, double Fineness)
    {
        // With panels a third as long, lift and drag of attached sections move by less than 0.5 %.
        private const double NoseTurn = 0.21;
        private const double Growth = 0.16;
        private const double Longest = 0.025;
        private const double EdgePanel = 0.008;
        private const double SmallestNose = 2e-4;

        /// <summary>Distances from the nose along a side of a given length, nearest first.</summary>
        public double[] Places(double length)
        {
            const int Steps = 4000;
            double nose = Math.Clamp(NoseTurn * NoseRadius, SmallestNose, Longest);
            double[] count = new double[Steps + 1];
            for (int i = 1; i <= Steps; i++)
                count[i] = count[i - 1] + length / Steps / Panel(length * (i - 0.5) / Steps, length, nose);
            int panels = Math.Max(12, (int)Math.Round(count[Steps] * Fineness));
            double[] places = new double[panels];
            int at = 0;
            for (int k = 0; k < panels - 1; k++)
            {
                // Half a panel on each side of the nose: where the stream parts at no angle, no node lies.
                double wanted = count[Steps] * (k + 0.5) / (panels - 0.5);
                while (count[at + 1] < wanted)
                    at++;
                places[k] = length / Steps * (at + (wanted - count[at]) / (count[at + 1] - count[at]));
            }

            places[^1] = length;
            return places;
        }

        private static double Panel(double place, double length, double nose) =>
            Math.Min(Longest, Math.Min(nose + Growth * place, EdgePanel + Growth * (length - place)));
    }
}
