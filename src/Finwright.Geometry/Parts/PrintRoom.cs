using Finwright.Design;

namespace Finwright.Geometry.Parts;

/// <summary>The space a printer offers.</summary>
/// <param name="Width">Usable width of the bed, left to right, metres.</param>
/// <param name="Depth">Usable depth of the bed, front to back, metres.</param>
/// <param name="Height">Height of the build space, metres.</param>
/// <param name="Edge">Strip along each edge of the bed that is not used, metres.</param>
public sealed record PrintRoom(double Width, double Depth, double Height, double Edge)
{
    /// <summary>The room that a design's printer offers.</summary>
    public static PrintRoom From(Print print)
    {
        ArgumentNullException.ThrowIfNull(print);
        const double metres = 1e-3;
        return new(
            (print.BedXMm - 2 * print.EdgeMarginMm) * metres, (print.BedYMm - 2 * print.EdgeMarginMm) * metres,
            print.BedZMm * metres, print.EdgeMarginMm * metres);
    }
}
