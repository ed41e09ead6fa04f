using System.Globalization;
using System.Text;
using Finwright.Geometry;
using Finwright.Geometry.Bases;

namespace Finwright.Page.Libraries;

/// <summary>Where the lines of the drawing of a base go: millimetres on paper, the board above.</summary>
/// <param name="plan">The base.</param>
public sealed class BoxView(BasePlan plan)
{
    private const double Margin = 32, Between = 44, Below = 14, HullThickness = 3;

    /// <summary>The frame of the drawing.</summary>
    public string Frame => string.Join(' ', new[] { 0, 0, BehindMiddle + HalfWidth + Margin, BelowY + Below }.Select(Number));

    /// <summary>Middle of the view from behind.</summary>
    public double BehindMiddle => X(Math.Max(plan.RearX, plan.RearTop.X)) + Between + HalfWidth;

    /// <summary>Where the dimensions below the hull stand.</summary>
    public double BelowY => Y(0) + HullThickness + 8;

    /// <summary>The base from the side.</summary>
    public string Side => Closed(plan.Ring().Select(point => (X(point.X), Y(point.Y))));

    /// <summary>The base from behind.</summary>
    public string Behind
    {
        get
        {
            double hull = plan.HullWidth * 500, deep = plan.DeepWidth * 500, top = Y(-plan.Depth), root = Y(0);
            return Closed([(BehindMiddle - hull, root), (BehindMiddle - deep, top), (BehindMiddle + deep, top), (BehindMiddle + hull, root)]);
        }
    }

    /// <summary>The bottom of the board, left and right of the base in both views.</summary>
    public string Hull
    {
        get
        {
            double y = Y(0), left = 4, right = BehindMiddle + HalfWidth + Margin - 4;
            string[] pieces =
            [
                Line(left, y, X(plan.FrontX), y),
                Line(X(plan.RearX), y, BehindMiddle - plan.HullWidth * 500, y),
                Line(BehindMiddle + plan.HullWidth * 500, y, right, y),
            ];
            return string.Concat(pieces);
        }
    }

    /// <summary>The line along the length at the hull.</summary>
    public string LengthLine => Line(X(plan.FrontX), Y(0) + 4, X(plan.RearX), Y(0) + 4) + Line(BehindMiddle - plan.HullWidth * 500, Y(0) + 4, BehindMiddle + plan.HullWidth * 500, Y(0) + 4);

    /// <summary>The axis of a bolt, a little beyond the base at both ends.</summary>
    public string Axis(BoltAxis bolt)
    {
        ArgumentNullException.ThrowIfNull(bolt);
        Point3 top = plan.OnTopEdge(bolt.AtHull, bolt.Up) + 6e-3 * bolt.Up, foot = bolt.AtHull - 4e-3 * bolt.Up;
        return Line(X(foot.X), Y(foot.Y), X(top.X), Y(top.Y));
    }

    /// <summary>Place across the drawing.</summary>
    /// <param name="x">Design axis, metres.</param>
    public double X(double x) => Margin + 1000 * (x - Math.Min(plan.FrontX, plan.FrontTop.X));

    /// <summary>Place down the drawing.</summary>
    /// <param name="y">Design axis, metres; negative inside the board.</param>
    public double Y(double y) => 10 + 1000 * (y + plan.Depth);

    /// <summary>A number as drawings have it.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private double HalfWidth => Math.Max(plan.HullWidth, plan.DeepWidth) * 500;

    private static string Line(double x1, double y1, double x2, double y2) => $"M{Number(x1)} {Number(y1)}L{Number(x2)} {Number(y2)}";

    private static string Closed(IEnumerable<(double X, double Y)> points)
    {
        StringBuilder path = new();
        foreach ((double x, double y) in points)
            path.Append(path.Length == 0 ? 'M' : 'L').Append(Number(x)).Append(' ').Append(Number(y));
        return path.Append('Z').ToString();
    }
}
