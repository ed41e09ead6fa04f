using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>Solves a curve from the middle outward: no further than the flow can be solved, and closer together where it ends.</summary>
/// <remarks>
/// Past an abrupt stall no steady flow is found, and looking for it at every angle costs more than the rest of the curve. After three angles
/// in a row without an answer, more than a polar may bridge, or where the nose has let go, the side is left. Where lift still rises at the last answer, three
/// angles a quarter of a degree apart are tried beyond it: a thin section peaks and lets go within less than a degree.
/// </remarks>
public static class OutwardCurves
{
    private const double Degree = Math.PI / 180;

    // Nearly every section is attached so far, radians; solved in one go.
    private const double Core = 10.01 * Degree;
    private const int MostMisses = 3;
    private const double FineStep = 0.25 * Degree;
    private const int FineSteps = 3;

    /// <summary>Makes a solver that goes outward.</summary>
    /// <param name="solver">Solves the angles it is given, each from its neighbour toward zero where it needs one.</param>
    public static SectionCurveSolver By(SectionCurveSolver solver)
    {
        ArgumentNullException.ThrowIfNull(solver);
        return (section, conditions, angles, cancellation) =>
        {
            List<SectionPoint> points = [.. solver(section, conditions, [.. angles.Where(angle => Math.Abs(angle) <= Core)], cancellation).Points];
            foreach (int side in (ReadOnlySpan<int>)[1, -1])
                Extend(points, side, [.. angles.Where(angle => side * angle > Core).OrderBy(Math.Abs)], Solve);
            points.Sort((a, b) => a.AngleOfAttack.CompareTo(b.AngleOfAttack));
            return new() { Conditions = conditions, Points = points };

            IReadOnlyList<SectionPoint> Solve(IEnumerable<double> some) => solver(section, conditions, [.. some.Order()], cancellation).Points;
        };
    }

    private static void Extend(List<SectionPoint> points, int side, double[] outer, Func<IEnumerable<double>, IReadOnlyList<SectionPoint>> solve)
    {
        // Outward on this side, the middle first.
        List<SectionPoint> own = [.. points.Where(point => side * point.AngleOfAttack >= 0).OrderBy(point => Math.Abs(point.AngleOfAttack))];
        int next = 0;
        while (next < outer.Length && Misses(own) < MostMisses && !own.Exists(point => point.IsPastNoseStall))
        {
            double[] some = outer[next..Math.Min(next + MostMisses - Misses(own), outer.Length)];
            next += some.Length;
            Add(some);
        }

        SectionPoint? last = own.FindLast(point => point.IsUsable);
        if (last is null || own.Exists(point => point.IsPastNoseStall) || Misses(own) == 0 || !(side * last.Cl > 0) || own.Exists(point => point.IsUsable && side * point.Cl > side * last.Cl))
            return;
        for (int i = 1; i <= FineSteps; i++)
        {
            double angle = last.AngleOfAttack + side * i * FineStep;
            // One by one, since the first that fails ends it.
            if (own.Exists(point => Math.Abs(point.AngleOfAttack - angle) < 0.1 * FineStep) || Math.Abs(angle) > PolarGrid.GreatestAngleDegrees * Degree || !Add([angle]))
                return;
        }

        bool Add(double[] some)
        {
            // The last answer goes along, so that the new angles can start from it.
            double? start = own.FindLast(point => point.Converged)?.AngleOfAttack;
            IReadOnlyList<SectionPoint> solved = solve(start is double from ? some.Append(from) : some);
            SectionPoint[] added = [.. solved.Where(point => some.Contains(point.AngleOfAttack)).OrderBy(point => Math.Abs(point.AngleOfAttack))];
            points.AddRange(added);
            own.AddRange(added);
            own.Sort((a, b) => Math.Abs(a.AngleOfAttack).CompareTo(Math.Abs(b.AngleOfAttack)));
            return added.All(point => point.IsUsable);
        }
    }

    /// <summary>How many angles in a row, at the outer end, have no answer.</summary>
    private static int Misses(List<SectionPoint> own)
    {
        int misses = 0;
        while (misses < own.Count && !own[^(misses + 1)].IsUsable)
            misses++;
        return misses;
    }
}
