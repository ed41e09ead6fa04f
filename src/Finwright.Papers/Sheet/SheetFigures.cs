using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Strength.Bench;

namespace Finwright.Papers.Sheet;

/// <summary>Figures of the sheet.</summary>
internal static class SheetFigures
{
    public static Figure? Cure(SheetPaper paper, PartCured part) => null;

    public static Figure? Bench(SheetPaper paper, BenchPrediction prediction) => null;
}
