using Finwright.Design;
using Finwright.Making.Printing;

namespace Finwright.Making.FromDesign;

/// <summary>From the design file's speeds and times of the printer to SI.</summary>
public static class PrinterFromDesign
{
    private const double Millimetres = 1e-3, CubicMillimetres = 1e-9, Minutes = 60;

    /// <summary>The printer.</summary>
    /// <param name="machine">As the maker gives it.</param>
    public static PrinterModel Of(Machine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        return new()
        {
            OuterWallSpeed = machine.OuterWallSpeedMmPerS * Millimetres,
            InnerWallSpeed = machine.InnerSpeedMmPerS * Millimetres,
            SolidSpeed = machine.InnerSpeedMmPerS * Millimetres,
            InfillSpeed = machine.InnerSpeedMmPerS * Millimetres,
            TravelSpeed = machine.TravelSpeedMmPerS * Millimetres,
            FlowLimit = machine.FlowLimitMm3PerS * CubicMillimetres,
            Acceleration = machine.AccelerationMmPerS2 * Millimetres,
            LayerChange = machine.LayerChangeSeconds,
            LeastLayerTime = machine.LeastLayerSeconds,
            StartTime = machine.StartMinutes * Minutes,
        };
    }
}
