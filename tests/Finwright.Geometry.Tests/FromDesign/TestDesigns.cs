using Finwright.Design;
using Finwright.Geometry.Tests.Features;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>A broad blade with room for hardware, and a design round it. The blade's own fields do not matter here.</summary>
internal static class TestDesigns
{
    public static TaperedBlade Broad { get; } = new(0.25, 0.22, 0.09, 25 * Math.PI / 180, 0.09, trailingEdge: 1.6e-3);

    public static FinDesign Design { get; } = new()
    {
        Name = "test",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 250, RootChordMm = 220 } },
        Base = new() { Fixing = Fixing.BaseOnly },
    };
}
