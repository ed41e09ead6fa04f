using System.Xml.Linq;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Tests.Drawings;

namespace Finwright.Papers.Tests.Templates;

/// <summary>Templates as written, measured with an XML reader, against the design. Millimetres; files have four decimals.</summary>
public sealed class TemplateGeometryTests
{
    private const double Decimals = 2e-4;

    // Lines may stray 5 µm from the true edge.
    private const double Stray = 0.01;

    [Fact]
    public void The_planform_has_span_and_root_chord_of_the_design()
    {
        Template template = PouredFins.Named(PouredFins.Fairway, "planform");
        Point2[] blade = SvgReading.Points(SvgReading.Of(template.Drawing), "blade");
        double top = blade.Min(p => p.Y);
        // examples/fairway-upright.fin.json: span_mm 340, root_chord_mm 186.
        Assert.Equal(340, blade.Max(p => p.Y) - top, Decimals);
        Point2[] root = [.. blade.Where(p => p.Y < top + 1e-3)];
        Assert.Equal(186, root.Max(p => p.X) - root.Min(p => p.X), Stray);
        string[] words = Texts(template);
        Assert.Contains("chord 186.0", words, StringComparer.Ordinal);
        Assert.Contains("340.0", words, StringComparer.Ordinal);
    }

    [Fact]
    public void The_planform_has_the_area_of_the_design()
    {
        // examples/sandbar-delta.fin.json: area_cm2 286. A line within 5 µm of a round of less than a metre: far below 0.05 cm².
        Point2[] blade = SvgReading.Points(SvgReading.Of(PouredFins.Named(PouredFins.Sandbar, "planform").Drawing), "blade");
        Assert.Equal(28600, SvgReading.Area(blade), 5.0);
    }

    [Fact]
    public void The_flange_stands_out_as_far_as_the_design_says()
    {
        XElement svg = SvgReading.Of(PouredFins.Named(PouredFins.Fairway, "planform").Drawing);
        Point2[] flange = SvgReading.Points(svg, "flange"), blade = SvgReading.Points(svg, "blade");
        double hull = blade.Min(p => p.Y), leading = blade.Where(p => p.Y < hull + 1e-3).Min(p => p.X);
        // overhang_mm 9, laid square to the nose, which runs straight ahead; the skin is true to 0.02 mm.
        Assert.Equal(9, leading - flange.Where(p => p.Y < hull + 1e-3).Min(p => p.X), 0.05);
    }

    [Fact]
    public void A_line_of_each_depth_is_as_long_as_its_chord()
    {
        Template template = PouredFins.Named(PouredFins.Eelgrass, "planform");
        AssessmentResult fin = PouredFins.Eelgrass;
        Point2[][] lines = [.. SvgReading.Group(SvgReading.Of(template.Drawing), "stations").Elements().SelectMany(SvgReading.Lines)];
        Assert.Equal(4, lines.Length);
        Assert.All(lines.Index(), line => Assert.Equal(1e3 * fin.Blade!.Outline.Chord(0.05 * (line.Index + 1)), line.Item[1].X - line.Item[0].X, Decimals));
    }

