using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Quantities;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>Dry fit and bonding, then sealing and the search for leaks.</summary>
internal static class BondingChapter
{
    /// <summary>Writes both.</summary>
    public static void Write(SheetPaper paper)
    {
        Bond(paper);
        if (paper.Result.Poured is not { Parts.Count: 0 })
            Seal(paper);
    }

    private static void Bond(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.Chapter(words.Bonding, words.BondingSentence);
        paper.Step(words.CleanParts);
        double[] bores = [.. (paper.Result.Solids?.Features ?? []).Where(feature => feature.Kind is FeatureKind.BoltBore or FeatureKind.ClampRodBore).Select(feature => feature.Volume.Diameter)];
        if (bores.Length > 0)
        {
            paper.Step(words.TryBolts(tongue.List([.. bores.Distinct().Order().Select(bore => tongue.Length(bore))])));
            paper.Step(words.GreaseThreads);
        }

        if (paper.Result.Solids?.Base is not null)
            paper.Step(words.TryBase);
        if (paper.Bought(HardwareKind.Lid).Count > 0)
            paper.Step(words.TryLids);
        bool bonds = false;
        if (paper.Bought(HardwareKind.CarbonRod) is { Count: > 0 } rods)
        {
            bonds = true;
            paper.Step(words.CutRods(tongue.List([.. rods.Select(paper.Counted)])), Cautions.Dust);
            paper.Step(words.TryRods);
            paper.Step(words.BondRods, Cautions.Skin);
        }

        if (paper.Result.Parts is { Cuts.Count: > 0 } plan)
        {
            bonds = true;
            string[] dowels = [.. paper.Bought(HardwareKind.Dowel).Select(paper.Counted)];
            paper.Step(words.TryPieces(plan.Cuts.Count + 1, dowels.Length == 0 ? words.NoDowels : tongue.List(dowels)));
            paper.Step(words.BondPieces(tongue.Length(1e-3 * paper.Design.Parts.BondGapMm, 2)), Cautions.Skin);
        }

        if (bonds)
            paper.Step(words.BondHardens);
    }

    private static void Seal(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        paper.Chapter(words.Sealing, words.SealingSentence);
        paper.Step(words.TapeOpenings(paper.Design.Shape.Strip is not null));
        paper.Step(words.FirstCoat, Cautions.Skin);
        paper.Step(words.SecondCoat);
        paper.Step(words.DrillFeeds);
        paper.Step(words.LeakTest);
        paper.Step(words.MendLeaks);
    }
}
