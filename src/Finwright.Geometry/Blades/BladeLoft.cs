namespace Finwright.Geometry.Blades;

/// <summary>Turns a blade into a closed mesh.</summary>
/// <remarks>
/// Rings of one common set of places round the section are stacked along the span; both sets follow the skin's curvature and the tolerance
/// (<see cref="LoftSpacing"/>). Corners are moved off the skin so that facets and skin balance (<see cref="SkinPanels"/>): the volume is far closer than the
/// tolerance suggests. Points that coincide, at a round tip, a sharp trailing edge or where the flange's corner arcs end, are one vertex.
/// </remarks>
public static class BladeLoft
{
    // Strays of sides and rows add up at the middle of a facet.
    private const double FirstShare = 0.5;
    private const int Attempts = 4;
    private const double Headroom = 0.95;

    // A stray that spacing cannot cure, at a fold or a kink, must not drive the mesh without bound.
    private const double GreatestRefinement = 0.4;

    /// <summary>Builds the mesh of a blade, with its flange and root extension.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="options">Tolerance, flange, root extension; null for the defaults.</param>
    /// <returns>Closed, oriented mesh in design axes, metres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length in the options is negative or not finite, the fillet is wider than the overhang, or the flange is higher than half the blade.</exception>
    public static TriangleMesh Build(Blade blade, LoftOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(blade);
        options ??= new();
        Check(blade, options);
        List<RowSegment> runs = RowSegment.Of(blade, options);
        double stray = FirstShare * options.Tolerance;
        for (int attempt = 1; ; attempt++)
        {
            LoftRows rows = Sample(blade, runs, options, stray);
            double worst = rows.WorstStray();
            if (worst <= options.Tolerance || attempt == Attempts)
                return LoftAssembly.Build(blade, rows);
            stray *= Math.Max(Headroom * options.Tolerance / worst, GreatestRefinement);
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

    private static LoftRows Sample(Blade blade, List<RowSegment> runs, LoftOptions options, double stray)
    {
        // Each arc step is sampled at its middle as well, like every gap.
        int arcSteps = LoftSpacing.Arc(options.Flange?.Overhang ?? 0, stray);
        RingTable table = new(blade, LoftSpacing.Side(blade, runs, stray), 2 * arcSteps);
        SkinPanels[] panels = new SkinPanels[runs.Count];
        for (int i = 0; i < runs.Count; i++)
            panels[i] = new(SkinRows.Sample(blade, table, runs[i], LoftSpacing.Rows(blade, table, runs[i], stray)));
        return new(runs, panels, arcSteps);
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
