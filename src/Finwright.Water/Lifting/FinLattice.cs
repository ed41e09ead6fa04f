using Finwright.Geometry;

namespace Finwright.Water.Lifting;

/// <summary>Vortices and control points on the mean surface of a fin. Element (strip j, row k) has index j · rows + k.</summary>
internal sealed class FinLattice
{
    // Step of the slope, as a share of the chord: small against the panels, large against rounding of the surface.
    private const double SlopeStep = 1e-4;

    // Half the chordwise step over which a deflection's slope is taken: a plate's deflection is smooth, its interpolation less so.
    private const double BentStep = 0.05;

    // A chord below this share of the span counts as closed when ratios per chord are formed.
    private const double SmallestChord = 1e-9;

    private readonly Point3[] _corners;
    private readonly Point3[] _edgeEnds;

    public FinLattice(LiftingFin fin, SpanRule span, ChordRule chord, double gap)
    {
        (Fin, Span, Chord, Gap) = (fin, span, chord, gap);
        int strips = span.Strips, rows = chord.Rows;
        _corners = new Point3[(strips + 1) * rows];
        _edgeEnds = new Point3[strips + 1];
        for (int j = 0; j <= strips; j++)
        {
            double y = span.Edges[j];
            for (int k = 0; k < rows; k++)
                _corners[j * rows + k] = OnSurface(y, chord.Vortices[k]);
            _edgeEnds[j] = OnSurface(y, 1);
        }

        (Controls, SlopeX, SlopeY) = (new Point3[strips * rows], new double[strips * rows], new double[strips * rows]);
        (Chords, Widths, Twists) = (new double[strips], new double[strips], new double[strips]);
        for (int j = 0; j < strips; j++)
        {
            double y = span.Middles[j];
            Chords[j] = Math.Max(fin.Chord(y), SmallestChord * fin.Span);
            Widths[j] = span.Edges[j + 1] - span.Edges[j];
            Twists[j] = (Surface(y, 0) - Surface(y, 1)) / Chords[j];
            for (int k = 0; k < rows; k++)
            {
                // On the straight line between the strip's edges: round a tip the surface bows away from its vortices by more than their distance from one another.
                Point3 near = OnSurface(span.Edges[j], chord.Controls[k]), far = OnSurface(span.Edges[j + 1], chord.Controls[k]);
                Controls[j * rows + k] = near + (y - span.Edges[j]) / Widths[j] * (far - near);
                (SlopeX[j * rows + k], SlopeY[j * rows + k]) = Slopes(j, chord.Controls[k]);
            }
        }
    }

    private FinLattice(FinLattice straight, Func<double, double, double> deflection)
    {
        (Fin, Span, Chord, Gap, IsBent) = (straight.Fin, straight.Span, straight.Chord, straight.Gap, true);
        (_corners, _edgeEnds, Controls, SlopeY) = (straight._corners, straight._edgeEnds, straight.Controls, straight.SlopeY);
        (Chords, Widths) = (straight.Chords, straight.Widths);
        (SlopeX, Twists) = ([.. straight.SlopeX], [.. straight.Twists]);
        for (int j = 0; j < Strips; j++)
        {
            double y = Span.Middles[j], chord = Chords[j];
            Twists[j] += (deflection(Place(y, 0), y) - deflection(Place(y, 1), y)) / chord;
            for (int k = 0; k < Rows; k++)
            {
                double ahead = Math.Max(Chord.Controls[k] - BentStep, 0), behind = Math.Min(Chord.Controls[k] + BentStep, 1);
                SlopeX[j * Rows + k] += (deflection(Place(y, behind), y) - deflection(Place(y, ahead), y)) / ((behind - ahead) * chord);
            }
        }
    }

    /// <summary>The same lattice with the flow's directions at its control points turned by a small deflection; its vortices stay where they are.</summary>
    /// <param name="deflection">Deflection along z at a place (x, y) of the planform, metres.</param>
    public FinLattice Bent(Func<double, double, double> deflection) => new(this, deflection);

