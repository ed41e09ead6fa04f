using CsCheck;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Geometry.Tests.FromDesign;

public sealed class BladeFromDesignTests
{
    private static readonly string[] Names = ["naca-0010", "naca-2412", "naca-0010-35", "naca-16-009"];

    private static readonly Gen<SectionStation> Stations = Gen.Select(
        Gen.Double[0, 100], Gen.Int[0, 3].Select(i => Names[i]), Gen.Double[2, 25], Gen.Double[-8, 8], Gen.Double[-20, 20], Gen.Int[0, 3],
        (at, name, thickness, camber, twist, what) => new SectionStation
        {
            AtPercent = at,
            Section = name,
            ThicknessPercent = thickness,
            CamberPercent = (what & 1) == 0 ? null : camber,
            TwistDegrees = (what & 2) == 0 ? 0 : twist,
        });

    private static readonly Gen<DesignOutline> FamilyOutlines = Gen.Select(
        Gen.Int[0, 3].Select(i => (OutlineFamily)i),
        Gen.Double[40, 800], Gen.Double[20, 400], Gen.Double[15, 1500], Gen.Double[-30, 70], Gen.Double[5, 120], Gen.Int[0, 7],
        (family, span, root, area, rake, tip, what) => new DesignOutline
        {
            Family = family,
            SpanMm = span,
            RootChordMm = (what & 1) == 0 ? root : null,
            AreaCm2 = (what & 1) == 0 ? null : area,
            RakeDegrees = (what & 2) == 0 ? rake : null,
            TipChordPercent = (what & 4) == 0 ? tip : null,
        });

    private static readonly Gen<DesignOutline> FreeOutlines = Gen.Select(Edge(-100, 200), Edge(0, 400), (leading, trailing) => new DesignOutline
    {
        Family = OutlineFamily.Free,
        LeadingEdge = leading,
        TrailingEdge = [.. trailing[..^1], trailing[^1] with { DepthMm = leading[^1].DepthMm }],
    });

    private static readonly Gen<Shape> Shapes = Gen.Select(
        Gen.Frequency((4, FamilyOutlines), (1, FreeOutlines)), Stations.List[1, 5], Gen.Double[0, 4], Gen.Double[0.2, 30], Gen.Int[0, 15],
        Gen.Select(Gen.Double[1, 30], Gen.Double[0.8, 12], Gen.Double[0, 30]), Gen.Frequency((19, Gen.Double[0.15, 0.2]), (1, Gen.Double[0.02, 0.15])),
        (outline, stations, edge, rounding, what, flange, tolerance) => new Shape
        {
            Outline = outline,
            Sections = [.. stations.OrderBy(s => s.AtPercent)],
            TrailingEdgeMm = (what & 8) == 0 ? edge : 0,
            Tip = (what & 1) == 0 ? TipStyle.Rounded : TipStyle.Flat,
            TipRoundingMm = (what & 2) == 0 ? null : rounding,
            Flange = (what & 4) == 0 ? null : new() { OverhangMm = flange.Item1, ThicknessMm = flange.Item2, FilletMm = Math.Min(flange.Item3, flange.Item1) },
            SkinToleranceMm = tolerance,
        });

    [Fact]
    public void Create_answers_any_design_in_range_with_findings_or_a_sound_blade()
    {
        // Most are lofted coarsely, so that thousands can be tried.
        const int designs = 3000;
        int lofted = 0;
        Shapes.Hold(shape =>
        {
            List<Finding> findings = [];
            FinDesign design = new() { Name = "any", Shape = shape };
            Blade? blade = BladeFromDesign.Create(design, findings);
            Assert.Equal(blade is null, findings.Exists(f => f.IsError));
            if (blade is null)
                return;
            TriangleMesh mesh = BladeFromDesign.Skin(shape, blade, findings);
            Assert.Empty(MeshChecks.Defects(mesh, 1));
            Assert.Empty(MeshChecks.SinglePrecisionDefects(mesh, 1));
            Assert.True(mesh.Volume() > 0);
            Interlocked.Increment(ref lofted);
        }, iter: designs, print: Print);
        Assert.True(lofted >= designs / 3, $"only {lofted} of {designs} designs gave a blade");
    }

