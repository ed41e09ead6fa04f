using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.FromDesign;

/// <summary>The solids of a fin with everything bored, pocketed and slotted, and what goes into them. Design axes, metres.</summary>
public sealed record FinSolids
{
    /// <summary>The blade; the whole fin when blade and base are printed as one.</summary>
    public required SolidExpression Blade { get; init; }

    /// <summary>The base; null when it is printed as one with the blade.</summary>
    public required SolidExpression? Base { get; init; }

    /// <summary>The base before boring.</summary>
    public required BasePlan Plan { get; init; }

    /// <summary>Everything bought and put in, for the cut list.</summary>
    public required IReadOnlyList<HardwareItem> Hardware { get; init; }

    /// <summary>All bores, pockets and cavities in their places.</summary>
    public required IReadOnlyList<PlacedFeature> Features { get; init; }

    /// <summary>The slot for the strip; null when there is none.</summary>
    public required StripSlot? Slot { get; init; }

    /// <summary>The round bores.</summary>
    public IReadOnlyList<BoreRecord> Bores =>
        [.. Features.Where(f => f.Volume.Diameter > 0 && !IsPocket(f)).Select(f => new BoreRecord(f.Name, f.Volume.From, f.Volume.To, f.Volume.Diameter))];

    /// <summary>The pockets: nuts, sockets, cavities and lids.</summary>
    public IReadOnlyList<PocketRecord> Pockets =>
        [.. Features.Where(IsPocket).Select(f => new PocketRecord(f.Name, f.Volume.Middle, Extent(f.Volume), f.NeedsPause))];

    /// <summary>
    /// Places base, bores, pockets, slot and cavities, checks each against the skin, the base's faces and one another, and
    /// writes the solids down.
    /// </summary>
    /// <param name="design">The design; every value within the range of its field.</param>
    /// <param name="blade">The blade of the same design.</param>
    /// <param name="skin">Closed mesh of the blade, flange included, root face in the hull plane.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The solids, or null when an error was found.</returns>
    public static FinSolids? Build(FinDesign design, BladeShape blade, TriangleMesh skin, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(skin);
        ArgumentNullException.ThrowIfNull(findings);
        List<Finding> found = [];
        FinSolids? solids = Build(design, blade, skin, found);
        foreach (Finding finding in found)
            findings.Add(finding);
        return found.Exists(f => f.IsError) ? null : solids;
    }

    private static FinSolids? Build(FinDesign design, BladeShape blade, TriangleMesh skin, List<Finding> found)
    {
        if (Lay(design, blade, found) is not { } features)
            return null;
        BasePlan plan = features.Base;
        bool asOne = design.Base.Printed == BasePrinting.AsOne;
        SolidExpression bladeSkin = new MeshSolid(skin);
        // Joined before anything is taken away: a base laid over blind bores would leave sealed voids.
        SolidExpression whole = asOne ? bladeSkin.And(plan.Solid()) : bladeSkin;
        return new()
        {
            Blade = whole.Without([.. features.Tools(inBlade: true, inBase: asOne)]),
            Base = asOne ? null : plan.Solid().Without([.. features.Tools(inBlade: false, inBase: true)]),
            Plan = plan,
            Hardware = features.Hardware,
            Features = features.Features,
            Slot = features.Slot,
        };
    }

    /// <summary>Places base, bores, pockets, slot and cavities without making solids of them.</summary>
    /// <param name="design">The design; every value within the range of its field.</param>
    /// <param name="blade">The blade of the same design.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The base and everything bored into it and the blade; null when an error was found.</returns>
    public static PlacedHardware? Place(FinDesign design, BladeShape blade, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(findings);
        List<Finding> found = [];
        FeaturePlan? features = Lay(design, blade, found);
        foreach (Finding finding in found)
            findings.Add(finding);
        return features is null ? null : new(features.Base, features.Features) { Slot = features.Slot };
    }

    private static FeaturePlan? Lay(FinDesign design, BladeShape blade, List<Finding> found)
    {
        double rootMiddle = (blade.Outline.LeadingEdge(0) + blade.Outline.TrailingEdge(0)) / 2;
        if (BaseFromDesign.Plan(design, rootMiddle, found) is not { } plan)
            return null;
        FeaturePlan features = new(design, blade, plan, found);
        BoxBoltFeatures.Place(features);
        ClampRodFeatures.Place(features);
        SlotTabFeatures.Place(features);
        CarbonRodFeatures.Place(features);
        CavityFeatures.Place(features);
        StripFeatures.Place(features);
        FeatureChecks.Check(features);
        return found.Exists(f => f.IsError) ? null : features;
    }

    private static bool IsPocket(PlacedFeature feature) =>
        feature.Kind is FeatureKind.NutPocket or FeatureKind.NutWayIn or FeatureKind.SocketPocket or FeatureKind.CavityRoom or FeatureKind.LidRecess;

    private static Point3 Extent(FeatureVolume volume)
    {
        double Along(Point3 axis) => volume.Reach(axis) + volume.Reach(-1 * axis);
        return new(Along(new(1, 0, 0)), Along(new(0, 1, 0)), Along(new(0, 0, 1)));
    }
}

/// <summary>The base before boring, and everything bored into it and into the blade.</summary>
/// <param name="Base">The base.</param>
/// <param name="Features">Bores, pockets and cavities in their places.</param>
public sealed record PlacedHardware(BasePlan Base, IReadOnlyList<PlacedFeature> Features)
{
    /// <summary>The slot for the strip; null when there is none.</summary>
    public StripSlot? Slot { get; init; }
}

/// <summary>A round bore.</summary>
/// <param name="Name">Name for papers.</param>
/// <param name="From">Middle of one end, design axes, metres.</param>
/// <param name="To">Middle of the other end, design axes, metres.</param>
/// <param name="Diameter">Diameter, print allowance included, metres.</param>
public sealed record BoreRecord(string Name, Point3 From, Point3 To, double Diameter);

/// <summary>A pocket.</summary>
/// <param name="Name">Name for papers.</param>
/// <param name="Centre">Middle, design axes, metres.</param>
/// <param name="Extent">Size of the smallest box round it along the design axes, print allowance included, metres.</param>
/// <param name="NeedsPause">Whether the print is paused to put something in.</param>
public sealed record PocketRecord(string Name, Point3 Centre, Point3 Extent, bool NeedsPause);
