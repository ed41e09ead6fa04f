using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Whole fins from design files: rounded tips, closed outlines, twist, camber, flange.</summary>
public sealed class FinSolidsOfRealBladesTests
{
    private static readonly Shape Delta = new()
    {
        Outline = new() { Family = OutlineFamily.WideDelta, SpanMm = 240, RootChordMm = 230 },
        Sections = [new() { AtPercent = 0, ThicknessPercent = 8.5 }, new() { AtPercent = 100, ThicknessPercent = 8 }],
        TrailingEdgeMm = 1.6,
    };

    public static TheoryData<string, FinDesign> Fins => new()
    {
        {
            "delta with clamp rods and strip",
            new()
            {
                Name = "delta",
                Shape = Delta with { Strip = new() { FromPercent = 10, ToPercent = 80 }, Flange = new() },
                Base = new() { Fixing = Fixing.ClampRods },
                Hardware = new() { ClampRods = [new() { FromFrontMm = 55 }, new() { FromFrontMm = 90 }], CarbonRods = [new() { RootChordPercent = 60, DiameterMm = 3 }] },
            }
        },
        {
            "upright with carbon rods and a long slot tab",
            new()
            {
                Name = "upright",
                Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 260, RootChordMm = 105 } },
                Base = new() { Box = BoxKind.LongSlot, Fixing = Fixing.BaseOnly },
                Hardware = new() { CarbonRods = [new() { RootChordPercent = 25 }, new() { RootChordPercent = 45 }] },
            }
        },
        {
            "twisted and cambered delta with a strip and a tracker",
            new()
            {
                Name = "twisted",
                Shape = Delta with
                {
                    Sections =
                    [
                        new() { AtPercent = 0, Section = "naca-2412", ThicknessPercent = 9 },
                        new() { AtPercent = 100, Section = "naca-2412", ThicknessPercent = 9, TwistDegrees = -5 },
                    ],
                    Strip = new() { FromPercent = 10, ToPercent = 75 },
                },
                Base = new() { Fixing = Fixing.BaseOnly, Box = BoxKind.TwoBoltDeep },
                Hardware = new()
                {
                    CarbonRods = [new() { RootChordPercent = 65, DiameterMm = 2, IntoBaseMm = 10 }],
                    Cavities = [new() { AtDepthMm = 60, AtChordPercent = 35, LengthMm = 25, RoomMm = 5 }],
                },
            }
        },
    };

    [Theory]
    [MemberData(nameof(Fins))]
    public void Build_gives_one_sound_piece_of_blade_and_one_of_base(string name, FinDesign design)
    {
        List<Finding> findings = [];
        Blade blade = BladeFromDesign.Create(design, findings)!;
        Assert.Empty(findings);
        FinSolids? fin = FinSolids.Build(design, blade, BladeLoft.Build(blade, BladeFromDesign.Loft(design.Shape)).Mesh, findings);
        Assert.True(fin is not null, name + string.Join('\n', findings));
        using ManifoldKernel kernel = new();
        foreach (SolidResult result in kernel.Evaluate([fin.Blade, fin.Base!], TestContext.Current.CancellationToken))
        {
            Assert.Equal(1, result.PieceCount);
            Assert.Equal(0, result.SealedVoidCount);
        }
    }

    [Fact]
    public void Bolts_of_a_deep_base_of_any_depth_start_on_its_top_edge()
    {
        for (double depth = 60; depth <= 80; depth += 0.37)
        {
            FinDesign design = new() { Name = "deep", Shape = Delta, Base = new() { Box = BoxKind.TwoBoltDeep, DeepFrontMm = depth, Fixing = Fixing.BaseOnly } };
            List<Finding> findings = [];
            Blade blade = BladeFromDesign.Create(design, findings)!;
            FinSolids.Build(design, blade, new([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1], [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]), findings);
            Assert.Empty(findings);
        }
    }
}