    /// <summary>Found by random designs: beside the nose both sides drew their diagonal to one point of the thin tip.</summary>
    [Fact]
    public void Skin_closes_at_a_nose_that_runs_into_a_long_rounded_tip()
    {
        Shape shape = Upright().Shape with
        {
            Outline = new()
            {
                Family = OutlineFamily.Free,
                LeadingEdge = Line((0, -3.5789473684210527), (4.588E-89, 9.068E-38), (3.313E-33, -7), (54.47457627118644, 34.13319484808137), (120.31271854780661, -2.72E-05)),
                TrailingEdge = Line((0, 38.65277777777778), (0, 4.448E-53), (6.004E-53, 1.0119999999999998E-74), (2.067415730337079, 188.26387756274414), (120.31271854780661, 3.588235294117647)),
            },
            Sections = [new() { AtPercent = 0, Section = "naca-0010", ThicknessPercent = 10, CamberPercent = -0.3125 }],
            TipRoundingMm = 21.540502815329535,
            TrailingEdgeMm = 2.6472740185121264,
            Flange = new() { OverhangMm = 2, ThicknessMm = 3, FilletMm = 0.0967741935483871 },
            SkinToleranceMm = 0.15941341934480044,
        };
        List<Finding> findings = [];
        Blade? blade = BladeFromDesign.Create(Upright() with { Shape = shape }, findings);
        Assert.NotNull(blade);
        TriangleMesh mesh = BladeFromDesign.Skin(shape, blade, findings);
        Assert.Empty(MeshChecks.Defects(mesh));
        Assert.Empty(MeshChecks.SinglePrecisionDefects(mesh));
    }

    [Fact]
    public void Create_finds_a_flange_wider_than_the_radius_of_a_hollow()
    {
        // A hollow exp(-((x - 0.6) / w)²) of depth h has the radius w² / 2h at its foot: 0.04² / 0.04 = 0.04 of the chord of 105 mm, 4.2 mm;
        // the curve of the section without it takes a little away, and interpolation between the points adds its own.
        string points = string.Join('\n', Enumerable.Range(0, 401).Select(i =>
        {
            double u = i / 400.0, x = (1 + Math.Cos(2 * Math.PI * u)) / 2;
            double half = 0.14 * Math.Sqrt(x) * (1 - x) + 0.005 * x - 0.02 * Math.Exp(-Math.Pow((x - 0.6) / 0.04, 2));
            return FormattableString.Invariant($"{x:0.0000000} {(u <= 0.5 ? half : -half):0.0000000}");
        }));
        List<Finding> Flanged(double overhang)
        {
            Shape shape = Upright().Shape with
            {
                Sections = [new() { AtPercent = 0, Section = "hollow" }],
                ImportedSections = [new() { Name = "hollow", File = "hollow.dat" }],
                Flange = new() { OverhangMm = overhang, ThicknessMm = 3, FilletMm = 1 },
            };
            List<Finding> findings = [];
            BladeFromDesign.Create(Upright() with { Shape = shape }, findings, _ => new StringReader(points));
            return findings;
        }

        Finding finding = Assert.Single(Flanged(8), f => f.IsError);
        Assert.Equal(("flange-folds", "$.shape.flange.overhang_mm"), (finding.Code, finding.Path));
        Assert.DoesNotContain(Flanged(2.5), f => f.IsError);
    }

    [Fact]
    public void Skin_tells_when_it_is_coarser_than_asked()
    {
        Shape shape = Upright().Shape with
        {
            Outline = new() { Family = OutlineFamily.Upright, SpanMm = 800, RootChordMm = 400 },
            Sections = [new() { AtPercent = 0, ThicknessPercent = 15, TwistDegrees = 15 }, new() { AtPercent = 100, ThicknessPercent = 10, CamberPercent = 6, TwistDegrees = -15 }],
            SkinToleranceMm = 0.0005,
        };
        List<Finding> findings = [];
        Blade blade = BladeFromDesign.Create(Upright() with { Shape = shape }, findings)!;
        findings.Clear();
        BladeFromDesign.Skin(shape, blade, findings);
        Finding finding = Assert.Single(findings);
        Assert.Equal(("skin-coarser-than-asked", Severity.Caution, "$.shape.skin_tolerance_mm", "0.0005 mm"), (finding.Code, finding.Severity, finding.Path, finding.Limit));

        findings.Clear();
        BladeFromDesign.Skin(shape with { SkinToleranceMm = 0.02 }, blade, findings);
        Assert.Empty(findings);
    }

