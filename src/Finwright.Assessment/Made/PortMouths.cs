using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Assessment.Made;

/// <summary>Follows a drill from the skin through the wall into the core.</summary>
internal static class PortMouths
{
    // Finer than any wall.
    private const double Step = 0.1e-3;

    // A drill that has met no core by then never will: thicker than any wall.
    private const double DeepestWall = 15e-3;

    /// <summary>Where a port meets the core; null when it misses it.</summary>
    public static PourPort? Of(PortToDrill port, PartLayers layers, PartVoxels voxels)
    {
        Point3 skin = layers.ToLayers.Apply(port.Skin), inward = -1 * layers.ToLayers.Turn(port.Outward);
        for (double depth = 0; depth <= DeepestWall; depth += Step)
        {
            Point3 place = skin + depth * inward;
            if (CoreAt(voxels, place) >= 0.5)
                return new(place, -1 * inward, port.Diameter);
        }

        return null;
    }

    /// <summary>How much core lies before a drill, metres.</summary>
    public static double CoreBehind(PourPort port, PartVoxels voxels, double most)
    {
        double depth = 0;
        while (depth < most && CoreAt(voxels, port.Mouth - (depth + Step) * port.Outward) >= 0.5)
            depth += Step;
        return depth;
    }

    private static double CoreAt(PartVoxels voxels, Point3 place)
    {
        int i = (int)Math.Floor((place.X - voxels.Origin.X) / voxels.Cell.X), j = (int)Math.Floor((place.Y - voxels.Origin.Y) / voxels.Cell.Y), k = (int)Math.Floor((place.Z - voxels.Origin.Z) / voxels.Cell.Z);
        return i < 0 || j < 0 || k < 0 || i >= voxels.CountX || j >= voxels.CountY || k >= voxels.CountZ ? 0 : voxels.Core[voxels.Index(i, j, k)];
    }
}
