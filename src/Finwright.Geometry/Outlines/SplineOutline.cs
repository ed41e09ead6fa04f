using System.Diagnostics.CodeAnalysis;
using Finwright.Numerics;

namespace Finwright.Geometry.Outlines;

/// <summary>
/// An outline whose edges are cubic B-splines x(t), depth(t) of their own. Depth never falls along an edge, so each depth meets
/// each edge once; it may stand still at the end, so the tip can be round. The edges meet at the tip or leave a flat one.
/// </summary>
public sealed class SplineOutline : Outline
{
    /// <summary>Edges that end less than this apart in depth count as ending together, metres.</summary>
    private const double SameDepth = 1e-9;

    /// <summary>Depths looked at on each polynomial piece in search of crossing edges.</summary>
    private const int ProbesPerPiece = 32;

    private SplineOutline(BSplineCurve leading, BSplineCurve trailing)
    {
        LeadingCurve = leading;
        TrailingCurve = trailing;
        Span = leading.ControlY[^1];
    }

    /// <inheritdoc/>
    public override double Span { get; }

    /// <summary>Leading edge: x over depth, root first.</summary>
    public BSplineCurve LeadingCurve { get; }

    /// <summary>Trailing edge: x over depth, root first.</summary>
    public BSplineCurve TrailingCurve { get; }

    /// <summary>Makes an outline, shifted fore and aft so that the root's quarter chord is the origin.</summary>
    /// <param name="leadingEdge">Control points of the leading edge: X aft of any line that both edges share, Y depth; root first; metres.</param>
    /// <param name="trailingEdge">Control points of the trailing edge, likewise.</param>
    /// <param name="outline">The outline, when there is no fault.</param>
    /// <param name="faults">Every fault found; nothing is added when the outline is good.</param>
    /// <returns>Whether the points make an outline.</returns>
    public static bool TryCreate(
        IReadOnlyList<Point2> leadingEdge,
        IReadOnlyList<Point2> trailingEdge,
        [NotNullWhen(true)] out SplineOutline? outline,
        ICollection<OutlineFault> faults)
    {
        ArgumentNullException.ThrowIfNull(leadingEdge);
        ArgumentNullException.ThrowIfNull(trailingEdge);
        ArgumentNullException.ThrowIfNull(faults);
        outline = null;
        bool edgesGood = CheckEdge(leadingEdge, OutlineEdge.Leading, faults) & CheckEdge(trailingEdge, OutlineEdge.Trailing, faults);
        if (!edgesGood)
            return false;
        double tipStep = trailingEdge[^1].Y - leadingEdge[^1].Y;
        if (Math.Abs(tipStep) > SameDepth)
        {
            faults.Add(new(OutlineFaultKind.TipsDiffer, tipStep > 0 ? OutlineEdge.Leading : OutlineEdge.Trailing, -1, Math.Min(leadingEdge[^1].Y, trailingEdge[^1].Y), Math.Abs(tipStep)));
            return false;
        }

        double datum = 0.75 * leadingEdge[0].X + 0.25 * trailingEdge[0].X;
        double span = leadingEdge[^1].Y;
        SplineOutline made = new(Curve(leadingEdge, datum, span), Curve(trailingEdge, datum, span));
        if (made.NarrowestCrossing() is { } crossing)
        {
            faults.Add(new(OutlineFaultKind.EdgesCross, OutlineEdge.Leading, -1, crossing.Depth, crossing.Chord));
            return false;
        }

        outline = made;
        return true;
    }

    /// <inheritdoc/>
    public override double LeadingEdge(double y) => LeadingCurve.At(LeadingCurve.ParameterAtY(y)).X;

    /// <inheritdoc/>
    public override double TrailingEdge(double y) => TrailingCurve.At(TrailingCurve.ParameterAtY(y)).X;

    /// <summary>Depths at which a polynomial piece of either edge ends, rising from 0 to the span.</summary>
    internal double[] PieceDepths()
    {
        SortedSet<double> depths = [0, Span];
        foreach (BSplineCurve curve in (ReadOnlySpan<BSplineCurve>)[LeadingCurve, TrailingCurve])
            foreach (double t in curve.Breaks)
                depths.Add(Math.Clamp(curve.At(t).Y, 0, Span));
        return [.. depths];
    }

    private static bool CheckEdge(IReadOnlyList<Point2> points, OutlineEdge edge, ICollection<OutlineFault> faults)
    {
        int before = faults.Count;
        if (points.Count < 2)
        {
            faults.Add(new(OutlineFaultKind.TooFewPoints, edge, -1, 0, 0));
            return false;
        }

        for (int i = 0; i < points.Count; i++)
            if (!double.IsFinite(points[i].X) || !double.IsFinite(points[i].Y))
                faults.Add(new(OutlineFaultKind.NotFinite, edge, i, 0, 0));
        if (faults.Count > before)
            return false;

        if (Math.Abs(points[0].Y) > SameDepth)
            faults.Add(new(OutlineFaultKind.RootOffHull, edge, 0, points[0].Y, Math.Abs(points[0].Y)));
        for (int i = 1; i < points.Count; i++)
            if (points[i].Y < points[i - 1].Y)
                faults.Add(new(OutlineFaultKind.DepthFalls, edge, i, points[i].Y, points[i - 1].Y - points[i].Y));
        if (faults.Count > before)
            return false;

        if (points[^1].Y <= SameDepth)
            faults.Add(new(OutlineFaultKind.NoDepth, edge, points.Count - 1, points[^1].Y, points[^1].Y));

        // A piece of degree p whose p + 1 control points share a depth runs level: the edge would have many x at one depth.
        int degree = Math.Min(BSplineCurve.MaximumDegree, points.Count - 1);
        for (int i = degree; i < points.Count && faults.Count == before; i++)
            if (points[i].Y - points[i - degree].Y <= SameDepth)
                faults.Add(new(OutlineFaultKind.DepthStands, edge, i, points[i].Y, 0));
        return faults.Count == before;
    }

    private static BSplineCurve Curve(IReadOnlyList<Point2> points, double datum, double span)
    {
        double[] x = new double[points.Count], y = new double[points.Count];
        for (int i = 0; i < points.Count; i++)
            (x[i], y[i]) = (points[i].X - datum, Math.Min(points[i].Y, span));
        (y[0], y[^1]) = (0, span);
        return BSplineCurve.WithUniformKnots(x, y);
    }

    /// <summary>The place above the tip where the chord is smallest, if it is not positive there.</summary>
    private (double Depth, double Chord)? NarrowestCrossing()
    {
        double[] pieces = PieceDepths();
        (double Depth, double Chord) narrowest = (0, Chord(0));
        for (int i = 1; i < pieces.Length; i++)
            for (int j = 1; j <= ProbesPerPiece; j++)
            {
                // Squeezed toward the piece's end, where the edges of a round tip close like a square root.
                double left = 1 - (double)j / ProbesPerPiece;
                double depth = pieces[i] - (pieces[i] - pieces[i - 1]) * left * left;
                if (depth >= Span)
                    continue;
                double chord = Chord(depth);
                if (chord < narrowest.Chord)
                    narrowest = (depth, chord);
            }

        // The edges of a round tip may meet at the full depth, never before, and never cross there.
        if (narrowest.Chord > 0 && Chord(Span) < -SameDepth)
            narrowest = (Span, Chord(Span));
        return narrowest.Chord > 0 ? null : narrowest;
    }
}