    public LiftingFin Fin { get; }

    /// <summary>Whether a deflection was laid over the fin's own surface.</summary>
    public bool IsBent { get; }

    /// <summary>Whether the surface is exactly flat.</summary>
    public bool IsFlat => Fin.MeanSurface is null && !IsBent;

    public SpanRule Span { get; }

    public ChordRule Chord { get; }

    /// <summary>Distance of the root from the hull plane y = 0; depths of points below include it.</summary>
    public double Gap { get; }

    public int Strips => Span.Strips;

    public int Rows => Chord.Rows;

    public int Count => Strips * Rows;

    public Point3[] Controls { get; }

    /// <summary>dz/dx and dz/dy of the mean surface at the control points.</summary>
    public double[] SlopeX { get; }

    public double[] SlopeY { get; }

    /// <summary>Chord at the middle of each strip.</summary>
    public double[] Chords { get; }

    public double[] Widths { get; }

    /// <summary>Angle of each strip's chord to the x axis, positive nose to starboard.</summary>
    public double[] Twists { get; }

    /// <summary>Trailing-edge points of the strip edges.</summary>
    public ReadOnlySpan<Point3> EdgeEnds => _edgeEnds;

    /// <summary>Middle of the vortex of an element.</summary>
    public Point3 VortexMiddle(int strip, int row) => 0.5 * (_corners[strip * Rows + row] + _corners[(strip + 1) * Rows + row]);

    /// <summary>Velocity at a point of the horseshoes of a strip, each of unit strength across its row, out along the surface and down the wake along x.</summary>
    /// <param name="point">Where.</param>
    /// <param name="strip">Which strip.</param>
    /// <param name="velocities">Velocity of each row's horseshoe.</param>
    public void Velocities(Point3 point, int strip, Span<Point3> velocities)
    {
        int rows = Rows, near = strip * rows, far = near + rows;
        Point3 c = _edgeEnds[strip + 1], d = _edgeEnds[strip];
        velocities[rows - 1] = VortexVelocity.OpenRing(point, _corners[near + rows - 1], _corners[far + rows - 1], c, d);
        for (int k = rows - 2; k >= 0; k--)
            velocities[k] = velocities[k + 1] + VortexVelocity.Ring(point, _corners[near + k], _corners[far + k], _corners[far + k + 1], _corners[near + k + 1]);
    }

    private Point3 OnSurface(double y, double station) => new(Place(y, station), y + Gap, Surface(y, station));

    private double Place(double y, double station) => Fin.LeadingEdge(y) + station * Math.Max(Fin.Chord(y), 0);

    private double Surface(double y, double station) => Fin.MeanSurface?.Invoke(Place(y, station), y) ?? 0;

    private (double X, double Y) Slopes(int strip, double station)
    {
        double y = Span.Middles[strip];
        if (Fin.MeanSurface is null)
            return (0, 0);
        double chord = Math.Max(Fin.Chord(y), SmallestChord * Fin.Span), step = SlopeStep * chord, x = Place(y, station);
        // Three-point differences, turned inward at the edges of the outline.
        double inward = station > 1 - SlopeStep ? -step : step;
        double slopeX = station > 1 - SlopeStep || station < SlopeStep
            ? (-3 * Fin.MeanSurface(x, y) + 4 * Fin.MeanSurface(x + inward, y) - Fin.MeanSurface(x + 2 * inward, y)) / (2 * inward)
            : (Fin.MeanSurface(x + step, y) - Fin.MeanSurface(x - step, y)) / (2 * step);
        // Over the whole strip, as its vortices lie: at a round tip the slope at one depth can be far steeper.
        double below = Span.Edges[strip + 1], above = Span.Edges[strip];
        // Along lines of constant station, so that the points stay inside the outline; the part due to x is taken out again.
        double along = (Surface(below, station) - Surface(above, station)) / (below - above);
        double drift = (Place(below, station) - Place(above, station)) / (below - above);
        return (slopeX, along - drift * slopeX);
    }
}
