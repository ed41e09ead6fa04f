using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;

namespace Finwright.Assessment.Packing;

/// <summary>The figures of a pack that show how the parts are poured and cure: pores, air that stays, temperature over the part and over time.</summary>
public static class MakingFigures
{
    /// <summary>Draws the figures that there is something to draw for.</summary>
    /// <param name="name">Name of the fin.</param>
    /// <param name="poured">The pour; null for none.</param>
    /// <param name="cured">The cure; null for none.</param>
    /// <returns>Name of the file, what it shows, the figure.</returns>
    public static IEnumerable<(string File, string What, Figure Figure)> Of(string name, FinPoured? poured, FinCured? cured)
    {
        foreach (PartPoured part in poured?.Parts ?? [])
        {
            yield return ($"pores-{FileOf(part.Name)}.svg", $"{part.Name}: cut across at a few heights, walls, solid plastic and pores to scale", PoreSlicesFigure.Draw($"{name}, {part.Name}: where the resin goes", part.Layers));
            yield return ($"air-{FileOf(part.Name)}.svg", $"{part.Name}: how it is held for the pour, its ports, and the air that stays", TrappedAirFigure.Draw($"{name}, {part.Name}: held for the pour", part));
        }

        foreach (PartCured part in cured?.Parts ?? [])
        {
            if (!part.IsWhole)
                continue;
            yield return ($"cure-map-{FileOf(part.Name)}.svg", $"{part.Name}: how warm it is where when its resin is hottest", CureMapFigure.Draw($"{name}, {part.Name}: warmest moment of the cure", part, cured!.Softening));
            yield return ($"cure-{FileOf(part.Name)}.svg", $"{part.Name}: temperature over time while it cures, with its range", CureCurvesFigure.Draw($"{name}, {part.Name}: temperature while it cures", part.Band, cured!.Softening, part.Case.Bath));
        }
    }

    private static string FileOf(string part) => part.Replace(' ', '-');
}
