using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>Plain lattice answers at small leeway, per radian on the fin's own area.</summary>
internal sealed class LatticeCase
{
    public LatticeCase(LiftingFin fin, RootCondition root, int strips, int rows, bool even = false, HullGrid? grid = null)
    {
        SpanRule span = even ? SpanRule.Even(fin.Span, strips)
            : root is FullMirror && root.Gap == 0 ? SpanRule.TowardTip(fin.Span, strips) : SpanRule.TowardBothEnds(fin.Span, strips);
        Lattice = new(fin, span, new(rows, even), root.Gap);
        FinInfluence influence = new(Lattice, root, grid ?? HullGrid.Usual);
        Assert.False(influence.IsSingular);
        LiftingModes modes = new(influence);
        double[] weights = new double[modes.Count], vortices = new double[Lattice.Count];
        weights[1] = 1;
        modes.Vortices(weights, vortices);
        Circulation = new double[strips];
        Area = Areas(fin);
        double lift = 0, moment = 0, depth = 0, suction = 0;
        for (int j = 0; j < strips; j++)
        {
            Circulation[j] = modes.Row(modes.Circulation, j, weights);
            double load = 2 * Circulation[j] * Lattice.Widths[j];
            lift += load;
            depth += load * (Lattice.Span.Middles[j] + root.Gap);
            moment += 2 * modes.Row(modes.Arm, j, weights) * Lattice.Widths[j];
            double a0 = modes.Row(modes.Suction, j, weights), y = Lattice.Span.Middles[j], step = 1e-4 * fin.Span;
            double sweep = Math.Atan((fin.LeadingEdge(Math.Min(y + step, fin.Span)) - fin.LeadingEdge(y - step)) / (Math.Min(y + step, fin.Span) - y + step));
            suction += 2 * Math.PI * a0 * a0 / Math.Cos(sweep) * Lattice.Chords[j] * Lattice.Widths[j];
        }

        Slope = lift / Area;
        CentreX = moment / lift;
        CentreY = depth / lift;
        Induced = 2 * new WakePlane(influence).Drag(vortices, Circulation) / Area;
        Suction = suction / Area;
    }

    public FinLattice Lattice { get; }

    public double[] Circulation { get; }

    public double Area { get; }

    public double Slope { get; }

    public double CentreX { get; }

    public double CentreY { get; }

    /// <summary>Induced drag coefficient at one radian.</summary>
    public double Induced { get; }

    /// <summary>Leading-edge thrust coefficient at one radian.</summary>
    public double Suction { get; }

    /// <summary>Aspect ratio of fin and mirror image together.</summary>
    public double MirrorAspect => 2 * Lattice.Fin.Span * Lattice.Fin.Span / Area;

    public double InducedOverElliptic => Induced * Math.PI * MirrorAspect / (Slope * Slope);

    public static LiftingFin Elliptic(double span, double rootChord) => new()
    {
        Span = span,
        LeadingEdge = y => -rootChord / 2 * Math.Sqrt(Math.Max(0, 1 - y * y / (span * span))),
        TrailingEdge = y => rootChord / 2 * Math.Sqrt(Math.Max(0, 1 - y * y / (span * span))),
    };

    private static double Areas(LiftingFin fin)
    {
        const int Steps = 2000;
        double sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double angle = (i + 0.5) * Math.PI / 2 / Steps;
            sum += fin.Chord(fin.Span * Math.Sin(angle)) * fin.Span * Math.Cos(angle) * Math.PI / 2 / Steps;
        }

        return sum;
    }
}
