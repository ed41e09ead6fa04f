using System.Globalization;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Papers.Words;
using Finwright.Strength.Bench;

namespace Finwright.Papers.Sheet;

/// <summary>Figures of the sheet, in the reader's words and units.</summary>
public static class SheetFigures
{
    private const double Celsius = 273.15, Inch = 25.4e-3;

    /// <summary>How warm a part gets over time.</summary>
    /// <param name="cured">The cure of the fin.</param>
    /// <param name="part">The part, followed to its end.</param>
    /// <param name="fin">Name of the fin.</param>
    /// <param name="tongue">How the figure speaks.</param>
    public static Figure Cure(FinCured cured, PartCured part, string fin, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(cured);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(tongue);
        CureCurveWords words = tongue.Words.Sheet.CureCurves with { Culture = Culture(tongue) };
        if (tongue.Units == PaperUnits.Inch)
            words = words with { Degrees = kelvin => 1.8 * (kelvin - Celsius) + 32, Unit = "°F" };
        return CureCurvesFigure.Draw(tongue.Words.Sheet.CureTitle(fin, tongue.Words.Names.Part(part.Name)), part.Band, cured.Softening, part.Case.Bath, words);
    }

    /// <summary>How far the blade bends along the span.</summary>
    internal static Figure Bench(SheetPaper paper, BenchPrediction prediction)
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
