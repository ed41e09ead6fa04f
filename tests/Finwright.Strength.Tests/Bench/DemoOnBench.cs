using System.Runtime.CompilerServices;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Strength.FromDesign;

namespace Finwright.Strength.Tests.Bench;

/// <summary>The delta of the examples as a structure, clamped and on its joint; built once.</summary>
public sealed class DemoOnBench
{
    public FinStructure Clamped { get; } = Of(RootHold.Clamped);

    public FinStructure Jointed { get; } = Of(RootHold.Joint);

    private static FinStructure Of(RootHold hold)
    {
        FinDesign design = DesignReader.ReadFile(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "examples", "sandbar-delta.fin.json")).Design!;
        List<Finding> findings = [];
        Blade blade = BladeFromDesign.Create(design, findings)!;
        return FinStructure.Of(design with { Base = design.Base with { RootHold = hold } }, blade, findings)!;
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
