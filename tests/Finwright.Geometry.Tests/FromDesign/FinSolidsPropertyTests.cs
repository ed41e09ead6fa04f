using CsCheck;
using Finwright.Design;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;
using Finwright.Geometry.Tests.Features;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Random hardware in random blades: findings, or sound solids; never an exception or a number that is none.</summary>
public sealed class FinSolidsPropertyTests
{
    private static readonly Gen<TaperedBlade> Blades =
        from span in Gen.Double[0.06, 0.6]
        from root in Gen.Double[0.06, 0.3]
        from taper in Gen.Double[0.15, 1.1]
        from rake in Gen.Double[-0.3, 1.0]
        from thickness in Gen.Double[0.04, 0.2]
        from trailing in Gen.Double[0, 3e-3]
        from twist in Gen.Frequency((3, Gen.Const(0.0)), (1, Gen.Double[-0.15, 0.15]))
        select new TaperedBlade(span, root, taper * root, rake, thickness, trailing, twist);

    private static readonly Gen<Base> Bases =
        from box in Gen.Enum<BoxKind>()
        from fixing in Gen.Enum<Fixing>()
        from printed in Gen.Enum<BasePrinting>()
        from allowances in Gen.Double[-1, 1].Array[4]
        from nutDepth in Gen.Double[6, 45]
        from measured in Gen.Double[0, 1].Array[8]
        select new Base
        {
            Box = box,
            Fixing = box == BoxKind.LongSlot && fixing == Fixing.ThroughBolts ? Fixing.BaseOnly : fixing,
            Printed = printed,
            LengthAllowanceMm = 3 * allowances[0],
            ThicknessAllowanceMm = 2 * allowances[1],
            DepthAllowanceMm = 20 * allowances[2],
            BladeOffsetMm = 40 * allowances[3],
            NutDepthMm = nutDepth,
            Measured = new MeasuredBox
            {
                HullLengthMm = 40 + 220 * measured[0],
                DeepLengthMm = measured[1] < 0.7 ? 40 + 200 * measured[1] : null,
                HullWidthMm = 6 + 20 * measured[2],
                DeepWidthMm = measured[3] < 0.5 ? 5 + 20 * measured[3] : null,
                FrontDepthMm = 10 + 70 * measured[4],
                RearDepthMm = 10 + 70 * measured[5],
                FrontAngleDegrees = measured[1] < 0.7 ? null : 20 * measured[6],
                RearAngleDegrees = measured[1] < 0.7 ? null : 20 * measured[7],
                Bolts = [new() { FromFrontMm = 5 + 120 * measured[6], LeanDegrees = 20 * measured[7] - 10 }],
            },
        };

    private static readonly Gen<Hardware> Hardwares =
        from nut in Gen.Enum<NutKind>()
        from depth in Gen.Double[6, 120]
        from rods in (from f in Gen.Double[5, 200]
                      from d in Gen.Double[6, 100]
                      from lean in Gen.Double[-30, 45]
                      from t in Gen.Enum<Finwright.Design.Thread>()
                      select new ClampRod { FromFrontMm = f, BladeDepthMm = d, LeanDegrees = lean, Thread = t }).Array[1, 2]
        from carbon in (from d in Gen.Double[1, 8]
                        from root in Gen.Double[2, 95]
                        from tip in Gen.Double[2, 95]
                        from depthOf in Gen.Double[10, 600]
                        from given in Gen.Int[0, 3]
                        from intoBase in Gen.Double[0, 60]
                        select new CarbonRod { DiameterMm = d, RootChordPercent = root, TipChordPercent = given > 1 ? tip : null, ToDepthMm = given == 1 ? depthOf : null, IntoBaseMm = given > 0 ? intoBase : 0 }).Array[0, 3]
        from cavities in (from y in Gen.Double[0, 300]
                          from p in Gen.Double[2, 98]
                          from l in Gen.Double[2, 40]
                          from r in Gen.Double[0.5, 8]
                          from ledge in Gen.Double[0, 4]
                          from kind in Gen.Enum<CavityKind>()
                          from side in Gen.Enum<Side>()
                          select new Cavity { AtDepthMm = y, AtChordPercent = p, LengthMm = l, RoomMm = r, LedgeMm = ledge < 1 ? 0 : ledge, Kind = kind, Side = side }).Array[0, 2]
        select new Hardware { BoxBolts = new() { Nut = nut, BladeDepthMm = depth }, ClampRods = rods, CarbonRods = carbon, Cavities = cavities };

    private static readonly Gen<(TaperedBlade Blade, FinDesign Design)> Fins =
        from blade in Blades
        from @base in Bases
        from hardware in Hardwares
        from strip in Gen.Frequency((2, Gen.Const((Strip?)null)), (1, Gen.Double[4, 15].Select(d => (Strip?)new Strip { SlotDepthMm = d })))
        select (blade, TestDesigns.Design with { Base = @base, Hardware = hardware, Shape = TestDesigns.Design.Shape with { Strip = strip } });

