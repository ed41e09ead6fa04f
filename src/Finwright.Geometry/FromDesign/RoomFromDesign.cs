using Finwright.Design;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.FromDesign;

/// <summary>From the printer of the design file to the room it has.</summary>
public static class RoomFromDesign
{
    private const double Millimetres = 1e-3, LeastRoom = 1e-6;

    /// <summary>The printer's room; next to nothing, but positive, when the edge margins use the bed up.</summary>
    /// <param name="print">As the maker gives it.</param>
    public static PrintRoom Of(Print print)
    {
        ArgumentNullException.ThrowIfNull(print);
        return new(
            Math.Max(LeastRoom, (print.BedXMm - 2 * print.EdgeMarginMm) * Millimetres),
            Math.Max(LeastRoom, (print.BedYMm - 2 * print.EdgeMarginMm) * Millimetres),
            print.BedZMm * Millimetres,
            print.EdgeMarginMm * Millimetres);
    }
}
