using Finwright.Assessment.Loaded;
using Finwright.Assessment.Tests.Afloat;
using Finwright.Design;
using Finwright.Geometry.Blades;

namespace Finwright.Assessment.Tests.Packing;

/// <summary>One fin sailed with sections in closed form and loaded, worked out once for all tests that look at it.</summary>
internal static class FinToDraw
{
    private static readonly Lazy<(Blade Blade, FinBuilt Built, FinLoaded Loaded, FinOnBench Bench, FinVibration Vibration)> Worked = new(() =>
    {
        // Wide and thick enough at its root for the bolts of the box.
        FinDesign design = SailedFin.Design with
        {
            Shape = new()
            {
                Outline = new() { Family = OutlineFamily.Upright, SpanMm = 340, RootChordMm = 186 },
                Sections = [new() { AtPercent = 0, ThicknessPercent = 12.8 }, new() { AtPercent = 100, ThicknessPercent = 8.5 }],
            },
            Hardware = new() { BoxBolts = new() { BladeDepthMm = 18 } },
        };
        Blade blade = SailedFin.Blade(design);
        FinBuilt built = FinBuilt.Of(design, blade);
        Assert.Null(built.Problem);
        return (blade, built, LoadedWork.Of(built, SailedFin.Sail(design), null, CancellationToken.None), FinOnBench.Of(design.Prove, blade, built), FinVibration.Of(design.Brief, blade, built));
    });

    public static Blade Blade => Worked.Value.Blade;

    public static FinLoaded Loaded => Worked.Value.Loaded;

    public static FinOnBench Bench => Worked.Value.Bench;

    public static FinVibration Vibration => Worked.Value.Vibration;
}
