using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>What is fixed about each strip: angles, sweep, section.</summary>
internal sealed class StripGeometry
{
    /// <summary>Simple sweep theory has no meaning for an edge that runs almost along the stream, as at a round tip.</summary>
    public const double LargestSweep = 60 * Math.PI / 180;

    /// <summary>Leading-edge sweep below which no vortex rolls up along the edge, and above which a steady one does; a smooth step between.</summary>
    /// <remarks>Between the two the vortex bursts over the surface at little leeway (Wentz and Kohlman, 1971, J. Aircraft 8, from memory), so it is credited only in part.</remarks>
    public const double VortexSweepFrom = 45 * Math.PI / 180, VortexSweepTo = 60 * Math.PI / 180;

    // Beyond the last depth with this share of the mean chord the outline is the end of a tip, and its bend aft is no sweep.
    private const double TipChordShare = 0.5;

    private const int TipSteps = 200;

    // A leading edge that runs along the stream is a side edge, whose force is the tip's business.
    private const double LargestEdgeSweep = 85 * Math.PI / 180;

    public StripGeometry(FinLattice lattice)
    {
        LiftingFin fin = lattice.Fin;
        int strips = lattice.Strips, rows = lattice.Rows;
        (CosSweep, EdgeCos, VortexShare) = (new double[strips], new double[strips], new double[strips]);
        (CamberAngle, FlatMoment, QuarterX, LeadingX) = (new double[strips], new double[strips], new double[strips], new double[strips]);
        Polars = new ISectionPolar?[strips];
        double meanChord = 0;
        for (int j = 0; j < strips; j++)
            meanChord += lattice.Chords[j] * lattice.Widths[j] / fin.Span;
        double end = TipEnd(fin, TipChordShare * meanChord);
        IsSteep = new bool[strips];
        for (int j = 0; j < strips; j++)
        {
            double y = lattice.Span.Middles[j], chord = lattice.Chords[j];
            (LeadingX[j], QuarterX[j]) = (fin.LeadingEdge(y), fin.LeadingEdge(y) + 0.25 * chord);
            // The loading feels the sweep over about a chord.
            double below = Math.Min(Math.Min(y, end) + meanChord / 2, end), above = Math.Max(below - meanChord, 0);
            double run = Quarter(fin, below) - Quarter(fin, above);
            IsSteep[j] = Math.Abs(Math.Atan2(run, below - above)) > LargestSweep;
            CosSweep[j] = Math.Cos(Math.Min(Math.Abs(Math.Atan2(run, below - above)), LargestSweep));
            double near = lattice.Span.Edges[j], far = lattice.Span.Edges[j + 1];
            double edge = Math.Atan2(Math.Abs(fin.LeadingEdge(far) - fin.LeadingEdge(near)), far - near);
            EdgeCos[j] = Math.Cos(Math.Min(edge, LargestEdgeSweep));
            double wide = Math.Atan2(fin.LeadingEdge(below) - fin.LeadingEdge(above), below - above);
            VortexShare[j] = SmoothStep((wide - VortexSweepFrom) / (VortexSweepTo - VortexSweepFrom));
            double angle = 0, moment = 0;
            for (int k = 0; k < rows; k++)
            {
                double slope = lattice.SlopeX[j * rows + k];
                angle -= lattice.Chord.LiftWeights[k] * slope;
                moment += lattice.Chord.MomentWeights[k] * slope;
            }

            // Exactly 0 for a flat section, so that a symmetric fin stays exactly symmetric.
            CamberAngle[j] = lattice.IsFlat ? 0 : angle - lattice.Twists[j];
            FlatMoment[j] = moment;
            Polars[j] = fin.Polar?.Invoke(y);
        }
    }

    /// <summary>Cosine of the sweep of the quarter-chord line.</summary>
    public double[] CosSweep { get; }

    /// <summary>Whether the quarter-chord line is swept beyond <see cref="LargestSweep"/>.</summary>
    public bool[] IsSteep { get; }

    /// <summary>Cosine of the sweep of the leading edge.</summary>
    public double[] EdgeCos { get; }

    /// <summary>How far lost suction becomes vortex lift, 0 to 1.</summary>
    public double[] VortexShare { get; }

    /// <summary>Minus the section's zero-lift angle from its chord by thin-section theory, radians.</summary>
    public double[] CamberAngle { get; }

    /// <summary>Moment about the quarter chord by thin-section theory, as the lattice carries it.</summary>
    public double[] FlatMoment { get; }

    public double[] QuarterX { get; }

    public double[] LeadingX { get; }

    public ISectionPolar?[] Polars { get; }

    private static double Quarter(LiftingFin fin, double y) => 0.75 * fin.LeadingEdge(y) + 0.25 * fin.TrailingEdge(y);

    private static double TipEnd(LiftingFin fin, double chord)
    {
        for (int i = TipSteps; i > 0; i--)
            if (fin.Chord(fin.Span * i / TipSteps) >= chord)
                return fin.Span * i / TipSteps;
        return fin.Span;
    }

    private static double SmoothStep(double s)
    {
        s = Math.Clamp(s, 0, 1);
        return s * s * (3 - 2 * s);
    }
}
