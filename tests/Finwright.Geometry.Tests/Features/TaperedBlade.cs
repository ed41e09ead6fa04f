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
