using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Templates;

/// <summary>How deep ports are drilled. On every paper the depth counts from the skin, where the drill starts: through the wall and on into the core.</summary>
public static class DrillDepth
{
    /// <summary>Where the middle of a port meets the core, design axes, metres.</summary>
    internal static Point3 Mouth(PartPoured part, PouredPort port) => part.InMesh(port.Port.Mouth);

    /// <summary>Unit vector along a port out of the part, design axes.</summary>
    internal static Point3 Outward(PartPoured part, PouredPort port) => part.Layers.ToLayers.RigidInverse().Turn(port.Port.Outward);

    /// <summary>Where the middle of a port meets the skin, design axes, metres.</summary>
    internal static Point3 Skin(PartPlan parts, PartPoured part, PouredPort port) =>
        // A dimple is known; else the wall is as thick as it is printed, measured square to the skin.
        parts.Ports.FirstOrDefault(dimple => string.Equals(dimple.Name, port.Name, StringComparison.Ordinal))?.Centre ?? Mouth(part, port) + part.Layers.Settings.WallThickness * Outward(part, port);

    /// <summary>How deep the drill goes from the skin, metres.</summary>
    /// <param name="parts">The fin's parts.</param>
    /// <param name="part">The part.</param>
    /// <param name="port">One of its ports.</param>
    public static double FromSkin(PartPlan parts, PartPoured part, PouredPort port)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(port);
        return (Skin(parts, part, port) - Mouth(part, port)).Length + port.Depth;
    }
}
