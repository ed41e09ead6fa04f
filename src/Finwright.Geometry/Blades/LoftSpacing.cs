namespace Finwright.Geometry.Blades;

/// <summary>
/// Where a loft needs points round the section and rows along the span, so that no facet strays from the skin by more than a tolerance:
/// a gap of length h over a curve S strays by |n·S″| h² / 8 (error of linear interpolation, n the normal of the skin).
/// </summary>
internal static class LoftSpacing
{
    // Cells in which curvature is looked at; the spacing follows it between them.
    private const int SideCells = 480, RowCells = 160;
    private const int RowsLookedAt = 17;
    private const int LeastSideGaps = 8, LeastArcSteps = 1;

    /// <summary>Places on the starboard side with the middle of each gap, for the worst of all depths and both sides.</summary>
    public static double[] Side(Blade blade, IReadOnlyList<RowSegment> runs, double stray)
    {
        double[] places = new double[SideCells + 1];
        for (int i = 0; i <= SideCells; i++)
            places[i] = 0.5 * i / SideCells;
        RingTable table = new(blade, places, 1);
        Point2[] points = new Point2[table.Count], normals = new Point2[table.Count];
        double[] worst = new double[SideCells + 1];
        foreach (RowSegment run in runs)
            for (int r = 0; r < RowsLookedAt; r++)
            {
                (double depth, double offset) = run.At((double)r / RowsLookedAt);
                table.Fill(blade.FrameAt(depth), offset, points, normals);
                for (int i = 1; i <= SideCells; i++)
                    foreach (int j in (ReadOnlySpan<int>)[table.StarboardCorner + i, table.PortCorner - i])
                    {
                        double second = normals[j].Dot(points[j - 1] + points[j + 1] - 2 * points[j]);
                        worst[i] = Math.Max(worst[i], Math.Abs(second));
                    }
            }

        return EvenSpacing.Places(0, 0.5, Density(worst, stray), LeastSideGaps, 2);
    }

    /// <summary>Steps of the arc round a trailing edge corner.</summary>
    public static int Arc(double offset, double stray)
    {
        if (offset <= stray)
            return LeastArcSteps;
        // A quarter turn and a little, as the sides converge.
        double step = 2 * Math.Acos(1 - stray / offset);
        return Math.Max(LeastArcSteps, (int)Math.Ceiling(0.6 * Math.PI / step));
    }

    /// <summary>Parameters of the rows of one run, with the middle of each gap.</summary>
    public static double[] Rows(Blade blade, RingTable table, RowSegment run, double stray)
    {
        if (run.Kind == RowKind.Step || run.To <= 0)
            return [0, 0.5, 1];
        SkinRows rows = SkinRows.Sample(blade, table, run, [.. Enumerable.Range(0, RowCells + 1).Select(i => (double)i / RowCells)]);
        double[] worst = new double[RowCells + 1];
        for (int r = 1; r < RowCells; r++)
            for (int j = 0; j < table.Count; j++)
            {
                Point3 second = rows.At(r - 1, j) + rows.At(r + 1, j) - 2 * rows.At(r, j);
                worst[r] = Math.Max(worst[r], Math.Abs(rows.Normal(r, j).Dot(second)));
            }

        (worst[0], worst[^1]) = (worst[1], worst[^2]);
        return EvenSpacing.Places(0, 1, Density(worst, stray), 1, 2);
    }

    /// <summary>Gaps wanted in each cell, from the second differences at the cells' ends.</summary>
    private static double[] Density(double[] second, double stray)
    {
        double[] density = new double[second.Length - 1];
        for (int i = 0; i < density.Length; i++)
            density[i] = Math.Sqrt(Math.Max(second[i], second[i + 1]) / (8 * stray));
        return density;
    }
}
