namespace Finwright.Geometry.Blades;

/// <summary>Where a loft has points: places round the section that all rows share, and the rows of each run; each list with the middles of its gaps.</summary>
/// <param name="Side">Places on the starboard side, from the trailing edge to the nose.</param>
/// <param name="Rows">Parameters of the rows of each run.</param>
/// <param name="ArcSteps">Steps of the arc at each trailing edge corner.</param>
internal sealed record LoftGrid(double[] Side, double[][] Rows, int ArcSteps)
{
    /// <summary>Triangles of the skin between root face and tip, before points that coincide are joined.</summary>
    public long Triangles
    {
        get
        {
            // A middle lies in each gap: a side of n places has (n - 1) / 2 gaps. The trailing edge's face adds one to the ring.
            long around = Side.Length - 1 + 2 * ArcSteps + 1, along = 0;
            foreach (double[] rows in Rows)
                along += (rows.Length - 1) / 2;
            return 2 * around * along;
        }
    }

    /// <summary>Spreads places and rows after the curvature of the skin.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="runs">Its runs.</param>
    /// <param name="overhang">Greatest offset from the skin, metres.</param>
    /// <param name="stray">Stray to allow across each gap, metres.</param>
    public static LoftGrid Spread(Blade blade, IReadOnlyList<RowSegment> runs, double overhang, double stray)
    {
        int arcSteps = LoftSpacing.Arc(overhang, stray);
        double[] side = LoftSpacing.Side(blade, runs, stray);
        RingTable table = new(blade, side, 2 * arcSteps);
        return new(side, [.. runs.Select(run => LoftSpacing.Rows(blade, table, run, stray))], arcSteps);
    }

    /// <summary>Halves every gap whose stray is beyond a tolerance, and no other.</summary>
    /// <param name="panels">The facets of each run of this grid.</param>
    /// <param name="tolerance">Metres.</param>
    public LoftGrid Halve(SkinPanels[] panels, double tolerance)
    {
        int sideGaps = (Side.Length - 1) / 2;
        bool[] wideSides = new bool[sideGaps];
        bool wideArc = false;
        double[][] rows = new double[Rows.Length][];
        for (int run = 0; run < Rows.Length; run++)
        {
            ReadOnlySpan<double> around = panels[run].ColumnStrays;
            for (int i = 0; i < sideGaps; i++)
                wideSides[i] |= around[ArcSteps + i] > tolerance || around[^(ArcSteps + i + 1)] > tolerance;
            for (int i = 0; i < ArcSteps; i++)
                wideArc |= around[i] > tolerance || around[^(i + 1)] > tolerance;
            rows[run] = Halve(Rows[run], [.. panels[run].RowStrays.ToArray().Select(stray => stray > tolerance)]);
        }

        return new(Halve(Side, wideSides), rows, wideArc ? 2 * ArcSteps : ArcSteps);
    }

    private static double[] Halve(double[] places, bool[] wide)
    {
        List<double> finer = [places[0]];
        for (int gap = 0; gap < wide.Length; gap++)
        {
            double from = places[2 * gap], middle = places[2 * gap + 1], to = places[2 * gap + 2];
            if (wide[gap])
                finer.AddRange([(from + middle) / 2, middle, (middle + to) / 2, to]);
            else
                finer.AddRange([middle, to]);
        }

        return [.. finer];
    }
}
