using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.FromDesign;

/// <summary>The features of a fin as they are placed one after another, with what they are placed in.</summary>
internal sealed class FeaturePlan(FinDesign design, BladeShape blade, BasePlan plan, ICollection<Finding> findings)
{
    /// <summary>How far a tool starts outside the face that it opens, metres: coinciding faces make poor cuts.</summary>
    public const double ToolOverrun = 8e-3;

    /// <summary>Room beyond a nut for the end of its bolt, metres: a bolt that does not pass right through strips the nut (common practice, no source).</summary>
    public const double EndRoom = 5e-3;

    private readonly List<PlacedFeature> _features = [];
    private readonly List<HardwareItem> _hardware = [];
    private IReadOnlyList<SurfacePatch>? _skin, _baseFaces;

    public FinDesign Design => design;

    public BladeShape Blade => blade;

    public BasePlan Base => plan;

    public double BoreAllowance => design.Print.BoreAllowanceMm * 1e-3;

    public double PocketAllowance => design.Print.PocketAllowanceMm * 1e-3;

    public double Line => design.Print.LineWidthMm * 1e-3;

    public bool AsOne => design.Base.Printed == BasePrinting.AsOne;

    public IReadOnlyList<PlacedFeature> Features => _features;

    public IReadOnlyList<HardwareItem> Hardware => _hardware;

    public StripSlot? Slot { get; set; }

    /// <summary>Starboard side, port side, trailing edge, tip.</summary>
    public IReadOnlyList<SurfacePatch> Skin => _skin ??= SurfacePatch.OfBlade(blade);

    /// <summary>Starboard side, port side, front, rear, top edge.</summary>
    public IReadOnlyList<SurfacePatch> BaseFaces => _baseFaces ??= SurfacePatch.OfBase(plan);

    public void Add(PlacedFeature feature) => _features.Add(feature);

    /// <summary>Adds the pocket of a nut, and the way in through which the nut sinks into it at the pause: a pocket that lies or leans gets narrower above its middle.</summary>
    public void AddNutPocket(PlacedFeature pocket)
    {
        Add(pocket with { NeedsPause = true });
        // A layer more than the nut is high, because layers need not begin where the pocket does.
        Add(pocket with { Name = $"{pocket.Name}, way in", Kind = FeatureKind.NutWayIn, Volume = pocket.Volume.WayIn(PrintUp(pocket.Volume.Middle.Y < 0), design.Print.LayerMm * 1e-3) });
    }

    /// <summary>Which way is up while a part is printed, design axes. A blade that stands where it fits is taken to stand.</summary>
    private Point3 PrintUp(bool inBase)
    {
        bool ofBase = inBase && !AsOne;
        if ((ofBase ? design.Parts.BaseAttitude : design.Parts.BladeAttitude) == PrintAttitude.Lying)
            return ofBase ? -1 * Parts.BaseFaces.Starboard(plan) : new(0, 0, -1);
        return ofBase ? new(0, -1, 0) : AsOne ? -1 * Parts.BaseFaces.Top(plan) : new(0, 1, 0);
    }

    public void Add(HardwareItem item) => _hardware.Add(item);

    /// <summary>Adds a cavity with its room and recess as features.</summary>
    public void Add(LidCavity cavity, string name, string path)
    {
        Add(new PlacedFeature
        {
            Name = name,
            Kind = FeatureKind.CavityRoom,
            Path = path,
            Owner = path,
            Volume = cavity.Room,
            OpenAfter = cavity.ToolOverrun,
        });
        if (cavity.Recess is { } recess)
            Add(new PlacedFeature
            {
                Name = $"{name}: lid",
                Kind = FeatureKind.LidRecess,
                Path = path,
                Owner = path,
                Volume = recess,
                OpenAfter = cavity.ToolOverrun,
            });
    }

    public void Report(string code, Severity severity, string path, string message, string remedy, string? value = null, string? limit = null) =>
        findings.Add(new(code, severity, path, message, remedy) { Value = value, Limit = limit });

    /// <summary>Cutting tools for one solid.</summary>
    public IEnumerable<SolidExpression> Tools(bool inBlade, bool inBase)
    {
        foreach (PlacedFeature feature in _features)
            if (inBlade && feature.IsInBlade || inBase && feature.IsInBase)
                yield return feature.Tool();
        if (inBlade && Slot is { } slot)
            yield return new MeshSolid(slot.Tool());
    }
}
