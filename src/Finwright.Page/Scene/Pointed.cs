using System.Globalization;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Editing;

namespace Finwright.Page.Scene;

/// <summary>Lights up what was pointed at: a rod, a bolt, a section, a port.</summary>
internal static class Pointed
{
    // Lines round a section stand this far off the skin, so that they are seen, metres.
    private const double OffSkin = 0.4e-3;

    private const int RingSteps = 96;

    private const string Sections = "$.shape.sections[";

    /// <summary>Adds it to a scene in design axes.</summary>
    /// <returns>Whether there was such a thing.</returns>
    public static bool Add(SceneFile scene, Standing standing, string place)
    {
        if (place.Length == 0 || standing.Shape?.Blade is not { } blade || standing.Shape.Design is not { } design)
            return false;
        bool isThere = false;
        foreach (PlacedFeature feature in Features(standing).Where(feature => Meets(feature.Path, place)))
        {
            if (PrismMesh.Of(feature.Volume) is not { } mesh)
                continue;
            scene.Add(feature.Name, "move", mesh);
            isThere = true;
        }

        if (place.StartsWith(Sections, StringComparison.Ordinal) && int.TryParse(place[Sections.Length..].Split(']')[0], NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index >= 0 && index < design.Shape.Sections.Count)
        {
            scene.AddRing("section", "move", Ring(blade, Math.Clamp(design.Shape.Sections[index].AtPercent / 100, 0, 0.995) * blade.Span));
            isThere = true;
        }

        if (place.StartsWith("$.pour.ports", StringComparison.Ordinal) && standing.Made?.Parts is { } parts && !standing.MadeIsOld)
        {
            foreach (Geometry.Parts.PortDimple port in parts.Ports)
                scene.AddLabel(port.Name, "ring", port.Centre);
            isThere = parts.Ports.Count > 0;
        }

        return isThere;
    }

    /// <summary>Bores, pockets and cavities of the design as it is; none when they cannot be placed.</summary>
    public static IReadOnlyList<PlacedFeature> Features(Standing standing) =>
        standing.Shape is { Blade: { } blade, Design: { } design } ? FinSolids.Place(design, blade, [])?.Features ?? [] : [];

    /// <summary>The outline of a section, round the blade.</summary>
    public static IReadOnlyList<Point3> Ring(BladeShape blade, double depth)
    {
        Point3[] ring = [.. Enumerable.Range(0, RingSteps).Select(i => blade.Skin(depth, (double)i / RingSteps))];
        return [.. ring.Select((p, i) =>
        {
            Point3 along = ring[(i + 1) % RingSteps] - ring[(i + RingSteps - 1) % RingSteps];
            Point3 off = new(-along.Z, 0, along.X);
            double length = off.Length;
            return length > 0 ? p - OffSkin / length * off : p;
        })];
    }

    private static bool Meets(string path, string place) =>
        path.Equals(place, StringComparison.Ordinal)
        || (place.StartsWith(path, StringComparison.Ordinal) && place[path.Length] is '.' or '[')
        || (path.StartsWith(place, StringComparison.Ordinal) && path[place.Length] is '.' or '[');
}
