using Finwright.Geometry.Outlines;
using Finwright.Geometry.Sections;
using MathNet.Numerics.Interpolation;

namespace Finwright.Geometry.Blades;

/// <summary>A blade of an outline and sections at stations.</summary>
/// <remarks>
/// Between stations thickness ratio, camber and twist follow monotone cubics over depth (Fritsch and Carlson, 1980,
/// "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17), so they never overshoot; section shapes of unit
/// thickness and camber pass into one another with a smooth step. Beyond the first and last station everything stays as it is
/// there. The trailing edge keeps its thickness in metres; where the section has become so thin that the edge would be more
/// than <see cref="EdgeShareFree"/> of its thickness, the edge thins as well and never passes <see cref="EdgeShareLimit"/>.
/// </remarks>
public sealed class Blade : BladeShape
{
    /// <summary>Share of the section's thickness up to which the trailing edge keeps its own thickness.</summary>
    public const double EdgeShareFree = 0.4;

    /// <summary>Share of the section's thickness that the trailing edge never passes.</summary>
    public const double EdgeShareLimit = 0.6;

    /// <summary>A tip chord below this counts as closed, metres: far below what can be printed or seen.</summary>
    internal const double ClosedChord = 5e-5;

    // A rounding longer than this share of the span would be a different blade.
    private const double LongestRounding = 0.5;
    private const int RoundingSteps = 50;
    private const int SideSteps = 40;
    private const int BlendKnots = 33;

    private readonly SplineOutline _outline;
    private readonly double[] _depths, _ratios, _cambers, _twists;
    private readonly StationForm[] _forms;
    private readonly IInterpolation? _ratioCurve, _camberCurve, _twistCurve;
    private readonly CubicSpline?[] _fullness;

    /// <summary>Makes a blade.</summary>
    /// <param name="outline">The planform.</param>
    /// <param name="stations">At least one station; depths rising, from 0 to the span.</param>
    /// <param name="trailingEdgeThickness">Thickness of the blunt trailing edge, metres, 0 or more.</param>
    /// <param name="tipRounding">
    /// Depth over which the thickness runs out in a half ellipse at the tip, metres, at most half the span. Null for half the thickness there,
    /// or none when the outline closes at the tip and so runs the thickness out by itself; 0 for a flat tip.
    /// </param>
    /// <exception cref="ArgumentException">No station, or depths that do not rise within the span.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative, too great or not finite.</exception>
    public Blade(SplineOutline outline, IReadOnlyList<BladeStation> stations, double trailingEdgeThickness, double? tipRounding = null)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(stations);
        if (!(trailingEdgeThickness >= 0 && double.IsFinite(trailingEdgeThickness)))
            throw new ArgumentOutOfRangeException(nameof(trailingEdgeThickness), trailingEdgeThickness, "The trailing edge must be 0 or thicker.");
        if (tipRounding is double given && !(given >= 0 && given <= LongestRounding * outline.Span))
            throw new ArgumentOutOfRangeException(nameof(tipRounding), given, "The tip rounding must lie between 0 and half the span.");
        if (stations.Count == 0)
            throw new ArgumentException("A blade needs a section.", nameof(stations));
        for (int i = 0; i < stations.Count; i++)
            if (!(stations[i].Depth >= (i == 0 ? 0 : stations[i - 1].Depth) && stations[i].Depth <= outline.Span) || (i > 0 && stations[i].Depth - stations[i - 1].Depth <= 0))
                throw new ArgumentException($"Station {i} lies at {stations[i].Depth} m; depths must rise from 0 to {outline.Span} m.", nameof(stations));

