using Finwright.Geometry;
using Finwright.Geometry.Features;

namespace Finwright.Making.Printing;

/// <summary>A pocket seen from above while it is printed: where its middle is at a height, and how wide it is open there.</summary>
internal sealed class PocketShape
{
    // Axes steeper than this count as standing: half-way between both.
    private const double Standing = 0.7071;

    private const int Directions = 24;

    private readonly FeatureVolume _pocket;
    private readonly Placement _back;
    private readonly Point3 _middle;
    private readonly Point3 _rise;

    public PocketShape(FeatureVolume pocket, Placement toLayers)
    {
        _pocket = pocket;
        _back = toLayers.RigidInverse();
        _middle = toLayers.Apply(pocket.Middle);
        Point3 axis = toLayers.Apply(pocket.To) - toLayers.Apply(pocket.From);
        axis = 1 / axis.Length * axis;
        Point3 up = new(0, 0, 1), upInMesh = _back.Turn(up);
        Top = pocket.Reach(upInMesh) + toLayers.Origin.Z;
        Bottom = -pocket.Reach(-1 * upInMesh) + toLayers.Origin.Z;
        AxisStands = Math.Abs(axis.Z) > Standing;
        if (AxisStands)
        {
            // Up along the axis.
            _rise = 1 / axis.Z * axis;
            Across = [.. Enumerable.Range(0, Directions).Select(i => new Point3(Math.Cos(Math.PI * i / Directions), Math.Sin(Math.PI * i / Directions), 0))];
        }
        else
        {
            // Up square to the axis: in the middle of its length.
            Point3 square = up - axis.Z * axis;
            _rise = 1 / square.Z * square;
            Point3 level = axis.Cross(up);
            Across = [1 / level.Length * level];
        }
    }

    /// <summary>Whether the pocket's axis stands up rather than lies.</summary>
    public bool AxisStands { get; }

    /// <summary>Level unit vectors along which its width counts: square to a lying axis; all round a standing one.</summary>
    public IReadOnlyList<Point3> Across { get; }

    /// <summary>Height of its highest point, layer axes, metres.</summary>
    public double Top { get; }

    /// <summary>Height of its lowest point, layer axes, metres.</summary>
    public double Bottom { get; }

    /// <summary>Middle of the pocket at a height, layer axes, metres; straight on for heights beyond it.</summary>
    public Point3 At(double height) => _middle + (height - _middle.Z) * _rise;

    /// <summary>How wide the pocket is at a height, metres: least width through its middle, square to a lying axis; 0 where it is not.</summary>
    public double Opening(double height)
    {
        Point3 at = At(height);
        if (Distance(at) > 0)
            return 0;
        double least = double.PositiveInfinity;
        foreach (Point3 direction in Across)
            least = Math.Min(least, Reach(at, direction) + Reach(at, -1 * direction));
        return least;
    }

    /// <summary>The greatest of its widths over its height, metres.</summary>
    public double GreatestOpening()
    {
        // Odd: the widest place of a pocket that is alike above and below is its middle.
        const int steps = 401;
        double greatest = 0;
        for (int i = 0; i < steps; i++)
            greatest = Math.Max(greatest, Opening(Bottom + (i + 0.5) / steps * (Top - Bottom)));
        return greatest;
    }

    private double Distance(Point3 layerPoint) => _pocket.SignedDistance(_back.Apply(layerPoint));

    /// <summary>Distance from an inner point to the pocket's edge; the pocket is convex, so halving finds it.</summary>
    private double Reach(Point3 from, Point3 direction)
    {
        double inside = 0, outside = _pocket.ReachFromAxis * 2 + (_pocket.To - _pocket.From).Length;
        for (int i = 0; i < 50; i++)
        {
            double middle = (inside + outside) / 2;
            if (Distance(from + middle * direction) <= 0)
                inside = middle;
            else
                outside = middle;
        }

        return inside;
    }
}
