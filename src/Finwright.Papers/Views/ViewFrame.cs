using Finwright.Geometry;

namespace Finwright.Papers.Views;

/// <summary>Lays a view of the fin on paper.</summary>
/// <param name="Scale">Length on paper over length of the fin.</param>
/// <param name="Origin">Where the view's origin lies on paper, metres.</param>
internal readonly record struct ViewFrame(double Scale, Point2 Origin)
{
    /// <summary>A point of the view on paper.</summary>
    public Point2 At(Point2 p) => Origin + Scale * p;

    /// <summary>A point of the view on paper.</summary>
    public Point2 At(double x, double y) => At(new Point2(x, y));

    /// <summary>Points of the view on paper.</summary>
    public IReadOnlyList<Point2> At(IEnumerable<Point2> points) => [.. points.Select(At)];
}
