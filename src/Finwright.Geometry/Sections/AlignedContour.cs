using MathNet.Numerics.Interpolation;

namespace Finwright.Geometry.Sections;

/// <summary>A point of an aligned contour and the number of the point it came from; -1 for the nose, which is found between points.</summary>
/// <param name="Point">Place on the unit chord.</param>
/// <param name="Source">Index in the contour that was aligned.</param>
internal readonly record struct AlignedPoint(Point2 Point, int Source);

/// <summary>A contour laid on the unit chord: nose at (0, 0), middle of the trailing edge at (1, 0).</summary>
/// <param name="Starboard">Upper side, nose first.</param>
/// <param name="Port">Lower side, nose first.</param>
/// <param name="Chord">Chord before, in the contour's own unit.</param>
/// <param name="Rotation">Angle of the chord before, radians.</param>
/// <param name="Stretch">How far from x = 1 a side ended, at most, before it was stretched to end there; chords.</param>
/// <remarks>
/// The nose is the place farthest from the middle of the trailing edge. There the surface stands square to the chord, so both
/// sides rise as √x with one radius, which is what the class-shape form and a spline over √x need.
/// </remarks>
internal sealed record AlignedContour(IReadOnlyList<AlignedPoint> Starboard, IReadOnlyList<AlignedPoint> Port, double Chord, double Rotation, double Stretch)
{
    // Points each side of the farthest one that shape the curve on which the nose is found, and how far apart they lie at least,
    // as a share of the chord: with points closer than this their rounding, not the section, would choose the nose.
    private const int NoseWindow = 6;
    private const double NoseSpacing = 0.002;
    private const int NoseRefinements = 60;

    // Points closer to the found nose than this, chords, are the nose.
    private const double SameAsNose = 1e-9;

    /// <summary>Aligns a contour that runs from one trailing edge corner round the nose to the other, without repeated points.</summary>
    /// <param name="contour">At least three points, not all at one place.</param>
    /// <exception cref="ArgumentException">The contour has no nose: its farthest point is one of its ends.</exception>
    public static AlignedContour Of(IReadOnlyList<Point2> contour)
    {
        Point2 tail = 0.5 * (contour[0] + contour[^1]);
        int farthest = 0;
        for (int i = 1; i < contour.Count; i++)
            if ((contour[i] - tail).Length > (contour[farthest] - tail).Length)
                farthest = i;
        if (farthest == 0 || farthest == contour.Count - 1)
            throw new ArgumentException("The farthest point from the trailing edge is an end of the contour.", nameof(contour));

        Point2 nose = Nose(contour, farthest, tail);
        Point2 chordLine = tail - nose;
        double chord = chordLine.Length;
        Point2 along = 1 / chord * chordLine;
        int lastOfFirst = LastBefore(nose, contour, farthest);
        List<AlignedPoint> first = [new(default, -1)], second = [new(default, -1)];
        for (int i = lastOfFirst; i >= 0; i--)
            Add(first, i);
        for (int i = lastOfFirst + 1; i < contour.Count; i++)
            Add(second, i);
        double stretch = Math.Max(StretchToEnd(first), StretchToEnd(second));
        bool firstIsUpper = first.Average(p => p.Point.Y) >= second.Average(p => p.Point.Y);
        return new(firstIsUpper ? first : second, firstIsUpper ? second : first, chord, Math.Atan2(along.Y, along.X), stretch);

        void Add(List<AlignedPoint> side, int i)
        {
            Point2 p = 1 / chord * (contour[i] - nose);
            if (p.Length > SameAsNose)
                side.Add(new(new(Math.Max(along.Dot(p), 0), along.Cross(p)), i));
        }
    }

    // A trailing edge cut slantwise, or camber, leaves one corner a little ahead of x = 1 and the other a little behind.
    private static double StretchToEnd(List<AlignedPoint> side)
    {
        double end = side.Max(p => p.Point.X);
        if (!(end > 0))
            return 1;
        for (int i = 0; i < side.Count; i++)
            side[i] = side[i] with { Point = side[i].Point with { X = side[i].Point.X / end } };
        return Math.Abs(end - 1);
    }

    // Index of the last point ahead of the nose on the way round.
    private static int LastBefore(Point2 nose, IReadOnlyList<Point2> contour, int farthest)
    {
        int nearest = farthest;
        for (int i = 1; i < contour.Count - 1; i++)
            if ((contour[i] - nose).Length < (contour[nearest] - nose).Length)
                nearest = i;
        Point2 onward = contour[nearest + 1] - contour[nearest - 1];
        return onward.Dot(nose - contour[nearest]) >= 0 ? nearest : nearest - 1;
    }

    // Golden-section search for the farthest place on a cubic spline through points round the farthest one.
    private static Point2 Nose(IReadOnlyList<Point2> contour, int farthest, Point2 tail)
    {
        double spacing = NoseSpacing * (contour[farthest] - tail).Length;
        List<Point2> ahead = Thinned(contour, farthest, -1, spacing), behind = Thinned(contour, farthest, 1, spacing);
        Point2[] window = [.. Enumerable.Reverse(ahead), contour[farthest], .. behind];
        double[] length = new double[window.Length];
        for (int i = 1; i < window.Length; i++)
            length[i] = length[i - 1] + (window[i] - window[i - 1]).Length;

        CubicSpline alongX = CubicSpline.InterpolateNaturalSorted(length, [.. window.Select(p => p.X)]);
        CubicSpline alongY = CubicSpline.InterpolateNaturalSorted(length, [.. window.Select(p => p.Y)]);
        Point2 At(double s) => new(alongX.Interpolate(s), alongY.Interpolate(s));
        double Away(double s) => (At(s) - tail).Length;

        double low = length[ahead.Count - 1], high = length[ahead.Count + 1], shrink = (Math.Sqrt(5) - 1) / 2;
        for (int i = 0; i < NoseRefinements; i++)
        {
            double left = high - shrink * (high - low), right = low + shrink * (high - low);
            if (Away(left) >= Away(right))
                high = right;
            else
                low = left;
        }

        Point2 found = At(0.5 * (low + high));
        return (found - tail).Length > (contour[farthest] - tail).Length ? found : contour[farthest];
    }

    // Up to NoseWindow points from the farthest one on, no closer than the spacing; the end of the contour if there is no other.
    private static List<Point2> Thinned(IReadOnlyList<Point2> contour, int farthest, int direction, double spacing)
    {
        List<Point2> kept = [];
        Point2 last = contour[farthest];
        for (int i = farthest + direction; i >= 0 && i < contour.Count && kept.Count < NoseWindow; i += direction)
            if ((contour[i] - last).Length >= spacing)
            {
                last = contour[i];
                kept.Add(last);
            }

        if (kept.Count == 0)
            kept.Add(direction < 0 ? contour[0] : contour[^1]);
        return kept;
    }
}
