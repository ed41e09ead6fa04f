namespace Finwright.Geometry.Blades;

/// <summary>Turns a blade into a closed mesh.</summary>
/// <remarks>
/// Rings of one common set of places round the section are stacked along the span; both sets follow the skin's curvature and the tolerance
/// (<see cref="LoftSpacing"/>). Corners are moved off the skin so that facets and skin balance (<see cref="SkinPanels"/>): the volume is far closer than the
/// tolerance suggests. The facets are then measured against the skin, and where they stray, at a kink say, gaps are halved until they do not.
/// Points that coincide, at a round tip, a sharp trailing edge or where the flange's corner arcs end, are one vertex.
/// </remarks>
public static class BladeLoft
{
    /// <summary>Greatest number of triangles in a skin; a finer tolerance is not met but told, see <see cref="LoftedSkin.WorstStray"/>.</summary>
    public const int MostTriangles = 1_000_000;

    // Strays of sides and rows add up at the middle of a facet.
    private const double FirstShare = 0.5;

    // Even spacing leaves as many triangles again for the places that need more.
    private const int MostSpread = MostTriangles / 2;
    private const double Headroom = 0.95;
    private const double GreatestRefinement = 0.4;

    // A gap halved this often is below a millionth of its run.
    private const int Rounds = 22;

    /// <summary>Builds the mesh of a blade, with its flange and root extension.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="options">Tolerance, flange, root extension; null for the defaults.</param>
    /// <returns>The mesh and its greatest distance from the skin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length in the options is negative or not finite, the fillet is wider than the overhang, or the flange is higher than half the blade.</exception>
    public static LoftedSkin Build(Blade blade, LoftOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(blade);
        options ??= new();
        Check(blade, options);
        List<RowSegment> runs = RowSegment.Of(blade, options);
        double overhang = options.Flange?.Overhang ?? 0, stray = FirstShare * options.Tolerance;
        LoftGrid grid = LoftGrid.Spread(blade, runs, overhang, stray);
        while (grid.Triangles > MostSpread)
        {
            // Facets go with the inverse of the stray.
            stray *= Math.Max((double)grid.Triangles / MostSpread, 1 / Headroom);
            grid = LoftGrid.Spread(blade, runs, overhang, stray);
        }

        for (int round = 1; ; round++)
        {
            LoftRows rows = Sample(blade, runs, grid);
            double worst = rows.WorstStray();
            LoftGrid? finer = null;
            if (worst > options.Tolerance && round < Rounds)
                finer = (round == 1 ? Closer(worst) : null) ?? Halved(rows.Panels, worst);
            if (finer is null)
                return new(LoftAssembly.Build(blade, rows), worst);
            grid = finer;
        }

        // A smooth skin is met by spacing everything closer once; what is left then is local.
        LoftGrid? Closer(double worst)
        {
            stray *= Math.Max(Headroom * options.Tolerance / worst, GreatestRefinement);
            LoftGrid closer = LoftGrid.Spread(blade, runs, overhang, stray);
            return closer.Triangles <= MostSpread ? closer : null;
        }

        // When there is no room to cure all, the worst is cured.
        LoftGrid? Halved(SkinPanels[] panels, double worst)
        {
            LoftGrid all = grid.Halve(panels, options.Tolerance);
            if (all.Triangles <= MostTriangles)
                return all;
            LoftGrid some = grid.Halve(panels, Math.Max(options.Tolerance, worst / 2));
            return some.Triangles <= MostTriangles ? some : null;
        }
    }

    private static void Check(Blade blade, LoftOptions options)
    {
        if (!(options.Tolerance > 0 && double.IsFinite(options.Tolerance)))
            throw new ArgumentOutOfRangeException(nameof(options), options.Tolerance, "The tolerance must be above 0.");
        if (!(options.RootExtension >= 0 && double.IsFinite(options.RootExtension)))
            throw new ArgumentOutOfRangeException(nameof(options), options.RootExtension, "The root extension must be 0 or more.");
        if (options.Flange is not { } flange)
            return;
        if (!(flange.Overhang > 0 && flange.Thickness > 0 && flange.FilletRadius >= 0 && flange.FilletRadius <= flange.Overhang && double.IsFinite(flange.Overhang)))
            throw new ArgumentOutOfRangeException(nameof(options), flange, "The flange needs an overhang and a thickness above 0 and a fillet of 0 up to the overhang.");
        if (!(flange.Height <= blade.Span / 2))
            throw new ArgumentOutOfRangeException(nameof(options), flange.Height, $"Flange and fillet must stay within half the span, {blade.Span / 2} m.");
    }

    private static LoftRows Sample(Blade blade, List<RowSegment> runs, LoftGrid grid)
    {
        // Each arc step is sampled at its middle as well, like every gap.
        RingTable table = new(blade, grid.Side, 2 * grid.ArcSteps);
        SkinPanels[] panels = new SkinPanels[runs.Count];
        for (int i = 0; i < runs.Count; i++)
            panels[i] = new(SkinRows.Sample(blade, table, runs[i], grid.Rows[i]));
        return new(runs, panels, grid.ArcSteps);
    }
}

/// <summary>The sampled runs of a loft.</summary>
/// <param name="Runs">Runs from the root face to the tip.</param>
/// <param name="Panels">Facets of each run.</param>
/// <param name="ArcSteps">Steps of the arc at each trailing edge corner.</param>
internal sealed record LoftRows(List<RowSegment> Runs, SkinPanels[] Panels, int ArcSteps)
{
    /// <summary>Greatest distance between skin and facets, metres.</summary>
    public double WorstStray()
    {
        double worst = 0;
        foreach (SkinPanels panels in Panels)
            worst = Math.Max(worst, panels.WorstStray());
        return worst;
    }
}
