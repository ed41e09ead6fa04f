namespace Finwright.Geometry.Sections;

/// <summary>
/// Brings rows in any of the usual orders into one contour that runs from one trailing edge corner round the nose to the other.
/// </summary>
/// <remarks>
/// Understood: once round from the trailing edge, either way; once round from the nose; two sides one after the other, each in
/// either direction, with or without a blank line between or a line of two counts ahead.
/// </remarks>
internal static class ContourAssembly
{
    // Shares of the x range. Steps back smaller than this are rounding or a nose that reaches a little ahead of its own
    // origin, not a turn.
    private const double LeastTurn = 0.005;

    // One step across more than this is the jump from the end of one side to the start of the other.
    private const double LeastJump = 0.5;

    // Below this extent in x, in any unit, lengths lose their digits.
    private const double LeastRange = 1e-6;

    // Points closer than this are one.
    private const double SamePlace = 1e-9;

    // The square end of a blunt trailing edge lies within this of the aft end.
    private const double TailZone = 0.02;

    /// <summary>Assembles the contour.</summary>
    /// <param name="rows">Rows in file order, finite, at least three, with some extent in x.</param>
    /// <param name="problem">What is wrong, when the result is null.</param>
    /// <returns>The contour without repeated points, or null.</returns>
    public static List<CoordinateRow>? TryAssemble(IReadOnlyList<CoordinateRow> rows, out CoordinateProblem? problem)
    {
        problem = null;
        (List<CoordinateRow> points, int? split) = WithoutCounts(rows, out problem);
        if (problem is not null)
            return null;
        double low = points.Min(r => r.Point.X), range = points.Max(r => r.Point.X) - low;
        if (!(range > LeastRange))
        {
            problem = new("All points have the same x, or nearly so. The first column must run along the chord.", null);
            return null;
        }

        split ??= BlockSplit(points, range) ?? JumpSplit(points, range);
        List<int> turns = Turns(points, range);
        if (split is null && turns.Count == 1 && points[turns[0]].Point.X > low + range / 2)
        {
            // Once round from the nose: the aft end is shared by both sides.
            split = turns[0] + 1;
            points.Insert(turns[0], points[turns[0]]);
        }

        List<CoordinateRow> contour;
        if (split is int at)
        {
            List<CoordinateRow> first = points[..at], second = points[at..];
            foreach (List<CoordinateRow> side in (ReadOnlySpan<List<CoordinateRow>>)[first, second])
            {
                if (side[0].Point.X > side[^1].Point.X)
                    side.Reverse();
                if (Turns(side, range).Find(i => side[i].Point.X > low + TailZone * range) is int turn and > 0)
                {
                    problem = BackAndForth(side[turn]);
                    return null;
                }
            }

            first.Reverse();
            contour = [.. first, .. second];
        }
        else if (turns.Count == 1)
        {
            contour = points;
        }
        else
        {
            problem = turns.Count == 0
                ? new("Only one side of the section is there. Give both sides; for a symmetric section repeat the points with y negative.", null)
                : BackAndForth(points[turns[1]]);
            return null;
        }

        RemoveRepeats(contour, SamePlace * range);
        RemoveTail(contour, low + (1 - TailZone) * range);
        return contour;
    }

    private static CoordinateProblem BackAndForth(CoordinateRow row) =>
        new($"The points go back and forth along x near x = {row.Point.X:0.######}. Go once round the section, or down one side and then the other.", row.Line);

    // A first row of two whole numbers above 1 that lies off the other points tells how many points each side has.
    private static (List<CoordinateRow> Points, int? Split) WithoutCounts(IReadOnlyList<CoordinateRow> rows, out CoordinateProblem? problem)
    {
        problem = null;
        (double first, double second) = (rows[0].Point.X, rows[0].Point.Y);
        List<CoordinateRow> rest = [.. rows.Skip(1)];
        if (!(double.IsInteger(first) && double.IsInteger(second) && first >= 2 && second >= 2))
            return ([.. rows], null);
        if (first + second == rest.Count)
            return (rest, (int)first);
        if (first <= 1.1 * rest.Max(r => r.Point.X) && second <= rest.Max(r => r.Point.X))
            return ([.. rows], null);
        problem = new($"This looks like the number of points of each side, {first} and {second}, but {rest.Count} points follow.", rows[0].Line);
        return (rest, null);
    }

    private static int? BlockSplit(List<CoordinateRow> points, double range)
    {
        if (points[^1].Block - points[0].Block != 1)
            return null;
        int at = points.FindIndex(r => r.Block == points[^1].Block);
        return CoversOnce(points[..at], range) && CoversOnce(points[at..], range) ? at : null;
    }

    private static bool CoversOnce(List<CoordinateRow> side, double range) =>
        Math.Abs(side[^1].Point.X - side[0].Point.X) > LeastJump * range && Turns(side, range).Count <= 1;

    private static int? JumpSplit(List<CoordinateRow> points, double range)
    {
        int? split = null;
        for (int i = 1; i < points.Count; i++)
            if (Math.Abs(points[i].Point.X - points[i - 1].Point.X) > LeastJump * range)
            {
                if (split is not null)
                    return null;
                split = i;
            }

        return split;
    }

    // Places where x stops rising and falls, or the reverse, by more than LeastTurn of the range.
    private static List<int> Turns(List<CoordinateRow> points, double range)
    {
        List<int> turns = [];
        int extreme = 0, direction = 0;
        double X(int i) => points[i].Point.X;
        for (int i = 1; i < points.Count; i++)
        {
            double step = X(i) - X(extreme);
            if (direction == 0 ? Math.Abs(step) > LeastTurn * range : step * direction < -LeastTurn * range)
            {
                if (direction != 0)
                    turns.Add(extreme);
                direction = Math.Sign(step);
                extreme = i;
            }
            else if (step * direction > 0)
            {
                extreme = i;
            }
        }

        return turns;
    }

    private static void RemoveRepeats(List<CoordinateRow> contour, double distance)
    {
        int kept = 0;
        for (int i = 1; i < contour.Count; i++)
            if ((contour[i].Point - contour[kept].Point).Length > distance)
                contour[++kept] = contour[i];
        contour.RemoveRange(kept + 1, contour.Count - kept - 1);
    }

    // Points on the square end of a blunt trailing edge belong to neither side.
    private static void RemoveTail(List<CoordinateRow> contour, double zone)
    {
        bool Steep(Point2 end, Point2 next) =>
            end.X >= zone && next.X >= zone && Math.Abs(next.Y - end.Y) > 2 * Math.Abs(next.X - end.X);
        while (contour.Count > 3 && Steep(contour[0].Point, contour[1].Point))
            contour.RemoveAt(0);
        while (contour.Count > 3 && Steep(contour[^1].Point, contour[^2].Point))
            contour.RemoveAt(contour.Count - 1);
    }
}
