using System.Text;
using System.Xml.Linq;
using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Views;
using Finwright.Papers.Words;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Finwright.Papers.Tests.Views;

public sealed class FinDrawingTests
{
    private const double PointMm = 25.4 / 72;

    // Half of the last digit that is told.
    private const double LastDigit = 0.05 + 1e-9;

    public static TheoryData<string> Demos => DrawnFins.Demos;

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_length_told_is_the_length_drawn(string demo)
    {
        (Drawing sheet, double scale) = Sheet(demo, DrawnFins.Settings);
        IReadOnlyList<(double Told, double OnPaper, string Text)> lengths = DimensionReading.Lengths(sheet);
        Assert.True(lengths.Count >= 12, $"only {lengths.Count} lengths");
        double hull = 1e3 * DrawnFins.Of(demo).Solids!.Plan.HullLength;
        double detail = lengths.First(length => Math.Abs(length.Told - hull) <= LastDigit).OnPaper / hull;
        Assert.InRange(detail, scale - 1e-9, 1);
        foreach ((double told, double onPaper, string text) in lengths)
            Assert.True(Math.Abs(onPaper / scale - told) <= LastDigit || Math.Abs(onPaper / detail - told) <= LastDigit, $"\"{text}\" is drawn {onPaper} mm long in 1:{1 / scale}, or 1:{1 / detail}");
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_sizes_of_the_fin_are_told(string demo)
    {
        AssessmentResult fin = DrawnFins.Of(demo);
        BasePlan plan = fin.Solids!.Plan;
        string[] told = [.. Sheet(demo, DrawnFins.Settings).Drawing.Items.OfType<DrawnText>().Select(text => text.Text)];
        Assert.Contains(Bare(fin.Blade!.Span) + " mm", told, StringComparer.Ordinal);
        Assert.Contains(Bare(fin.Blade.Outline.Chord(0)) + " mm", told, StringComparer.Ordinal);
        Assert.Contains(told, text => text.EndsWith(Bare(fin.Blade.Outline.Chord(0.9 * fin.Blade.Span)) + " mm", StringComparison.Ordinal));
        Assert.Contains(FormattableString.Invariant($"{double.RadiansToDegrees(fin.Planform!.Rake):0.0}°"), told, StringComparer.Ordinal);
        Assert.All(new[] { plan.HullLength, plan.FrontDepth, plan.RearDepth, plan.DeepWidth }, size => Assert.Contains(Bare(size), told, StringComparer.Ordinal));
        foreach (double share in (ReadOnlySpan<double>)[0.2, 0.5, 0.8])
        {
            double depth = share * fin.Blade.Span;
            Assert.Contains(told, text => text.Contains(Bare(fin.Blade.Outline.Chord(depth)), StringComparison.Ordinal));
            Assert.Contains(told, text => text.Contains(Bare(depth), StringComparison.Ordinal));
        }

        Assert.All(plan.Bolts, bolt => Assert.Contains($"{bolt.Thread.Name}: {Bare(bolt.AtHull.X - plan.FrontX)}", told, StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("fairway-upright", "A4", PaperLanguage.English)]
    [InlineData("sandbar-delta", "Letter", PaperLanguage.German)]
    [InlineData("eelgrass-rake", "A4", PaperLanguage.German)]
    [InlineData("eelgrass-rake", "Letter", PaperLanguage.English)]
    [InlineData("fairway-upright", "Letter", PaperLanguage.German)]
    public void Words_touch_no_line_and_no_other_words(string demo, string paper, PaperLanguage language)
    {
        Drawing sheet = Sheet(demo, DrawnFins.Settings with { Paper = On(paper), Language = language }).Drawing;
        Assert.Empty(sheet.Items.OfType<DrawnText>().Where(text => !string.Equals(text.Layer, "title", StringComparison.Ordinal) && !FreeRoom.IsClear(sheet, text, 0)).Select(text => text.Text));
    }

    [Theory]
    [InlineData("fairway-upright", "A4", 297, 210)] // ISO 216
    [InlineData("sandbar-delta", "Letter", 279.4, 215.9)] // ANSI/ASME Y14.1, size A
    [InlineData("eelgrass-rake", "A5", 210, 148)] // ISO 216
    public void The_sheet_is_landscape_and_everything_lies_within_its_margins(string demo, string paper, double width, double height)
    {
        PaperSettings settings = DrawnFins.Settings with { Paper = On(paper) };
        using PdfDocument read = PdfDocument.Open(FinDrawing.Write(DrawnFins.Of(demo), settings, new Tongue(settings)).Pdf);
        Page page = Assert.Single(read.GetPages());
        Assert.Equal(width, page.Width * PointMm, 1e-3);
        Assert.Equal(height, page.Height * PointMm, 1e-3);
        foreach (UglyToad.PdfPig.Core.PdfRectangle box in page.Paths.Where(path => !path.IsClipping).Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().Concat(page.Letters.Select(letter => letter.BoundingBox)))
        {
            Assert.InRange(box.Left * PointMm, 11.5, width - 11.5);
            Assert.InRange(box.Right * PointMm, 11.5, width - 11.5);
            Assert.InRange(box.Bottom * PointMm, 11.5, height - 11.5);
            Assert.InRange(box.Top * PointMm, 11.5, height - 11.5);
        }
    }

    [Fact]
    public void The_title_block_says_name_hash_and_scale()
    {
        AssessmentResult fin = DrawnFins.Of("fairway-upright");
        (byte[] pdf, byte[] svg) = FinDrawing.Write(fin, DrawnFins.Settings, new Tongue(DrawnFins.Settings));
        using PdfDocument read = PdfDocument.Open(pdf);
        string text = string.Join(' ', read.GetPage(1).GetWords());
        double scale = Sheet("fairway-upright", DrawnFins.Settings).Scale;
        foreach (string expected in new[] { "Fairway upright", fin.DesignHash[..12], "naca-0010-34", FormattableString.Invariant($"1:{1 / scale:0.#}"), "0.9.0", "27 November 2026" })
        {
            Assert.Contains(expected, text, StringComparison.Ordinal);
            Assert.Contains(expected, string.Join(' ', XDocument.Parse(Encoding.UTF8.GetString(svg)).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value)) + " Fairway upright", StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Same_fin_gives_same_bytes()
    {
        AssessmentResult fin = DrawnFins.Of("sandbar-delta");
        (byte[] Pdf, byte[] Svg) first = FinDrawing.Write(fin, DrawnFins.Settings, new Tongue(DrawnFins.Settings)), second = FinDrawing.Write(fin, DrawnFins.Settings, new Tongue(DrawnFins.Settings));
        Assert.Equal(first.Pdf, second.Pdf);
        Assert.Equal(first.Svg, second.Svg);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_section_has_its_thickness_and_walls_of_whole_lines(string demo)
    {
        AssessmentResult fin = DrawnFins.Of(demo);
        SectionCut section = SectionCut.Of(Papers.Templates.TemplateFin.Of(fin), 0.5 * fin.Blade!.Span);
        double wall = fin.Design!.Print.Walls * fin.Design.Print.LineWidthMm * 1e-3;
        // Thickness runs across the chord; no demo is twisted.
        Assert.Equal(fin.Blade.ThicknessRatio(section.Depth) * section.Chord, section.Thickness, 2e-5);
        IReadOnlyList<Point2> core = section.Core.MaxBy(ring => ring.Count)!;
        Assert.Equal(section.Thickness - 2 * wall, core.Max(p => p.Y) - core.Min(p => p.Y), 2e-5);
        // Every corner of the core lies as deep below the skin as the walls are thick.
        Assert.All(core, p => Assert.Equal(wall, section.Skin.Zip(section.Skin.Skip(1).Append(section.Skin[0]), (a, b) => Distance(p, a, b)).Min(), 3e-5));
    }

    private static (Drawing Drawing, double Scale) Sheet(string demo, PaperSettings settings)
    {
        Papers.Pages.PaperPage page = new Papers.Pages.PaperDocument(settings, new("", "", "", (_, _) => "")).AddPage(landscape: true);
        return FinDrawing.Sheet(DrawnFins.Of(demo), settings, new Tongue(settings), page.RoomTo.X - PaperPage.RoomFrom.X, page.RoomTo.Y - PaperPage.RoomFrom.Y);
    }

    private static double Distance(Point2 p, Point2 a, Point2 b)
    {
        Point2 way = b - a;
        double square = way.Dot(way), share = square > 0 ? Math.Clamp((p - a).Dot(way) / square, 0, 1) : 0;
        return (p - a - share * way).Length;
    }

    private static PaperSize On(string paper) => paper switch { "A4" => PaperSize.A4, "Letter" => PaperSize.Letter, _ => new("A5", 0.148, 0.210) };

    private static string Bare(double metres) => new Tongue(DrawnFins.Settings).BareLength(metres);
}