    [Fact]
    public void Sections_have_the_chord_and_the_thickness_of_the_design()
    {
        foreach (AssessmentResult fin in (AssessmentResult[])[PouredFins.Fairway, PouredFins.Eelgrass])
        {
            double[] depths = [.. SectionsTemplate.Depths(TemplateFin.Of(fin))];
            Point2[][] rings = [.. SvgReading.Group(SvgReading.Of(PouredFins.Named(fin, "sections").Drawing), "sections").Elements().SelectMany(SvgReading.Lines)];
            Assert.Equal(depths.Length, rings.Length);
            foreach ((double depth, Point2[] ring) in depths.Zip(rings))
            {
                double chord = 1e3 * fin.Blade!.Outline.Chord(depth);
                DrawnBox box = DrawnBox.Round(ring);
                Assert.Equal(chord, box.Width, Stray);
                // Neither fin is twisted or cambered, and none of these depths is in the rounding of the tip.
                Assert.Equal(fin.Blade.ThicknessRatio(depth) * chord, box.Height, 2 * Stray);
            }

            // At half the span both demo designs say 12 % or 14.5 %, to be read between their stations.
            Assert.Contains(Texts(PouredFins.Named(fin, "sections")), text => text.Contains("50 %", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Words_of_a_section_are_what_its_outline_measures()
    {
        Template template = PouredFins.Named(PouredFins.Eelgrass, "sections");
        Point2[][] rings = [.. SvgReading.Group(SvgReading.Of(template.Drawing), "sections").Elements().SelectMany(SvgReading.Lines)];
        string[] labels = [.. Texts(template).Where(text => text.Contains("behind the leading edge", StringComparison.Ordinal))];
        Assert.Equal(rings.Length, labels.Length);
        foreach ((Point2[] ring, string label) in rings.Zip(labels))
        {
            DrawnBox box = DrawnBox.Round(ring);
            Assert.Contains($"chord {box.Width:0.0}, thickness {box.Height:0.0} at ", label, StringComparison.Ordinal);
            double behind = ring.Where(p => Math.Abs(p.Y - box.From.Y) < 1e-3).Average(p => p.X) - box.From.X;
            // Where the outline is level it does not tell its peak to better than a piece of it.
            Assert.Equal(behind, double.Parse(label.Split(" at ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1.5);
        }
    }

    [Fact]
    public void The_strip_is_as_wide_as_slot_and_overhang_and_as_long_as_the_edge()
    {
        StripSlot slot = PouredFins.Sandbar.Solids!.Slot!;
        XElement svg = SvgReading.Of(PouredFins.Named(PouredFins.Sandbar, "strip").Drawing);
        Point2[] ring = SvgReading.Points(svg, "strip"), edge = SvgReading.Points(svg, "printed-edge");
        double length = edge.Zip(edge.Skip(1)).Sum(pair => (pair.Second - pair.First).Length);
        Assert.Equal(1e3 * slot.EdgeLength, length, 0.05);
        // examples/sandbar-delta.fin.json: slot_depth_mm 6, overhang_mm 8. A band along a curve has its length times its width for area when
        // it is laid evenly to both sides; here it reaches 1 mm further out than in, which a curve of the outline changes by less than 2 %.
        Assert.Equal(length * 14, SvgReading.Area(ring), 0.02 * length * 14);
        // Across the upper end it measures just that.
        Assert.Equal(14, (ring[0] - ring[^1]).Length, 0.01);
    }

    [Fact]
    public void The_base_gauge_has_the_measures_of_the_box()
    {
        // examples/eelgrass-rake.fin.json, base.measured: 138 x 38 mm, 17 mm wide at the hull, 16 deep, 0.15 clearance.
        Template template = PouredFins.Named(PouredFins.Eelgrass, "base-gauge");
        XElement svg = SvgReading.Of(template.Drawing);
        (double length, double depth) = SvgReading.Extents(svg, "base");
        Assert.Equal(138 - 0.15, length, Decimals);
        BasePlan plan = PouredFins.Eelgrass.Solids!.Plan;
        Assert.InRange(depth, 1e3 * Math.Min(plan.FrontDepth, plan.RearDepth) - 0.1, 1e3 * plan.Depth);
        Point2[] across = SvgReading.Points(svg, "across");
        Assert.Equal(17 - 0.15, across.Max(p => p.X) - across.Min(p => p.X), Decimals);
        double top = across.Min(p => p.Y);
        Assert.Equal(16 - 0.15, across.Where(p => p.Y < top + 1e-3).Max(p => p.X) - across.Where(p => p.Y < top + 1e-3).Min(p => p.X), Decimals);
        Assert.Contains("38.0", Texts(template), StringComparer.Ordinal);
        Assert.Contains("36.0", Texts(template), StringComparer.Ordinal);
    }

    [Fact]
    public void Places_to_drill_lie_where_the_pour_has_its_ports()
    {
        foreach (AssessmentResult fin in (AssessmentResult[])[PouredFins.Fairway, PouredFins.Sandbar, PouredFins.Eelgrass])
        {
            XElement svg = SvgReading.Of(PouredFins.Named(fin, "drill-places").Drawing);
            (Point3 Mouth, double Diameter)[] ports = [.. fin.Poured!.Parts.SelectMany(part => part.Ports.Select(port => (part.InMesh(port.Port.Mouth), port.Port.Diameter)))];
            // Circles have many points; the lines of the crosses have two.
            DrawnBox[] circles = [.. SvgReading.Groups(svg).Where(g => ((string)g.Attribute("id")!).StartsWith("places", StringComparison.Ordinal)).SelectMany(g => g.Elements()).SelectMany(SvgReading.Lines).Where(line => line.Length > 8).Select(DrawnBox.Round)];
            bool starboard = SvgReading.Groups(svg).Any(g => (string)g.Attribute("id")! == "starboard");
            string side = starboard ? "starboard" : "port";
            Point2[] blade = SvgReading.Lines(SvgReading.Group(svg, side).Elements().First())[0];
            double hull = blade.Min(p => p.Y), root = starboard ? blade.Where(p => p.Y < hull + 1e-3).Max(p => p.X) : blade.Where(p => p.Y < hull + 1e-3).Min(p => p.X);
            double leading = fin.Blade!.Outline.LeadingEdge(0);
            Assert.Equal(ports.Length, circles.Length);
            foreach (((Point3 mouth, double diameter), DrawnBox circle) in ports.Zip(circles))
            {
                Point2 middle = 0.5 * (circle.From + circle.To);
                Assert.Equal(1e3 * (mouth.X - leading), starboard ? root - middle.X : middle.X - root, Stray);
                Assert.Equal(1e3 * mouth.Y, middle.Y - hull, Stray);
                Assert.Equal(1e3 * diameter, circle.Width, Stray);
            }
        }
    }

    [Fact]
    public void A_drill_goes_through_the_wall_and_as_deep_into_the_core_as_the_pour_asks()
    {
        AssessmentResult fin = PouredFins.Fairway;
        string[] words = Texts(PouredFins.Named(fin, "drill-places"));
        foreach (PartPoured part in fin.Poured!.Parts)
        {
            foreach (PouredPort port in part.Ports)
            {
                double least = 1e3 * (port.Depth + 0.8 * part.Layers.Settings.WallThickness);
                Assert.Contains(words, text => text.StartsWith($"Ø {1e3 * port.Port.Diameter:0.0}, ", StringComparison.Ordinal) && Number(text.Split(", ")[1]) >= least && Number(text.Split(", ")[1]) < least + 6);
            }
        }
    }

    [Fact]
    public void A_jig_is_as_high_as_the_part_stands()
    {
        foreach (PartPoured part in PouredFins.Eelgrass.Poured!.Parts)
        {
            XElement svg = SvgReading.Of(PouredFins.Named(PouredFins.Eelgrass, "pour-jig-" + part.Name.Replace(' ', '-')).Drawing);
            Point3[] mesh = [.. PouredFins.Eelgrass.Parts!.Parts.Single(p => p.Name == part.Name).Mesh.Points()];
            double[] heights = [.. mesh.Select(p => part.Layers.ToLayers.Apply(p).Dot(part.Up))];
            // The outline is found on dots of about half a millimetre.
            Assert.Equal(1e3 * (heights.Max() - heights.Min()), SvgReading.Extents(svg, "part").Height, 1.2);
            // Both supports stand on the bench and reach the part.
            Point2[][] supports = [.. SvgReading.Group(svg, "supports").Elements().SelectMany(SvgReading.Lines)];
            Assert.Equal(2, supports.Length);
            Assert.Equal(supports[0][1].Y, supports[1][1].Y, Decimals);
        }
    }

    [Fact]
    public void A_scaled_design_scales_its_templates()
    {
        AssessmentResult small = MadeFins.Worked("fairway-upright", AssessmentDepth.Parts), large = MadeFins.Worked(
            "fairway-upright", AssessmentDepth.Parts, design => design with { Shape = design.Shape with { Outline = design.Shape.Outline with { SpanMm = 374, RootChordMm = 204.6 } } });
        DrawnBox a = DrawnBox.Round(SvgReading.Points(SvgReading.Of(PouredFins.Named(small, "planform").Drawing), "blade"));
        DrawnBox b = DrawnBox.Round(SvgReading.Points(SvgReading.Of(PouredFins.Named(large, "planform").Drawing), "blade"));
        Assert.Equal(1.1, b.Width / a.Width, 1e-3);
        Assert.Equal(1.1, b.Height / a.Height, 1e-5);
    }

    private static double Number(string text) => double.Parse(text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);

    private static string[] Texts(Template template) => [.. template.Drawing.Items.OfType<DrawnText>().Select(text => text.Text)];
}
