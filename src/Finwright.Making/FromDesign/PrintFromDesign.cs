using Finwright.Design;
using Finwright.Making.Layers;
using Finwright.Making.Printing;

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

    /// <summary>What the printer does in a second.</summary>
    /// <param name="print">As the maker gives it.</param>
    public static PrinterModel Printer(Print print)
    {
        ArgumentNullException.ThrowIfNull(print);
        Machine machine = print.Machine;
        double inner = machine.InnerSpeedMmPerS * Millimetres;
        return new()
        {
            OuterWallSpeed = machine.OuterWallSpeedMmPerS * Millimetres,
            InnerWallSpeed = inner,
            SolidSpeed = inner,
            InfillSpeed = inner,
            TravelSpeed = machine.TravelSpeedMmPerS * Millimetres,
            FlowLimit = machine.FlowLimitMm3PerS * 1e-9,
            Acceleration = machine.AccelerationMmPerS2 * Millimetres,
            LayerChange = machine.LayerChangeSeconds,
            LeastLayerTime = machine.LeastLayerSeconds,
            StartTime = machine.StartMinutes * 60,
        };
    }
}
