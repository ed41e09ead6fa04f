using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.FromDesign;

/// <summary>From the design's blade, print settings, rods and cavities to what a plate needs.</summary>
internal sealed class BladeStructure
{
    private readonly FinDesign _design;
    private readonly Blade _blade;
    private readonly FinMaterials _materials;
    private readonly Elasticity _wall;
    private readonly WallLayout _layout;
    private readonly IReadOnlyList<PlateRod> _rods;
    private readonly IReadOnlyList<PlateVoid> _voids;

    /// <summary>Takes the structure from a design.</summary>
    /// <param name="design">Every value within the range of its field.</param>
    /// <param name="blade">The blade of the same design.</param>
    /// <param name="features">Bores, pockets and cavities in their places.</param>
    /// <param name="materials">What it is made of.</param>
    /// <param name="direction">How it is printed.</param>
    public BladeStructure(FinDesign design, Blade blade, IReadOnlyList<PlacedFeature> features, FinMaterials materials, PrintDirection direction)
    {
        (_design, _blade, _materials) = (design, blade, materials);
        _wall = materials.Printed.Elasticity(direction);
        _layout = new(design.Print, blade, direction);
        _rods = [.. features.Where(feature => feature.Kind == FeatureKind.CarbonRodBore).Select(RodIn)];
        _voids = [.. features.Where(feature => feature.Kind is FeatureKind.CavityRoom or FeatureKind.LidRecess && feature.IsInBlade).Select(VoidOf)];
    }

    /// <summary>The blade as a plate.</summary>
    /// <param name="root">How its root is held.</param>
    public PlateFin Plate(PlateRoot root) => new()
    {
        Span = _blade.Span,
        LeadingEdge = _blade.Outline.LeadingEdge,
        TrailingEdge = _blade.Outline.TrailingEdge,
        HalfThickness = _blade.HalfThickness,
        Wall = _wall,
        Core = _materials.Core.Elasticity,
        WallDepth = _layout.Depth,
        Sheet = Sheet(),
        Voids = _voids,
        Rods = _rods,
        Root = root,
    };

    private PlateSheet? Sheet()
    {
        if (_design.Shape.Strip is not { } strip)
            return null;
        Sheet sheet = _materials.Sheet;
        return PlateSheet.AlongTrailingEdge(
            strip.SheetMm * 1e-3,
            Elasticity.Isotropic(sheet.Modulus.Value, sheet.Poisson.Value, sheet.Density.Value),
            _blade.Outline.TrailingEdge,
            strip.SlotDepthMm * 1e-3,
            strip.FromPercent / 100 * _blade.Span,
            strip.ToPercent / 100 * _blade.Span);
    }

    // The bore carries the print allowance; the rod in it does not.
    private PlateRod RodIn(PlacedFeature bore)
    {
        FeatureVolume volume = bore.Volume;
        Rod rod = _materials.Rod;
        return new(
            volume.From.X, volume.From.Y, volume.To.X, volume.To.Y, 0, volume.Diameter - _design.Print.BoreAllowanceMm * 1e-3,
            rod.Modulus.Value, rod.ShearModulus.Value, rod.Density.Value);
    }

    private PlateVoid VoidOf(PlacedFeature feature)
    {
        FeatureVolume volume = feature.Volume;
        Point3 middle = volume.Middle;
        (double fromX, double toX) = Along(new(1, 0, 0));
        (double fromY, double toY) = Along(new(0, 1, 0));
        (double fromZ, double toZ) = Along(new(0, 0, 1));
        double mean = _blade.MidSurface(middle.X, middle.Y);
        return new(
            (fromX + toX) / 2, (fromY + toY) / 2, (toX - fromX) / 2, (toY - fromY) / 2, fromZ - mean, toZ + feature.OpenAfter - mean, volume.Diameter > 0);

        (double From, double To) Along(Point3 axis) => (-volume.Reach(-1 * axis), volume.Reach(axis));
    }
}