    [Fact]
    public void Create_maps_millimetres_and_degrees()
    {
        List<Finding> findings = [];
        Blade blade = BladeFromDesign.Create(Upright() with
        {
            Shape = Upright().Shape with { Sections = [new() { AtPercent = 0, ThicknessPercent = 10, TwistDegrees = 2 }, new() { AtPercent = 100, ThicknessPercent = 9 }] },
        }, findings)!;
        Assert.Empty(findings);
        Assert.Equal(0.4, blade.Span, 12);
        Assert.Equal(0.105, blade.Outline.Chord(0), 12);
        Assert.Equal(2 * Math.PI / 180, blade.Twist(0), 12);
        Assert.Equal(0.095, blade.ThicknessRatio(0.2), 12);
        Assert.Equal(0.001, blade.TrailingEdgeThickness, 15);
    }

    [Fact]
    public void Create_finds_edges_that_cross()
    {
        Finding finding = Assert.Single(Found(new DesignOutline
        {
            Family = OutlineFamily.Free,
            LeadingEdge = Line((0, 0), (100, 0), (200, 0), (300, 20)),
            TrailingEdge = Line((0, 100), (100, 100), (200, -90), (300, 60)),
        }), f => f.IsError);
        Assert.Equal("edges-cross", finding.Code);
        Assert.Equal("$.shape.outline.trailing_edge", finding.Path);
    }

    [Fact]
    public void Create_finds_an_area_that_does_not_fit_the_span()
    {
        Finding finding = Assert.Single(Found(new DesignOutline { Family = OutlineFamily.Upright, SpanMm = 100, AreaCm2 = 1500 }), f => f.IsError);
        Assert.Equal(("area-does-not-fit-span", "$.shape.outline.area_cm2"), (finding.Code, finding.Path));
    }

    [Fact]
    public void Create_finds_a_section_too_thin_to_print()
    {
        List<Finding> findings = [];
        FinDesign design = Upright();
        BladeFromDesign.Create(design with { Shape = design.Shape with { Sections = [new() { AtPercent = 0, ThicknessPercent = 10 }, new() { AtPercent = 100, ThicknessPercent = 2 }] }, Print = new() { LineWidthMm = 1.2 } }, findings);
        Assert.Contains(findings, f => f.Code == "section-thin");
    }

    [Fact]
    public void Create_reads_imported_sections_and_tells_the_line_of_a_fault()
    {
        FinDesign design = Upright();
        Shape shape = design.Shape with
        {
            Sections = [new() { AtPercent = 0, Section = "mine" }],
            ImportedSections = [new() { Name = "mine", File = "mine.dat" }],
        };
        List<Finding> findings = [];
        Assert.Null(BladeFromDesign.Create(design with { Shape = shape }, findings));
        Assert.Equal("section-file-missing", Assert.Single(findings).Code);

        findings.Clear();
        Assert.Null(BladeFromDesign.Create(design with { Shape = shape }, findings, _ => new StringReader("mine\n1 0\n0.5 NaN\n0 0\n")));
        Assert.Contains(findings, f => f.IsError && f.Path == "$.shape.imported_sections[0].file");

        findings.Clear();
        string points = string.Join('\n', Enumerable.Range(0, 81).Select(i =>
        {
            Point2 p = Finwright.Geometry.Sections.SectionGeometry.PointAt(new Finwright.Geometry.Sections.FourDigitSection(0, 0, 12), i / 80.0);
            return FormattableString.Invariant($"{p.X:0.000000} {p.Y:0.000000}");
        }));
        Blade? blade = BladeFromDesign.Create(design with { Shape = shape }, findings, _ => new StringReader(points));
        Assert.NotNull(blade);
        Assert.Equal(0.12, blade.ThicknessRatio(0), 1e-4);
        Assert.Empty(MeshChecks.Defects(BladeLoft.Build(blade).Mesh));
    }

    private static FinDesign Upright() => new()
    {
        Name = "upright",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 400, RootChordMm = 105 } },
    };

    private static List<Finding> Found(DesignOutline outline)
    {
        List<Finding> findings = [];
        BladeFromDesign.Create(new() { Name = "test", Shape = new() { Outline = outline } }, findings);
        return findings;
    }

    private static OutlinePoint[] Line(params (double Depth, double Aft)[] points) => [.. points.Select(p => new OutlinePoint { DepthMm = p.Depth, AftMm = p.Aft })];

    private static Gen<OutlinePoint[]> Edge(double from, double to) => Gen.Select(Gen.Double[0, 300].Array[3, 9], Gen.Double[from, to].Array[10], (depths, aft) =>
    {
        double[] rising = [0, .. depths.Order()];
        return rising.Select((d, i) => new OutlinePoint { DepthMm = d, AftMm = aft[i] }).ToArray();
    });

    private static string Print(Shape shape) => System.Text.Json.JsonSerializer.Serialize(shape);
}
