using Finwright.Design;
using Finwright.Making.Layers;

namespace Finwright.Making.FromDesign;

/// <summary>From the print settings of the design file to SI.</summary>
public static class PrintFromDesign
{
    private const double Millimetres = 1e-3, PerCent = 0.01, GramsPerCubicCentimetre = 1e3;

    /// <summary>What the layers depend on.</summary>
    /// <param name="print">As the maker gives it.</param>
    public static PrintSettings Settings(Print print)
    {
        ArgumentNullException.ThrowIfNull(print);
        return new()
        {
            LayerHeight = print.LayerMm * Millimetres,
            LineWidth = print.LineWidthMm * Millimetres,
            Walls = print.Walls,
            SolidLayers = print.SolidLayers,
            InfillShare = print.InfillPercent * PerCent,
            PlasticDensity = print.FilamentDensityGPerCm3 * GramsPerCubicCentimetre,
        };
    }
}
