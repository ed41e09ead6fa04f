namespace Finwright.Geometry.Parts;

/// <summary>Finds level cuts that make every piece of a blade fit the printer: as few pieces as can be, then as even as can be.</summary>
/// <remarks>
/// Depths are tried on a grid. A piece that fits still fits when it gets shorter, so cutting as deep as each piece allows
/// gives the fewest; then the greatest length of a piece is lowered until one more piece would be needed. Pieces are judged by their corners at
/// every grid depth with a little spare room; the finished parts are checked again by themselves.
/// </remarks>
public sealed class CutProposal
{
    private const double FinestStep = 1e-3;
    private const int MostSteps = 250;

    /// <summary>Room kept free while planning, metres, for what the grid does not see.</summary>
    private const double Spare = 0.2e-3;

    private readonly double[] _depths;
    private readonly bool[] _allowed;
    private readonly Point3[][] _corners;
    private readonly Func<bool, IReadOnlyList<Resting>> _ways;
    private readonly PrintRoom _room;

    /// <summary>For a piece from each depth: the deepest end known to fit, and the shallowest known not to.</summary>
    private readonly int[] _fits;
    private readonly int[] _fails;

    private CutProposal(double[] depths, bool[] allowed, Point3[][] corners, Func<bool, IReadOnlyList<Resting>> ways, PrintRoom room)
    {
        (_depths, _allowed, _corners, _ways, _room) = (depths, allowed, corners, ways, room);
        _fits = [.. Enumerable.Range(0, depths.Length)];
        _fails = [.. Enumerable.Repeat(depths.Length, depths.Length)];
    }

    /// <summary>Proposes cuts.</summary>
    /// <param name="body">The whole blade, with the base when both are one print; design axes, metres.</param>
    /// <param name="span">Depth of the tip, metres.</param>
    /// <param name="forbidden">Spans of depth that no cut may touch, metres.</param>
    /// <param name="ways">How a piece may rest; asked with true for the piece at the root.</param>
    /// <param name="room">The printer's room.</param>
    /// <returns>Depths of the cuts, rising, metres; empty when the whole fits; null when no number of level cuts helps.</returns>
    public static IReadOnlyList<double>? Find(
        TriangleMesh body, double span, IReadOnlyList<(double From, double To)> forbidden, Func<bool, IReadOnlyList<Resting>> ways, PrintRoom room)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(room);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(span);
        if (room.Width <= Spare || room.Depth <= Spare || room.Height <= Spare)
            return null;
        double step = Math.Max(FinestStep, span / MostSteps);
        int count = Math.Max(2, (int)Math.Ceiling(span / step) + 1);
        double[] depths = [.. Enumerable.Range(0, count).Select(i => i * span / (count - 1))];
        bool[] allowed = [.. depths.Select(y => !forbidden.Any(f => y >= f.From && y <= f.To))];
        PrintRoom tight = room with { Width = room.Width - Spare, Depth = room.Depth - Spare, Height = room.Height - Spare };
        return new CutProposal(depths, allowed, CornersByDepth(body, depths), ways, tight).Solve();
    }

    private List<double>? Solve()
    {
        int last = _depths.Length - 1;
        if (Cuts(last) is not { } fewest)
            return null;
        // Lower the greatest length, in grid steps, as long as the number of pieces stays.
        int low = 1, high = last;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (Cuts(middle) is { } cuts && cuts.Count == fewest.Count)
                high = middle;
            else
                low = middle + 1;
        }

        return [.. Cuts(high)!.Select(i => _depths[i])];
    }

    /// <summary>Cuts made as deep as each piece allows; null when a piece cannot even reach the next allowed depth.</summary>
    private List<int>? Cuts(int longest)
    {
        List<int> cuts = [];
        int last = _depths.Length - 1;
        for (int from = 0; ;)
        {
            int to = Reach(from, Math.Min(last, from + longest));
            if (to == last)
                return cuts;
            while (to > from && !_allowed[to])
                to--;
            if (to == from)
                return null;
            cuts.Add(to);
            from = to;
        }
    }

    /// <summary>The deepest grid depth, not beyond <paramref name="limit"/>, to which a piece from here fits; <paramref name="from"/> itself when none does.</summary>
    private int Reach(int from, int limit)
    {
        // What is known of this piece is kept between calls; the limit itself is tried first because it mostly fits.
        for (int to = Math.Min(limit, _fails[from] - 1); _fits[from] < limit && _fits[from] + 1 < _fails[from]; to = (_fits[from] + _fails[from]) / 2)
        {
            if (Fits(from, to))
                _fits[from] = to;
            else
                _fails[from] = to;
        }

        return Math.Min(limit, _fits[from]);
    }

    private bool Fits(int from, int to) => LaidPart.Lay([.. _corners[from..(to + 1)].SelectMany(c => c)], _ways(from == 0), _room).Fits;

    /// <summary>
    /// The outermost points of the body at each grid depth and between it and the next; everything above the root counts to the first.
    /// Sixteen directions over the cross-section are kept.
    /// </summary>
    private static Point3[][] CornersByDepth(TriangleMesh body, double[] depths)
    {
        const int directions = 16;
        Point2[] rays = [.. Enumerable.Range(0, directions).Select(k => new Point2(Math.Cos(2 * Math.PI * k / directions), Math.Sin(2 * Math.PI * k / directions)))];
        double step = depths[1] - depths[0];
        Point3?[][] extreme = [.. depths.Select(_ => new Point3?[directions])];
        List<Point3> above = [];
        ReadOnlySpan<int> corners = body.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            Point3 a = body.Vertex(corners[i]), b = body.Vertex(corners[i % 3 == 2 ? i - 2 : i + 1]);
            if (a.Y < 0)
                above.Add(a);
            else
                Keep((int)Math.Round(a.Y / step), a);
            if (a.Y >= b.Y)
                continue;
            int first = Math.Max(0, (int)Math.Ceiling(a.Y / step)), last = Math.Min(depths.Length - 1, (int)Math.Floor(b.Y / step));
            for (int row = first; row <= last; row++)
                Keep(row, a + (depths[row] - a.Y) / (b.Y - a.Y) * (b - a));
        }

        Point3[][] result = [.. extreme.Select(row => row.OfType<Point3>().Distinct().ToArray())];
        result[0] = [.. result[0], .. above.Distinct()];
        return result;

        void Keep(int row, Point3 p)
        {
            row = Math.Clamp(row, 0, depths.Length - 1);
            for (int k = 0; k < directions; k++)
                if (extreme[row][k] is not { } kept || rays[k].Dot(new(p.X, p.Z)) > rays[k].Dot(new(kept.X, kept.Z)))
                    extreme[row][k] = p;
        }
    }
}
