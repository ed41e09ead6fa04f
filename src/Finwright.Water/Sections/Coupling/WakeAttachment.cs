namespace Finwright.Water.Sections.Coupling;

/// <summary>
/// How much of the wake's bend counts: all of it while the layers lie on the section up to its edge, none when they have left it, for then the
/// wake leaves along the separated layer and no longer bends from the edge's bisector to the stream.
/// </summary>
/// <remarks>
/// Our own closure. Each side is judged by its own shape factor and counts by its momentum thickness, its part of what the bend turns. A turbulent layer lets
/// go at a shape factor of 2.2 to 2.8 by different authors (from memory), a laminar one at 4.03, where the Falkner-Skan profiles lose their friction:
/// a laminar layer of 3 lies on the surface still.
/// </remarks>
internal static class WakeAttachment
{
    private const double TurbulentSeparation = 2.5;
    private const double LaminarSeparation = 4.03;
    private const double Sharpness = 6;

    // Momentum thicknesses over which a layer that turned turbulent forgets its laminar profile, some three times its height; it keeps the answer
    // steady as transition reaches the edge (judgement).
    private const double Memory = 25;

    /// <summary>Share of the bend that counts, 0 to 1.</summary>
    public static double Share(LayerStations state, Sides sides, LayerResiduals residuals)
    {
        int upper = 0, lower = sides.Nodes - 1;
        double sum = state.Momentum[upper] + state.Momentum[lower];
        return (state.Momentum[upper] * Attached(state, upper, sides.Length[upper] - residuals.TransitionUpper)
            + state.Momentum[lower] * Attached(state, lower, sides.Length[lower] - residuals.TransitionLower)) / sum;
    }

    /// <summary>How far one side's layer lies on the surface at the edge, 1 to 0.</summary>
    /// <param name="state">The stations.</param>
    /// <param name="edge">The side's last station.</param>
    /// <param name="run">Length from transition to the edge.</param>
    private static double Attached(LayerStations state, int edge, double run)
    {
        double laminar = Math.Exp(-Math.Max(run, 0) / (Memory * state.Momentum[edge]));
        double separation = TurbulentSeparation + laminar * (LaminarSeparation - TurbulentSeparation);
        double shape = state.Displacement(edge) / state.Momentum[edge];
        return 1 / (1 + Math.Pow((shape - 1) / (separation - 1), Sharpness));
    }
}
