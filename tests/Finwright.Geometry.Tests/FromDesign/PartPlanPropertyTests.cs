using CsCheck;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.FromDesign;

public sealed class PartPlanPropertyTests(PartFixture fixture) : IClassFixture<PartFixture>
{
    private static readonly Gen<Design.Parts> Cutting =
        from number in Gen.Char["ABKMQSXYZ0189-. é"].Array[0, 12]
        from cuts in Gen.Select(Gen.Double[5, 330], Gen.Double[-60, 60], (depth, slope) => new Cut { AtDepthMm = depth, SlopeDegrees = slope }).Array[0, 2]
        from propose in Gen.Bool
        from gap in Gen.Double[0, 1]
        from dowel in Gen.Double[1, 10]
        from length in Gen.Double[6, 150]
        from perCut in Gen.Int[0, 6]
        from attitude in Gen.Enum<PrintAttitude>()
        from engraving in Gen.Double[0.2, 1.5]
        select new Design.Parts
        {
            Number = new(number),
            Cuts = cuts,
            ProposeCuts = propose,
            BondGapMm = gap,
            DowelMm = dowel,
            DowelLengthMm = length,
            DowelsPerCut = perCut,
            BladeAttitude = attitude,
            BaseAttitude = attitude,
            EngravingMm = engraving,
        };

    private static readonly Gen<Print> Printers =
        from bed in Gen.Select(Gen.Double[80, 420], Gen.Double[80, 420], Gen.Double[80, 420])
        from edge in Gen.Double[0, 40]
        from line in Gen.Double[0.15, 1.5]
        from walls in Gen.Int[1, 12]
        select new Print { BedXMm = bed.Item1, BedYMm = bed.Item2, BedZMm = bed.Item3, EdgeMarginMm = edge, LineWidthMm = line, Walls = walls };

    private static readonly Gen<Pour> Pours =
        from diameter in Gen.Double[1, 12]
        from depth in Gen.Double[0.2, 6]
        from side in Gen.Enum<Side>()
        select new Pour { Ports = new() { DiameterMm = diameter, DepthMm = depth, Side = side } };

    [Fact]
    public void Build_any_wish_within_range_gives_findings_or_sound_parts_within_the_bed() =>
        Gen.Select(Cutting, Printers, Pours, Gen.Double[1.2, 8]).Hold(
            wish =>
            {
                FinDesign design = PartFixture.Design with { Parts = wish.Item1, Print = wish.Item2, Pour = wish.Item3, Base = new() { GaugeThicknessMm = wish.Item4 } };
                List<Finding> findings = [];
                PartPlan? plan = PartPlan.Build(design, PartFixture.Blade, PartFixture.Solids(), fixture.Kernel, findings, null, TestContext.Current.CancellationToken);
                Assert.All(findings, f => Assert.False(f.Message.Contains("NaN", StringComparison.Ordinal) || f.Remedy.Length == 0));
                if (plan is null)
                {
                    Assert.Contains(findings, f => f.IsError);
                    return;
                }

                Assert.All(plan.Parts, p => Assert.True(p.Volume > 0 && MeshChecks.IsClosed(p.Mesh), p.Name));
                if (!findings.Exists(f => f.Code is "part-in-pieces" or "part-sealed-void"))
                    Assert.All(plan.Parts, p => Assert.True(p.PieceCount == 1 && p.SealedVoidCount == 0, p.Name));
                Assert.Equal(plan.Parts.Count(p => p.Laid.Fits), plan.Plates.Sum(p => p.Parts.Count));
                Assert.Equal(plan.Parts.Count(p => !p.Laid.Fits), findings.Count(f => f.Code == "part-too-large"));
                double edge = wish.Item2.EdgeMarginMm * 1e-3;
                foreach (PlatedPart part in plan.Plates.SelectMany(p => p.Parts))
                {
                    Bounds box = part.Part.Mesh.Placed(part.Placement).Bounds();
                    Assert.True(box.Minimum.X >= edge - 1e-8 && box.Maximum.X <= wish.Item2.BedXMm * 1e-3 - edge + 1e-8);
                    Assert.True(box.Minimum.Y >= edge - 1e-8 && box.Maximum.Y <= wish.Item2.BedYMm * 1e-3 - edge + 1e-8);
                    Assert.True(box.Maximum.Z <= wish.Item2.BedZMm * 1e-3 + 1e-8);
                }
            },
            iter: 30,
            threads: 1);
}