        _outline = outline;
        TrailingEdgeThickness = trailingEdgeThickness;
        _depths = [.. stations.Select(s => s.Depth)];
        _ratios = [.. stations.Select(s => s.Section.ThicknessRatio)];
        _cambers = [.. stations.Select(s => s.Section.MaximumCamber)];
        _twists = [.. stations.Select(s => s.Twist)];
        _forms = [.. stations.Select((s, i) => new StationForm(CamberSource(stations, i), s.Section, UnitCamber(CamberSource(stations, i))))];
        _ratioCurve = Curve(_depths, _ratios);
        _camberCurve = Curve(_depths, _cambers);
        _twistCurve = Curve(_depths, _twists);
        IsSymmetric = Array.TrueForAll(_cambers, c => c is 0) && Array.TrueForAll(_twists, t => t is 0);
        _fullness = new CubicSpline?[_forms.Length];
        for (int k = 0; k + 1 < _forms.Length; k++)
            _fullness[k] = FullnessOfBlend(_forms[k], _forms[k + 1]);
        Closes = outline.Chord(Span) < ClosedChord;
        TipRounding = tipRounding ?? (Closes ? 0 : HalfThicknessAtTip());
    }

    /// <inheritdoc/>
    public override Outline Outline => _outline;

    /// <summary>The planform with its curves.</summary>
    public SplineOutline SplineOutline => _outline;

    /// <inheritdoc/>
    public override double TrailingEdgeThickness { get; }

    /// <summary>Depth over which the thickness runs out in a half ellipse at the tip, metres; 0 for none.</summary>
    public double TipRounding { get; }

    /// <summary>Whether the edges of the outline meet at the tip.</summary>
    public bool Closes { get; }

    /// <summary>Whether both sides mirror each other: no camber and no twist anywhere.</summary>
    public bool IsSymmetric { get; }

    /// <summary>Depths of the stations, metres, rising.</summary>
    public ReadOnlySpan<double> StationDepths => _depths;

    internal ReadOnlySpan<StationForm> Forms => _forms;

    /// <inheritdoc/>
    public override double ThicknessRatio(double y) => Read(_ratioCurve, _ratios, y);

    /// <summary>Greatest camber over chord at depth y, signed.</summary>
    /// <param name="y">Depth, metres.</param>
    public double Camber(double y) => Read(_camberCurve, _cambers, y);

    /// <inheritdoc/>
    public override double Twist(double y) => Read(_twistCurve, _twists, y);

    /// <summary>Thickness of the trailing edge at depth y, metres: as asked, or less where the section is too thin or the tip is rounded.</summary>
    /// <param name="y">Depth, metres.</param>
    public double EdgeThickness(double y) => EdgeWithin(ThicknessRatio(y) * _outline.Chord(y)) * RunOut(y);

    /// <summary>The section at depth y as a section of unit chord, as it is made: with its trailing edge, without twist.</summary>
    /// <param name="y">Depth, metres, 0 to the span.</param>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside the blade, or the blade has closed there.</exception>
    public Section SectionAt(double y)
    {
        if (!(y >= 0 && y <= Span) || !(_outline.Chord(y) > ClosedChord))
            throw new ArgumentOutOfRangeException(nameof(y), y, $"There is a section only where the blade has a chord, from 0 to {Span} m.");
        return new SectionOfBlade(this, y);
    }

    /// <inheritdoc/>
    public override Point3 Skin(double y, double u)
    {
        BladeFrame frame = FrameAt(y);
        bool starboard = u <= 0.5;
        double station = SectionGeometry.Station(starboard ? u : 1 - u);
        Point2 point = frame.Point(station, OrdinatesAt(frame, station), starboard ? 1 : -1);
        return new(point.X, y, point.Y);
    }

    /// <inheritdoc/>
    public override double MidSurface(double x, double y)
    {
        BladeFrame frame = FrameAt(y);
        return (SideAt(frame, x, 1) + SideAt(frame, x, -1)) / 2;
    }

    /// <inheritdoc/>
    public override double HalfThickness(double x, double y)
    {
        if (!(y >= 0 && y <= Span))
            return 0;
        BladeFrame frame = FrameAt(y);
        double ahead = x - frame.QuarterChord;
        if (!(ahead >= -0.25 * frame.Chord && ahead <= 0.75 * frame.Chord) || frame.Chord <= 0)
            return 0;
        return Math.Max(0, (SideAt(frame, x, 1) - SideAt(frame, x, -1)) / 2);
    }

    /// <summary>What the section at a depth needs to know, for points round it.</summary>
    /// <param name="y">Depth, metres; outside 0 to the span the nearer end is taken.</param>
    internal BladeFrame FrameAt(double y)
    {
        y = Math.Clamp(y, 0, Span);
        double leading = _outline.LeadingEdge(y), chord = Math.Max(_outline.TrailingEdge(y) - leading, 0);
        (int form, double weight) = FormAt(y);
        double twist = Twist(y);
        double edgeShare = _forms[form].EdgeShare, squareShare = _forms[form].SquareShare, fullness = 1;
        if (weight > 0)
        {
            edgeShare += weight * (_forms[form + 1].EdgeShare - edgeShare);
            squareShare += weight * (_forms[form + 1].SquareShare - squareShare);
            fullness = _fullness[form]?.Interpolate(weight) ?? fullness;
        }

        double thickness = ThicknessRatio(y) * chord;
        double factor = thickness / fullness, runOut = RunOut(y);
        return new()
        {
            Y = y,
            QuarterChord = leading + 0.25 * chord,
            Chord = chord,
            Cosine = Math.Cos(twist),
            Sine = Math.Sin(twist),
            Form = form,
            Weight = weight,
            Thickness = factor * runOut,
            Blunting = (EdgeWithin(thickness) / 2 - factor * edgeShare) * runOut,
            Camber = Camber(y) * chord,
            SquareShare = squareShare,
        };
    }

    private static double UnitCamber(Section section) => section.MaximumCamber is 0 ? 0 : 1 / section.MaximumCamber;

    // A section without camber takes the camber line of its nearest neighbour that has one, so that camber fades along one shape.
    private static Section CamberSource(IReadOnlyList<BladeStation> stations, int at)
    {
        for (int distance = 0; distance < stations.Count; distance++)
        {
            if (at - distance >= 0 && stations[at - distance].Section.MaximumCamber is not 0)
                return stations[at - distance].Section;
            if (at + distance < stations.Count && stations[at + distance].Section.MaximumCamber is not 0)
                return stations[at + distance].Section;
        }

        return stations[at].Section;
    }

    private static IInterpolation? Curve(double[] depths, double[] values) => depths.Length switch
    {
        1 => null,
        2 => LinearSpline.InterpolateSorted(depths, values),
        _ => CubicSpline.InterpolatePchipSorted(depths, values),
    };

    /// <summary>Peak of the blend over the blend of the peaks, over the weight: below 1 when both are thickest at different places; null when 1 throughout.</summary>
    private static CubicSpline? FullnessOfBlend(StationForm first, StationForm second)
    {
        double[] weights = new double[BlendKnots], fullness = new double[BlendKnots];
        bool changes = false;
        for (int i = 0; i < BlendKnots; i++)
        {
            double w = weights[i] = (double)i / (BlendKnots - 1);
            double peak = ChordPeak.Of(x => FormOrdinates.Mix(first.At(x), second.At(x), w).Half).Value;
            fullness[i] = peak / (first.Peak + w * (second.Peak - first.Peak));
            changes |= Math.Abs(fullness[i] - 1) > 1e-9;
        }

        return changes ? CubicSpline.InterpolatePchipSorted(weights, fullness) : null;
    }

    private double Read(IInterpolation? curve, double[] values, double y)
    {
        if (curve is null || y <= _depths[0])
            return values[0];
        return y >= _depths[^1] ? values[^1] : curve.Interpolate(y);
    }

    private (int Form, double Weight) FormAt(double y)
    {
        int last = _depths.Length - 1;
        if (y <= _depths[0])
            return (0, 0);
        if (y >= _depths[last])
            return (last, 0);
        int k = 0;
        while (_depths[k + 1] <= y)
            k++;
        double s = (y - _depths[k]) / (_depths[k + 1] - _depths[k]);
        return (k, s * s * (3 - 2 * s));
    }

    internal FormOrdinates OrdinatesAt(in BladeFrame frame, double station)
    {
        FormOrdinates own = _forms[frame.Form].At(station);
        return frame.Weight > 0 ? FormOrdinates.Mix(own, _forms[frame.Form + 1].At(station), frame.Weight) : own;
    }

    private double EdgeWithin(double sectionThickness)
    {
        double free = EdgeShareFree * sectionThickness, room = (EdgeShareLimit - EdgeShareFree) * sectionThickness;
        double over = TrailingEdgeThickness - free;
        if (over <= 0)
            return TrailingEdgeThickness;
        return room > 0 ? free + room * (1 - Math.Exp(-over / room)) : 0;
    }

    /// <summary>Factor of the thickness at the rounded tip: a quarter ellipse from 1 to 0.</summary>
    private double RunOut(double y)
    {
        double into = y - (Span - TipRounding);
        if (into <= 0)
            return 1;
        double s = Math.Min(into / TipRounding, 1);
        return Math.Sqrt((1 - s) * (1 + s));
    }

    private double HalfThicknessAtTip()
    {
        double rounding = 0;
        for (int i = 0; i < RoundingSteps; i++)
        {
            double y = Span - rounding;
            rounding = Math.Min(ThicknessRatio(y) * _outline.Chord(y) / 2, LongestRounding * Span);
        }

        return rounding;
    }

    /// <summary>z of one side at an x, by regula falsi (Illinois rule) on the common parameter.</summary>
    private double SideAt(in BladeFrame frame, double x, int side)
    {
        if (frame.Chord <= 0)
            return frame.Point(0.25, default, side).Y;
        double direct = Math.Clamp((x - frame.QuarterChord) / frame.Chord + 0.25, 0, 1);
        if (frame.Sine == 0 && (frame.SquareShare == 0 || frame.Camber == 0))
            return frame.Point(direct, OrdinatesAt(frame, direct), side).Y;

        Point2 Place(in BladeFrame f, double u)
        {
            double station = SectionGeometry.Station(u);
            return f.Point(station, OrdinatesAt(f, station), side);
        }

        double aft = 0, fore = 0.5;
        Point2 atAft = Place(frame, aft), atFore = Place(frame, fore);
        if (x >= atAft.X)
            return atAft.Y;
        if (x <= atFore.X)
            return atFore.Y;
        double missAft = atAft.X - x, missFore = atFore.X - x;
        double accuracy = 1e-12 * frame.Chord;
        Point2 found = atAft;
        for (int i = 0; i < SideSteps; i++)
        {
            double u = (aft * missFore - fore * missAft) / (missFore - missAft);
            found = Place(frame, u);
            double miss = found.X - x;
            if (Math.Abs(miss) <= accuracy)
                break;
            if (miss > 0)
            {
                (aft, missAft) = (u, miss);
                missFore /= 2;
            }
            else
            {
                (fore, missFore) = (u, miss);
                missAft /= 2;
            }
        }

        return found.Y;
    }
}
