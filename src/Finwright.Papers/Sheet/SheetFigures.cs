using System.Globalization;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Papers.Words;
using Finwright.Strength.Bench;

namespace Finwright.Papers.Sheet;

/// <summary>Figures of the sheet, in the reader's words and units.</summary>
internal static class SheetFigures
{
    private const double Celsius = 273.15, Inch = 25.4e-3;

    /// <summary>How warm a part gets over time.</summary>
    public static Figure Cure(SheetPaper paper, PartCured part)
    {
        CureCurveWords words = paper.Words.CureCurves with { Culture = Culture(paper.Tongue) };
        if (paper.Tongue.Units == PaperUnits.Inch)
            words = words with { Degrees = kelvin => 1.8 * (kelvin - Celsius) + 32, Unit = "°F" };
        return CureCurvesFigure.Draw(paper.Words.CureTitle(paper.Design.Name, paper.Part(part.Name)), part.Band, paper.Result.Cured!.Softening, part.Case.Bath, words);
    }

    /// <summary>How far the blade bends along the span.</summary>
    public static Figure Bench(SheetPaper paper, BenchPrediction prediction)
    {
        BenchFigureWords words = paper.Words.BenchCurves with { Culture = Culture(paper.Tongue), Mass = kilograms => paper.Tongue.Mass(kilograms) };
        if (paper.Tongue.Units == PaperUnits.Inch)
            words = words with { Lengths = metres => metres / Inch, Unit = paper.Tongue.LengthUnit };
        return BenchFigure.Draw(paper.Words.BenchTitle(paper.Design.Name), prediction, words);
    }

    /// <summary>Numbers as the reader has them: only the decimal mark differs.</summary>
    private static CultureInfo Culture(Tongue tongue)
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = tongue.Number(0.5, 1)[1..2];
        return culture;
    }
}
