using Finwright.Geometry.Outlines;
using Finwright.Geometry.Tests.Blades;

namespace Finwright.Geometry.Tests.Evidence;

/// <summary>Measures of outlines beside closed forms.</summary>
internal static class OutlineEvidence
{
    // Handles of the Bézier cubic that stands for a quarter of an ellipse.
    private const double Handle = 0.5522847498;

    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Trapezoid(), .. Ellipse()];

    private static IEnumerable<EvidenceRow> Trapezoid()
    {
        const string Topic = "Outline: trapezoid 200 to 100 mm over 300 mm, tip 60 mm aft", Form = "closed form", Exact = "rounding";
        Planform own = Planform.Of(TestBlades.Trapezoid(0.2, 0.1, 0.3, 0.06));
        yield return new(Topic, "Area, m²", Form, 0.045, own.Area, 1e-15, Exact);
        yield return new(Topic, "Mean aerodynamic chord, m", Form, 2.0 / 3 * 0.07 / 0.3, own.MeanAerodynamicChord, 1e-14, Exact);
        yield return new(Topic, "Depth of the centroid, m", Form, 0.3 * 0.4 / 0.9, own.Centroid.Y, 1e-14, Exact);
        yield return new(Topic, "Sweep of the leading edge, rad", Form, Math.Atan2(0.085, 0.3), own.LeadingEdgeSweep(0.17), 1e-12, Exact);
    }

    private static IEnumerable<EvidenceRow> Ellipse()
    {
        const string Topic = "Outline: half an ellipse, root chord 100 mm, 300 mm deep", Form = "closed form", Cubic = "the cubic is not quite an ellipse";
        const double HalfChord = 0.05, Span = 0.3;
        Planform own = Planform.Of(TestBlades.Outline(
            [new(-HalfChord, 0), new(-HalfChord, Handle * Span), new(-Handle * HalfChord, Span), new(0, Span)],
            [new(HalfChord, 0), new(HalfChord, Handle * Span), new(Handle * HalfChord, Span), new(0, Span)]));
        double area = Math.PI * HalfChord * Span / 2;
        yield return new(Topic, "Area, m²", Form, area, own.Area, 3e-4 * area, Cubic);
        yield return new(Topic, "Mean aerodynamic chord, m", Form, 8 / (3 * Math.PI) * 2 * HalfChord, own.MeanAerodynamicChord, 1e-3 * HalfChord, Cubic);
        yield return new(Topic, "Depth of the centroid, m", Form, 4 / (3 * Math.PI) * Span, own.Centroid.Y, 1e-3 * Span, Cubic);
    }
}
