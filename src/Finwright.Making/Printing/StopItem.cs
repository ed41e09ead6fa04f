using Finwright.Geometry;
using Finwright.Geometry.Features;

namespace Finwright.Making.Printing;

/// <summary>Something that is put into a pocket while the part is printed.</summary>
/// <param name="Name">Name for papers, for example "front box bolt: nut".</param>
/// <param name="Path">JSON path of the value that places it.</param>
/// <param name="Pocket">The pocket, in the axes of the mesh.</param>
/// <param name="Height">Height of the item as it lies in its pocket, along print up, metres.</param>
/// <param name="Width">
/// Width that must get through the opening, metres: the item's least width across when its axis stands up, its greatest width square to its
/// axis when that lies.
/// </param>
public sealed record StopItem(string Name, string Path, FeatureVolume Pocket, double Height, double Width)
{
    /// <summary>The item that a pocket was made for: smaller than the pocket by the allowance all round.</summary>
    /// <param name="feature">The pocket.</param>
    /// <param name="toLayers">From the axes of the pocket to axes whose z is print up.</param>
    /// <param name="allowance">Added to the item's sizes when the pocket was made, metres.</param>
    public static StopItem Of(PlacedFeature feature, Placement toLayers, double allowance)
    {
        ArgumentNullException.ThrowIfNull(feature);
        PocketShape shape = new(feature.Volume, toLayers);
        return new(feature.Name, feature.Path, feature.Volume, shape.Top - shape.Bottom - allowance, shape.GreatestOpening() - allowance);
    }
}
