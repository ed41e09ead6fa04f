namespace Finwright.Geometry.Parts;

/// <summary>The space a printer offers.</summary>
/// <param name="Width">Usable width of the bed, left to right, metres.</param>
/// <param name="Depth">Usable depth of the bed, front to back, metres.</param>
/// <param name="Height">Height of the build space, metres.</param>
/// <param name="Edge">Strip along each edge of the bed that is not used, metres.</param>
public sealed record PrintRoom(double Width, double Depth, double Height, double Edge);
