using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>A solved curve made whole: smooth between the points, bridged where points are missing, carried on past stall.</summary>
internal sealed class PolarCurve
{
    /// <summary>A gap of missing points wider than this ends the solved range, radians: two missing points of the usual grid, 3°, and its rounding.</summary>
    private const double WidestBridge = 3.1 * Math.PI / 180;

    /// <summary>The point nearest to zero that converged must lie within this, radians (4°).</summary>
    private const double NearZero = 4 * Math.PI / 180;

    /// <summary>Fewer points than this do not make a curve.</summary>
    private const int FewestPoints = 4;

    /// <summary>Lift has to fall by this share of the peak to end the search for it: less is scatter of the solved points.</summary>
    private const double CertainDrop = 0.01;

    /// <summary>Lift past the peak does not rise by more than this again before the plate's law takes over.</summary>
    private const double Jump = 0.05;

    /// <summary>Below this lift a fall is not stall but the dead band of a thin section at low Reynolds numbers.</summary>
    private const double LowestPeak = 0.3;

    // Radians; ten degrees by two ways of arithmetic are the same angle.
    private const double Rounding = 1e-12;

    private const int Quantities = 5;
    private const int Stride = 2 * Quantities;

    private readonly double[] _angles;

    // At each angle: value and slope of Cl, Cd, Cm, lowest Cp and separation.
    private readonly double[] _values;
    private readonly bool[] _bridged;

    private PolarCurve(double[] angles, double[] values, bool[] bridged, SectionStall up, SectionStall down)
    {
        (_angles, _values, _bridged, Up, Down) = (angles, values, bridged, up, down);
    }

    /// <summary>Peak of positive lift.</summary>
    public SectionStall Up { get; }

    /// <summary>Peak of negative lift.</summary>
    public SectionStall Down { get; }

    /// <summary>First and last solved angle, radians.</summary>
    public (double First, double Last) Range => (_angles[0], _angles[^1]);

    /// <summary>Makes a curve whole.</summary>
    /// <param name="curve">The points as solved.</param>
    /// <param name="liftFactor">What maximum lift is multiplied by.</param>
    /// <returns>Null when too few points converged.</returns>
    public static PolarCurve? Of(SectionCurve curve, double liftFactor)
    {
        List<Node> nodes = Connected(curve.Points, curve.Conditions);
        if (nodes.Count < FewestPoints)
            return null;
        CutJumps(nodes, side: 1);
        CutJumps(nodes, side: -1);
        nodes = Lowered(nodes, liftFactor);
        SectionStall up = InsertPeak(nodes, side: 1), down = InsertPeak(nodes, side: -1);

        int count = nodes.Count;
        double[] angles = [.. nodes.Select(node => node.Angle)];
        double[] values = new double[count * Stride];
        double[] row = new double[count];
        for (int q = 0; q < Quantities; q++)
        {
            for (int i = 0; i < count; i++)
                row[i] = nodes[i].Value(q);
            double[] slopes = MonotoneCubic.Slopes(angles, row);
            for (int i = 0; i < count; i++)
                (values[i * Stride + 2 * q], values[i * Stride + 2 * q + 1]) = (row[i], slopes[i]);
        }

        return new(angles, values, [.. nodes.Select(node => node.BridgedBefore)], up, down);
    }

    /// <summary>Forces at an angle, radians within ±π/2.</summary>
    public SectionForces At(double angle)
    {
        double[] angles = _angles;
        int last = angles.Length - 1;
        if (angle < angles[0] - Rounding)
            return StalledSection.Beyond(angle, angles[0], AtNode(0));
        if (angle > angles[last] + Rounding)
            return StalledSection.Beyond(angle, angles[last], AtNode(last));
        angle = Math.Clamp(angle, angles[0], angles[last]);
        int low = 0, high = last;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (angles[middle] <= angle)
                low = middle;
            else
                high = middle;
        }

