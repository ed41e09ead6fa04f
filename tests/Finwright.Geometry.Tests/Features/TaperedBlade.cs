using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Tests.Features;

/// <summary>
/// A blade in closed form: straight edges, elliptical sections with a blunt trailing edge, linear twist about the quarter
/// chord line. Its skin, mid-surface and thickness can be written down, so distances have an outside truth.
/// </summary>
internal sealed class TaperedBlade : BladeShape
{
    private readonly double _root, _tip, _rake, _thicknessRatio, _twist;

    public TaperedBlade(double span, double root, double tip, double rake, double thicknessRatio, double trailingEdge = 1.6e-3, double twist = 0)
    {
        (_root, _tip, _rake, _thicknessRatio, _twist) = (root, tip, rake, thicknessRatio, twist);
        TrailingEdgeThickness = trailingEdge;
        Outline = new StraightEdges(span, -root / 4, span * Math.Tan(rake) - tip / 4, 3 * root / 4, span * Math.Tan(rake) + 3 * tip / 4);
    }

    public override Outline Outline { get; }

    public override double TrailingEdgeThickness { get; }

    public override double ThicknessRatio(double y) => _thicknessRatio;

    public override double Twist(double y) => _twist * y / Span;

    public double Chord(double y) => _root + (_tip - _root) * y / Span;

    // The mid-surface leans with the small twist: z falls aft when the nose turns to starboard.
    public override double MidSurface(double x, double y) => -(x - y * Math.Tan(_rake)) * Math.Tan(Twist(y));

    public override double HalfThickness(double x, double y)
    {
        if (y < 0 || y > Span)
            return 0;
        double s = (x - Outline.LeadingEdge(y)) / Outline.Chord(y);
        return s is < 0 or > 1 ? 0 : Half(s, y);
    }

    public override Point3 Skin(double y, double u)
    {
        double s = (1 + Math.Cos(2 * Math.PI * u)) / 2, x = Outline.LeadingEdge(y) + s * Outline.Chord(y);
        return new(x, y, MidSurface(x, y) + (u <= 0.5 ? 1 : -1) * Half(s, y));
    }

    /// <summary>The blade as a closed mesh with flat ends.</summary>
    public TriangleMesh Mesh(int stations = 60, int round = 200)
    {
        double[] vertices = new double[3 * ((stations + 1) * (round + 1) + 2)];
        void Put(int index, Point3 p) => (vertices[3 * index], vertices[3 * index + 1], vertices[3 * index + 2]) = (p.X, p.Y, p.Z);
        int At(int i, int j) => i * (round + 1) + j % (round + 1);
        for (int i = 0; i <= stations; i++)
            for (int j = 0; j <= round; j++)
                Put(At(i, j), Skin(Span * i / stations, (double)j / round));
        int rootMiddle = (stations + 1) * (round + 1), tipMiddle = rootMiddle + 1;
        Put(rootMiddle, new((Outline.LeadingEdge(0) + Outline.TrailingEdge(0)) / 2, 0, 0));
        double tipX = (Outline.LeadingEdge(Span) + Outline.TrailingEdge(Span)) / 2;
        Put(tipMiddle, new(tipX, Span, MidSurface(tipX, Span)));
        List<int> corners = [];
        for (int j = 0; j <= round; j++)
        {
            for (int i = 0; i < stations; i++)
                corners.AddRange([At(i, j), At(i + 1, j), At(i, j + 1), At(i, j + 1), At(i + 1, j), At(i + 1, j + 1)]);
            corners.AddRange([rootMiddle, At(0, j), At(0, j + 1)]);
            corners.AddRange([tipMiddle, At(stations, j + 1), At(stations, j)]);
        }

        TriangleMesh mesh = new(vertices, [.. corners]);
        if (mesh.Volume() > 0)
            return mesh;
        for (int k = 0; k < corners.Count; k += 3)
            (corners[k + 1], corners[k + 2]) = (corners[k + 2], corners[k + 1]);
        return new(vertices, [.. corners]);
    }

    // Half an ellipse, with the blunt edge blended in linearly.
    private double Half(double s, double y) =>
        _thicknessRatio * Outline.Chord(y) * Math.Sqrt(Math.Max(0, s * (1 - s))) + s * TrailingEdgeThickness / 2;

    private sealed class StraightEdges(double span, double leadingRoot, double leadingTip, double trailingRoot, double trailingTip) : Outline
    {
        public override double Span => span;

        public override double LeadingEdge(double y) => leadingRoot + (leadingTip - leadingRoot) * y / span;

        public override double TrailingEdge(double y) => trailingRoot + (trailingTip - trailingRoot) * y / span;
    }
}
