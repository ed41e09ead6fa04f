using System.Runtime.CompilerServices;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Strength.FromDesign;

namespace Finwright.Strength.Tests.FromDesign;

/// <summary>The demo designs and their structures.</summary>
internal static class BuiltFin
{
    public static readonly string[] Demos = ["sandbar-delta", "fairway-upright", "eelgrass-rake"];

    /// <summary>Upright, without rods, cast into a block.</summary>
    public static FinDesign Plain { get; } = new()
    {
        Name = "plain",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 320, RootChordMm = 130, RakeDegrees = 10 }, Sections = [new() { AtPercent = 0, Section = "naca-0012" }, new() { AtPercent = 100, Section = "naca-0012" }] },
        Base = new() { RootHold = RootHold.Clamped, Fixing = Fixing.BaseOnly },
    };

    public static FinDesign Demo(string name) => DesignReader.ReadFile(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "examples", name + ".fin.json")).Design!;

    /// <summary>A demo without flange, and with a joint that bolts and rods alone hold.</summary>
    public static FinDesign Bare(string name)
    {
        FinDesign design = Demo(name);
        return design with { Materials = new(), Shape = design.Shape with { Flange = null } };
    }

    public static Blade Blade(FinDesign design)
    {
        List<Finding> findings = [];
        Blade? blade = BladeFromDesign.Create(design, findings);
        Assert.True(blade is not null, string.Join('\n', findings));
        return blade;
    }

    public static FinStructure Of(FinDesign design)
    {
        List<Finding> findings = [];
        FinStructure? structure = FinStructure.Of(design, Blade(design), findings);
        Assert.True(structure is not null, string.Join('\n', findings));
        return structure;
    }

    public static PlacedHardware Placed(FinDesign design)
    {
        List<Finding> findings = [];
        PlacedHardware? placed = FinSolids.Place(design, Blade(design), findings);
        Assert.True(placed is not null, string.Join('\n', findings));
        return placed;
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