        double width = angles[high] - angles[low], share = (angle - angles[low]) / width;
        ReadOnlySpan<double> a = _values.AsSpan(low * Stride, Stride), b = _values.AsSpan(high * Stride, Stride);
        // A point that was solved is solved, even at the edge of a bridge.
        bool bridged = _bridged[high] && angle > angles[low] && angle < angles[high];
        return new(
            MonotoneCubic.Value(share, width, a[0], b[0], a[1], b[1]),
            MonotoneCubic.Value(share, width, a[2], b[2], a[3], b[3]),
            MonotoneCubic.Value(share, width, a[4], b[4], a[5], b[5]),
            MonotoneCubic.Value(share, width, a[6], b[6], a[7], b[7]),
            MonotoneCubic.Value(share, width, a[8], b[8], a[9], b[9]),
            bridged ? PolarOrigin.Bridged : PolarOrigin.Solved);
    }

    private SectionForces AtNode(int i)
    {
        int at = i * Stride;
        return new(_values[at], _values[at + 2], _values[at + 4], _values[at + 6], _values[at + 8], PolarOrigin.Solved);
    }

    /// <summary>The usable points from the one nearest zero outward, as far as gaps between them can be bridged.</summary>
    private static List<Node> Connected(IReadOnlyList<SectionPoint> points, SectionConditions conditions)
    {
        int middle = -1;
        for (int i = 0; i < points.Count; i++)
            if (points[i].IsUsable && (middle < 0 || Math.Abs(points[i].AngleOfAttack) < Math.Abs(points[middle].AngleOfAttack)))
                middle = i;
        if (middle < 0 || Math.Abs(points[middle].AngleOfAttack) > NearZero)
            return [];
        int first = Reach(points, middle, -1), last = Reach(points, middle, 1);
        List<Node> nodes = [];
        bool gap = false;
        for (int i = first; i <= last; i++)
        {
            if (points[i].IsUsable)
                nodes.Add(new(points[i], gap && nodes.Count > 0));
            gap = !points[i].IsUsable;
        }

        AddNoseStall(nodes, points, last, 1, conditions);
        AddNoseStall(nodes, points, first, -1, conditions);
        return nodes;
    }

    /// <summary>Ends the curve where the nose lets go, between the last usable point and the next, which is past it.</summary>
    private static void AddNoseStall(List<Node> nodes, IReadOnlyList<SectionPoint> points, int last, int side, SectionConditions conditions)
    {
        int next = last + side;
        if (next < 0 || next >= points.Count || !points[next].Converged || !points[next].IsPastNoseStall)
            return;
        Node good = new(points[last], false), past = new(points[next], false);
        double share = (NoseStall.LowestPressure(conditions.ReynoldsNumber) - good.MinimumCp) / (past.MinimumCp - good.MinimumCp);
        if (!(share > 0 && share < 1))
        {
            Mark(nodes, side);
            return;
        }

        double Between(double a, double b) => a + share * (b - a);
        Node limit = new(
            Between(good.Angle, past.Angle),
            Between(good.Cl, past.Cl),
            Between(good.Cd, past.Cd),
            Between(good.Cm, past.Cm),
            Between(good.MinimumCp, past.MinimumCp),
            Between(good.Separation, past.Separation),
            false,
            true);
        if (side > 0)
            nodes.Add(limit);
        else
            nodes.Insert(0, limit);
    }

    private static void Mark(List<Node> nodes, int side)
    {
        int end = side > 0 ? nodes.Count - 1 : 0;
        nodes[end] = nodes[end] with { IsNoseStall = true };
    }

    private static int Reach(IReadOnlyList<SectionPoint> points, int from, int step)
    {
        int reached = from;
        for (int i = from + step; i >= 0 && i < points.Count; i += step)
        {
            if (!points[i].IsUsable)
                continue;
            bool isNext = i == reached + step;
            if (!isNext && Math.Abs(points[i].AngleOfAttack - points[reached].AngleOfAttack) > WidestBridge)
                break;
            reached = i;
        }

        return reached;
    }

    /// <summary>
    /// Past the peak the solver may find the flow now attached, now stalled. Where lift has fallen and then jumps up again, the points beyond
    /// are of another answer and are left out.
    /// </summary>
    private static void CutJumps(List<Node> nodes, int side)
    {
        (int peak, bool passed) = Peak(nodes, side);
        if (!passed)
            return;
        double least = side * nodes[peak].Cl;
        for (int i = peak + side; i >= 0 && i < nodes.Count; i += side)
        {
            double lift = side * nodes[i].Cl;
            if (lift > least + Jump)
            {
                if (side > 0)
                    nodes.RemoveRange(i, nodes.Count - i);
                else
                    nodes.RemoveRange(0, i + 1);
                return;
            }

            least = Math.Min(least, lift);
        }
    }

    /// <summary>
    /// Brings the peaks of lift down to a stated share. Each point moves along the line to the angle without lift: not at all up to half the
    /// stalling angle, by the full share at the peak and beyond, so that the lift slope stays as it was solved.
    /// </summary>
    private static List<Node> Lowered(List<Node> nodes, double factor)
    {
        if (factor is 1)
            return nodes;
        double zero = ZeroLift(nodes);
        double up = nodes[Peak(nodes, 1).Index].Angle - zero, down = nodes[Peak(nodes, -1).Index].Angle - zero;
        return [.. nodes.Select(node =>
        {
            double angle = node.Angle - zero, stall = angle >= 0 ? up : down;
            double way = stall is 0 ? 0 : Math.Clamp(2 * angle / stall - 1, 0, 1);
            double share = 1 - (1 - factor) * way * way * (3 - 2 * way);
            return node with { Angle = zero + share * angle, Cl = share * node.Cl };
        })];
    }

    private static double ZeroLift(List<Node> nodes)
    {
        for (int i = 1; i < nodes.Count; i++)
        {
            (Node a, Node b) = (nodes[i - 1], nodes[i]);
            if (a.Cl < 0 && b.Cl >= 0)
                return a.Angle - a.Cl * (b.Angle - a.Angle) / (b.Cl - a.Cl);
        }

        return 0;
    }

    /// <summary>The first peak outward from the angle without lift that is followed by a certain fall; else the greatest lift solved.</summary>
    private static (int Index, bool IsPassed) Peak(List<Node> nodes, int side)
    {
        int start = Nearest(nodes, ZeroLift(nodes)), end = side > 0 ? nodes.Count - 1 : 0;
        int best = start;
        for (int i = start; i != end + side; i += side)
        {
            double lift = side * nodes[i].Cl, most = side * nodes[best].Cl;
            if (lift >= most)
                best = i;
            else if (most > LowestPeak && most - lift > CertainDrop * most)
                break;
        }

        return (best, best != start && (best != end || nodes[end].IsNoseStall));
    }

    private static int Nearest(List<Node> nodes, double angle)
    {
        int nearest = 0;
        for (int i = 1; i < nodes.Count; i++)
            if (Math.Abs(nodes[i].Angle - angle) < Math.Abs(nodes[nearest].Angle - angle))
                nearest = i;
        return nearest;
    }

    /// <summary>Finds the peak between the points by the parabola through the three highest, and makes it a point of its own.</summary>
    private static SectionStall InsertPeak(List<Node> nodes, int side)
    {
        (int k, bool passed) = Peak(nodes, side);
        if (!passed || k == 0 || k == nodes.Count - 1)
            return new(nodes[k].Angle, nodes[k].Cl, IsReached: passed);
        (Node a, Node b, Node c) = (nodes[k - 1], nodes[k], nodes[k + 1]);
        double before = (b.Cl - a.Cl) / (b.Angle - a.Angle), after = (c.Cl - b.Cl) / (c.Angle - b.Angle);
        double bend = (after - before) / (c.Angle - a.Angle);
        double slope = before + bend * (b.Angle - a.Angle);
        if (!(side * bend < 0))
            return new(b.Angle, b.Cl, IsReached: true);
        double step = -slope / (2 * bend);
        // The peak of a parabola through three points, the middle one highest, lies within half a step of that point.
        double angle = b.Angle + step, lift = b.Cl + step * (slope + bend * step);
        Node neighbour = step > 0 ? c : a;
        double share = Math.Abs(step / (neighbour.Angle - b.Angle));
        if (share < 1e-6)
            return new(b.Angle, b.Cl, IsReached: true);
        Node peak = new(
            angle,
            lift,
            b.Cd + share * (neighbour.Cd - b.Cd),
            b.Cm + share * (neighbour.Cm - b.Cm),
            b.MinimumCp + share * (neighbour.MinimumCp - b.MinimumCp),
            b.Separation + share * (neighbour.Separation - b.Separation),
            step > 0 ? c.BridgedBefore : b.BridgedBefore);
        nodes.Insert(step > 0 ? k + 1 : k, peak);
        return new(angle, lift, IsReached: true);
    }

    private readonly record struct Node(double Angle, double Cl, double Cd, double Cm, double MinimumCp, double Separation, bool BridgedBefore, bool IsNoseStall = false)
    {
        public Node(SectionPoint point, bool bridgedBefore)
            : this(point.AngleOfAttack, point.Cl, point.Cd, point.Cm, point.MinimumCp, point.Cl >= 0 ? point.SeparationUpper : point.SeparationLower, bridgedBefore)
        {
        }

        public double Value(int quantity) => quantity switch
        {
            0 => Cl,
            1 => Cd,
            2 => Cm,
            3 => MinimumCp,
            _ => Separation,
        };
    }
}