    // Tamer, so that many have no errors: thick broad blades, one kind of trouble at a time.
    private static readonly Gen<(TaperedBlade Blade, FinDesign Design)> LikelyFins =
        from root in Gen.Double[0.2, 0.28]
        from rake in Gen.Double[0.1, 0.5]
        from twist in Gen.Frequency((3, Gen.Const(0.0)), (1, Gen.Double[-0.05, 0.05]))
        from fixing in Gen.Enum<Fixing>()
        from printed in Gen.Enum<BasePrinting>()
        from box in Gen.OneOf(Gen.Const(BoxKind.TwoBoltTapered), Gen.Const(BoxKind.TwoBoltDeep))
        from nut in Gen.Enum<NutKind>()
        from depth in Gen.Double[20, 50]
        from rod in Gen.Double[60, 90]
        from carbon in Gen.Double[66, 75]
        from cavity in Gen.Double[70, 110]
        from has in Gen.Bool.Array[3]
        select (
            new TaperedBlade(0.25, root, 0.5 * root, rake, 0.1, 1.6e-3, twist),
            TestDesigns.Design with
            {
                Base = new() { Box = box, Fixing = fixing, Printed = printed },
                Hardware = new()
                {
                    BoxBolts = new() { Nut = nut, BladeDepthMm = depth },
                    ClampRods = [new() { FromFrontMm = rod, BladeDepthMm = depth }],
                    CarbonRods = has[0] && printed == BasePrinting.Separate ? [new() { RootChordPercent = carbon, DiameterMm = 3, IntoBaseMm = 0 }] : [],
                    Cavities = has[1] ? [new() { AtDepthMm = cavity, AtChordPercent = 40, LengthMm = 24, RoomMm = 4 }] : [],
                },
                Shape = TestDesigns.Design.Shape with { Strip = has[2] ? new() : null },
            });

    [Fact]
    public void Build_of_any_design_gives_findings_or_features_that_lie_inside_and_apart()
    {
        int made = 0;
        Gen.OneOf(Fins, LikelyFins).Hold(
            fin =>
            {
                List<Finding> findings = [];
                FinSolids? solids = FinSolids.Build(fin.Design, fin.Blade, Tetrahedron, findings);
                Assert.Equal(findings.Exists(f => f.IsError), solids is null);
                foreach (Finding finding in findings)
                {
                    Assert.True(DesignPath.Exists(fin.Design, finding.Path), finding.Path);
                    Assert.DoesNotContain("NaN", finding.Message, StringComparison.Ordinal);
                    Assert.DoesNotContain("∞", finding.Message, StringComparison.Ordinal);
                }

                if (solids is null)
                    return;
                Interlocked.Increment(ref made);
                foreach (PlacedFeature feature in solids.Features)
                    AssertInside(fin.Blade, solids, feature);
            },
            iter: 2000);
        Assert.True(made > 100, $"Only {made} designs had no error.");
    }

    [Fact]
    public void Solids_of_any_design_without_errors_are_one_closed_piece_each_without_sealed_voids()
    {
        using ManifoldKernel kernel = new();
        int made = 0;
        LikelyFins.Hold(
            fin =>
            {
                List<Finding> findings = [];
                FinSolids? solids = FinSolids.Build(fin.Design, fin.Blade, fin.Blade.Mesh(24, 80), findings);
                if (solids is null)
                    return;
                made++;
                foreach (SolidResult result in kernel.Evaluate(solids.Base is null ? [solids.Blade] : [solids.Blade, solids.Base]))
                {
                    Assert.Equal(1, result.PieceCount);
                    Assert.Equal(0, result.SealedVoidCount);
                    Assert.Equal(result.Volume, result.Mesh.Volume(), 1e-6 * result.Volume);
                }
            },
            iter: 200,
            threads: 1);
        Assert.True(made > 50, $"Only {made} designs had no error.");
    }

    // Any closed mesh will do where no solid is built.
    private static TriangleMesh Tetrahedron { get; } = new([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1], [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]);

    // Points of the feature, drawn by projecting a cloud onto it, lie in the blade or the base unless it opens there.
    private static void AssertInside(TaperedBlade blade, FinSolids solids, PlacedFeature feature)
    {
        Point3 axis = feature.Volume.To - feature.Volume.From;
        for (int i = 0; i <= 20; i++)
            for (int k = 0; k < 8; k++)
            {
                Point3 onAxis = feature.Volume.From + i / 20.0 * axis;
                Point3 away = new(Math.Cos(k * Math.PI / 4), 0.1, Math.Sin(k * Math.PI / 4));
                Point3 p = feature.Volume.Nearest(onAxis + away);
                p = onAxis + (1 - 1e-6) * (p - onAxis);
                bool inBlade = p.Y >= 0 && Clearance.IsInside(blade, p);
                bool inBase = p.Y <= 0 && solids.Plan.Holds(p) && Math.Abs(p.Z) <= solids.Plan.Width(p.Y) / 2 + 1e-9;
                bool atOpening = feature.Kind is FeatureKind.CavityRoom or FeatureKind.LidRecess
                    || feature.OpensAtTop && (p - feature.Volume.From).Length < 12e-3
                    || Math.Abs(p.Y) < 6e-3;
                Assert.True(inBlade || inBase || atOpening, $"{feature.Name} at {p}");
            }
    }
}
