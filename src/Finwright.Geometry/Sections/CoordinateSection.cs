using MathNet.Numerics.Interpolation;

namespace Finwright.Geometry.Sections;

/// <summary>A section that passes through every one of its points: a cubic spline over √x, from the port trailing edge round the nose to starboard.</summary>
/// <remarks>
/// With √x counted negative on the port side the whole surface is one smooth curve. Half thickness and camber are half the
/// difference and half the sum of both sides. For points too angular for a class-shape fit; small errors of the points
/// stay in the surface.
/// </remarks>
public sealed class CoordinateSection : Section
{
    // Below this √x the camber slope is taken at this place: there it is a difference of nearly equal numbers over a small one.
    private const double LeastRoot = 1e-4;

    private readonly CubicSpline _surface;

    /// <summary>A section through points of unit chord.</summary>
    /// <param name="name">Name.</param>
    /// <param name="starboard">Upper side from the nose, x rising strictly from above 0 to 1.</param>
    /// <param name="port">Lower side from the nose, x rising strictly from above 0 to 1.</param>
    /// <exception cref="ArgumentException">A side is empty, not rising, or a number is not finite.</exception>
    public CoordinateSection(string name, IReadOnlyList<Point2> starboard, IReadOnlyList<Point2> port)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(starboard);
        ArgumentNullException.ThrowIfNull(port);
        Check(starboard, nameof(starboard));
        Check(port, nameof(port));
        Name = name;
        double[] root = [.. port.Reverse().Select(p => -Math.Sqrt(p.X)), 0, .. starboard.Select(p => Math.Sqrt(p.X))];
        double[] ordinate = [.. port.Reverse().Select(p => p.Y), 0, .. starboard.Select(p => p.Y)];
        _surface = CubicSpline.InterpolateNaturalSorted(root, ordinate);
        ThicknessRatio = 2 * ChordPeak.Of(HalfThickness).Value;
        (_, double high) = ChordPeak.Of(Camber);
        (_, double low) = ChordPeak.Of(x => -Camber(x));
        MaximumCamber = high >= low ? high : -low;
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber { get; }

    /// <inheritdoc/>
    public override double HalfThickness(double x)
    {
        double s = Math.Sqrt(Math.Clamp(x, 0, 1));
        return s is 0 ? 0 : (_surface.Interpolate(s) - _surface.Interpolate(-s)) / 2;
    }

    /// <inheritdoc/>
    public override double Camber(double x)
    {
        double s = Math.Sqrt(Math.Clamp(x, 0, 1));
        return s is 0 ? 0 : (_surface.Interpolate(s) + _surface.Interpolate(-s)) / 2;
    }

    /// <inheritdoc/>
    public override double CamberSlope(double x)
    {
        double s = Math.Max(Math.Sqrt(Math.Clamp(x, 0, 1)), LeastRoot);
        return (_surface.Differentiate(s) - _surface.Differentiate(-s)) / (4 * s);
    }

    private static void Check(IReadOnlyList<Point2> side, string parameter)
    {
        if (side.Count < 2)
            throw new ArgumentException($"A side needs at least 2 points; it has {side.Count}.", parameter);
        double before = 0;
        foreach (Point2 p in side)
        {
            if (!(p.X > before && p.X <= 1 && double.IsFinite(p.Y)))
                throw new ArgumentException($"({p.X}, {p.Y}) does not follow a point at {before} on a unit chord.", parameter);
            before = p.X;
        }
    }
}
