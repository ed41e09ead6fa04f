using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Templates;
using Finwright.Papers.Templates.Tiling;
using Finwright.Papers.Tests.Templates;
using Finwright.Papers.Words;
using UglyToad.PdfPig.Content;

namespace Finwright.Papers.Tests.Tiling;

public sealed class TemplateBookTests
{
    // A thousandth of a millimetre.
    private const double Exact = 1e-3;

    public static TheoryData<string> Papers { get; } = new("A4", "Letter", "A5");

    [Theory]
    [MemberData(nameof(Papers))]
    public void Sheets_laid_together_show_the_whole_template_and_nothing_else(string paper)
    {
        PaperSettings settings = On(paper);
        Template leaf = TileSheets.Leaf(0.391, 0.473);
        TiledTemplate tiled = LayOut(leaf, settings);
        List<(Point2 A, Point2 B)> found = [];
        IReadOnlyList<List<(Point2, Point2)>> pages = TileSheets.Read(TileSheets.Write(settings, leaf), page => Edges(TileSheets.Lines(page).Where(line => TileSheets.HasInk(line.Path)).Select(line => line.Points)));
        int front = pages.Count - tiled.Plan.Tiles.Count;
        Assert.True(front >= 1 && tiled.Plan.Tiles.Count > 2);
        for (int i = 0; i < tiled.Plan.Tiles.Count; i++)
            found.AddRange(pages[front + i].Select(edge => (OnTemplate(edge.Item1, tiled, i, settings), OnTemplate(edge.Item2, tiled, i, settings))));

        DrawnStroke whole = tiled.Scaled.Items.OfType<DrawnStroke>().Single();
        List<(Point2 A, Point2 B)> wanted = Edges([[.. whole.Points.Select(p => 1e3 * p), 1e3 * whole.Points[0]]]);
        Assert.Equal(391, wanted.Max(edge => edge.A.X) - wanted.Min(edge => edge.A.X), Exact);
        foreach ((Point2 a, Point2 b) in wanted)
            foreach (double share in (ReadOnlySpan<double>)[0, 0.25, 0.5, 0.75])
                Assert.InRange(found.Min(edge => Distance(a + share * (b - a), edge.A, edge.B)), 0, Exact);
        foreach ((Point2 a, Point2 b) in found)
            foreach (Point2 p in (ReadOnlySpan<Point2>)[a, b])
                Assert.InRange(wanted.Min(edge => Distance(p, edge.A, edge.B)), 0, Exact);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_mark_lies_in_one_place_on_both_its_sheets_and_has_one_number(string paper)
    {
        PaperSettings settings = On(paper);
        Template leaf = TileSheets.Leaf(0.391, 0.473);
        TiledTemplate tiled = LayOut(leaf, settings);
        IReadOnlyList<(Point2 At, string Label)[]> pages = TileSheets.Read(TileSheets.Write(settings, leaf), Marks);
        int front = pages.Count - tiled.Plan.Tiles.Count;
        (Point2 At, string Label)[] all = [.. Enumerable.Range(0, tiled.Plan.Tiles.Count).SelectMany(i => pages[front + i].Select(mark => (OnTemplate(mark.At, tiled, i, settings), mark.Label)))];
        int joins = tiled.Plan.Rows * (tiled.Plan.Columns - 1) + tiled.Plan.Columns * (tiled.Plan.Rows - 1);
        Assert.Equal(2 * 2 * joins, all.Length);
        foreach (IGrouping<string, (Point2 At, string Label)> mark in all.GroupBy(mark => mark.Label, StringComparer.Ordinal))
        {
            Assert.Equal(2, mark.Count());
            Assert.InRange((mark.First().At - mark.Last().At).Length, 0, Exact);
        }
    }

    [Theory]
    [InlineData(0.1, 0.1)]
    [InlineData(0.0985, 0.1012)]
    [InlineData(0.09, 0.11)]
    public void Rulers_on_the_first_page_and_on_every_sheet_are_100_mm_once_printed(double across, double down)
    {
        PaperSettings settings = TileSheets.Settings with { Rulers = new(across, down) };
        Template leaf = TileSheets.Leaf(0.3, 0.4);
        IReadOnlyList<(double Across, double Down)> rulers = TileSheets.Read(TileSheets.Write(settings, leaf), Rulers);
        int sheets = LayOut(leaf, settings).Plan.Tiles.Count;
        Assert.True(sheets > 1);
        foreach ((double level, double upright) in rulers.TakeLast(sheets).Prepend(rulers[0]))
        {
            // What the printer makes of it: 100 mm come out as measured.
            Assert.Equal(100, level * across / 0.1, Exact);
            Assert.Equal(100, upright * down / 0.1, Exact);
        }
    }

    [Fact]
    public void A_landscape_page_is_turned_in_the_printer_and_put_right_the_other_way_round()
    {
        PaperSettings settings = TileSheets.Settings with { Rulers = new(0.0985, 0.1012) };
        Template leaf = TileSheets.Leaf(0.24, 0.11);
        TiledTemplate tiled = LayOut(leaf, settings);
        Assert.True(tiled.Plan.IsLandscape);
        (double level, double upright) = TileSheets.Read(TileSheets.Write(settings, leaf), Rulers)[^1];
        // The long side of the paper runs through the printer whichever way the page lies.
        Assert.Equal(100, level * 1.012, Exact);
        Assert.Equal(100, upright * 0.985, Exact);
        DrawnBox drawn = tiled.Scaled.GeometryBounds;
        Assert.Equal(240, 1e3 * drawn.Width * 1.012, Exact);
        Assert.Equal(1e3 * leaf.Drawing.GeometryBounds.Height, 1e3 * drawn.Height * 0.985, Exact);
    }

    [Fact]
    public void A_printer_that_was_measured_gets_the_template_in_true_size()
    {
        PaperSettings settings = TileSheets.Settings with { Rulers = new(0.0985, 0.1012) };
        byte[] file = TileSheets.Write(settings, TileSheets.Leaf(0.12, 0.11));
        Point2[] points = TileSheets.Read(file, page => TileSheets.Lines(page).Where(line => TileSheets.HasInk(line.Path)).SelectMany(line => line.Points).ToArray())[^1];
        Point2[] straight = TileSheets.Read(TileSheets.Write(TileSheets.Settings, TileSheets.Leaf(0.12, 0.11)), page => TileSheets.Lines(page).Where(line => TileSheets.HasInk(line.Path)).SelectMany(line => line.Points).ToArray())[^1];
        Assert.Equal(Width(straight, p => p.X), Width(points, p => p.X) * 0.985, Exact);
        Assert.Equal(Width(straight, p => p.Y), Width(points, p => p.Y) * 1.012, Exact);
        Assert.Contains("98.50", TileSheets.Read(file, page => page.Text)[^1], StringComparison.Ordinal);

        static double Width(Point2[] points, Func<Point2, double> side) => points.Max(side) - points.Min(side);
    }

    [Fact]
    public void Each_sheet_tells_its_name_and_place()
    {
        Template leaf = TileSheets.Leaf(0.391, 0.473);
        TilePlan plan = LayOut(leaf, TileSheets.Settings).Plan;
        IReadOnlyList<string> texts = TileSheets.Read(TileSheets.Write(TileSheets.Settings, leaf), page => string.Join(' ', page.GetWords()));
        for (int i = 0; i < plan.Tiles.Count; i++)
        {
            string text = texts[texts.Count - plan.Tiles.Count + i];
            Assert.Contains("Leaf, " + plan.Tiles[i].Name, text, StringComparison.Ordinal);
            if (plan.Tiles[i].Row > 0)
                Assert.Contains("below " + Tile.NameOf(plan.Tiles[i].Row - 1, plan.Tiles[i].Column), text, StringComparison.Ordinal);
            Assert.Contains($"page {texts.Count - plan.Tiles.Count + i + 1} of {texts.Count}", text, StringComparison.Ordinal);
        }

        Assert.Contains("Measure this first", texts[0], StringComparison.Ordinal);
        Assert.Contains("--ruler-across-mm", texts[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_with_nothing_on_it_is_not_printed_and_no_other_speaks_of_it()
    {
        // An angle, 300 x 400 mm: the fourth of its four sheets would be empty.
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("angle", new(TileSheets.Ink, 0.25e-3), [new(0.3, 0), new(0, 0), new(0, 0.4)], Closed: false));
        Template angle = new("angle", "Angle", "To see what is printed.", drawing);
        TiledTemplate tiled = LayOut(angle, TileSheets.Settings);
        Assert.Equal(["A1", "A2", "B1"], tiled.Sheets.Select(sheet => sheet.Name), StringComparer.Ordinal);
        Assert.Equal(4, tiled.Marks.Count);
        IReadOnlyList<string> texts = TileSheets.Read(TileSheets.Write(TileSheets.Settings, angle), page => string.Join(' ', page.GetWords()));
        Assert.All(texts, text => Assert.DoesNotContain("B2", text, StringComparison.Ordinal));
        Assert.Equal(3, texts.Count(text => text.Contains("Angle, ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void No_join_runs_through_title_use_or_table(string paper)
    {
        List<string> cut = [];
        foreach (AssessmentResult fin in (AssessmentResult[])[PouredFins.Fairway, PouredFins.Sandbar, PouredFins.Eelgrass])
        {
            foreach (Tongue tongue in (Tongue[])[PouredFins.English, PouredFins.German])
            {
                foreach (TiledTemplate tiled in TemplateBook.LayOut(FinTemplates.Of(fin, tongue), On(paper), new("", "", "", (_, _) => ""), PrinterScale.Of(RulerReading.True)))
                {
                    // Words and numbers within the drawing have a size of their own: they stand where what they tell lies.
                    foreach (DrawnText text in tiled.Scaled.Items.OfType<DrawnText>().Where(text => Math.Abs(text.Look.Size - Dimensions.WordSize) > 1e-9))
                    {
                        DrawnBox box = DrawnBox.Round(Extent.Of(text));
                        // A key far to the right is cut where three columns leave no other way.
                        if (box.From.X < 0.14 && tiled.Plan.Tiles.Any(tile => Runs(box.From.X, box.To.X, tile.Box.From.X) || Runs(box.From.Y, box.To.Y, tile.Box.From.Y)))
                            cut.Add($"{fin.Design!.Name}, {tiled.Template.Name}: {text.Text}");
                    }
                }
            }
        }

        Assert.Empty(cut);

        // Of two sheets the right or lower one lies on top.
        static bool Runs(double from, double to, double edge) => from < edge - 1e-6 && to > edge + 1e-6;
    }

    [Fact]
    public void Nothing_of_a_sheet_lies_outside_the_margins()
    {
        IReadOnlyList<(Point2 Size, Point2[] Points)> pages = TileSheets.Read(
            TileSheets.Write(On("A5"), TileSheets.Leaf(0.391, 0.473)), page => (new Point2(page.Width, page.Height), TileSheets.Lines(page).SelectMany(line => line.Points).ToArray()));
        foreach ((Point2 size, Point2[] points) in pages)
        {
            Assert.All(points, p => Assert.InRange(p.X, 10, size.X * 25.4 / 72 - 10));
            Assert.All(points, p => Assert.InRange(p.Y, 10, size.Y * 25.4 / 72 - 10));
        }
    }

    [Fact]
    public void Same_templates_give_same_bytes() =>
        Assert.Equal(TileSheets.Write(TileSheets.Settings, TileSheets.Leaf(0.3, 0.4)), TileSheets.Write(TileSheets.Settings, TileSheets.Leaf(0.3, 0.4)));

    private static PaperSettings On(string paper) => TileSheets.Settings with
    {
        // ISO 216: A5 is 148 x 210 mm.
        Paper = paper switch { "A4" => PaperSize.A4, "Letter" => PaperSize.Letter, _ => new("A5", 0.148, 0.210) },
    };

    private static TiledTemplate LayOut(Template template, PaperSettings settings) =>
        TemplateBook.LayOut([template], settings, new("", "", "", (_, _) => ""), PrinterScale.Of(settings.Rulers)).Single();

    // From a page to the template, millimetres.
    private static Point2 OnTemplate(Point2 p, TiledTemplate tiled, int tile, PaperSettings settings)
    {
        PaperPage page = new PaperDocument(settings, new("", "", "", (_, _) => "")).AddPage(tiled.Plan.IsLandscape);
        return p - 1e3 * TilePage.Window(page) + 1e3 * tiled.Plan.Tiles[tile].Box.From;
    }

    // Crosses of 6 mm, and the word up and right of each.
    private static (Point2 At, string Label)[] Marks(Page page)
    {
        Point2[][] lines = [.. TileSheets.Lines(page).Select(line => line.Points).Where(points => points.Length == 2 && Math.Abs((points[1] - points[0]).Length - 6) < Exact)];
        IEnumerable<Point2> level = lines.Where(points => Math.Abs(points[0].Y - points[1].Y) < Exact).Select(points => 0.5 * (points[0] + points[1]));
        Point2[] upright = [.. lines.Where(points => Math.Abs(points[0].X - points[1].X) < Exact).Select(points => 0.5 * (points[0] + points[1]))];
        return [.. level.Where(p => upright.Any(q => (p - q).Length < Exact)).Select(p => (p, page.GetWords().MinBy(word => (TileSheets.At(page, word.BoundingBox.BottomLeft) - p - new Point2(1.65, -1.65)).Length)!.Text))];
    }

    private static (double Across, double Down) Rulers(Page page)
    {
        Point2[] ways = [.. TileSheets.Lines(page).Where(line => Math.Abs(line.Path.LineWidth * 25.4 / 72 - 0.2) < Exact && line.Points.Length == 2).Select(line => line.Points[1] - line.Points[0])];
        return (ways.Where(way => Math.Abs(way.Y) < Exact).Select(way => Math.Abs(way.X)).DefaultIfEmpty().Max(), ways.Where(way => Math.Abs(way.X) < Exact).Select(way => Math.Abs(way.Y)).DefaultIfEmpty().Max());
    }

    private static List<(Point2, Point2)> Edges(IEnumerable<Point2[]> lines) => [.. lines.SelectMany(points => points.Zip(points.Skip(1)))];

    private static double Distance(Point2 p, Point2 a, Point2 b)
    {
        Point2 way = b - a;
        double square = way.Dot(way), share = square > 0 ? Math.Clamp((p - a).Dot(way) / square, 0, 1) : 0;
        return (p - a - share * way).Length;
    }
}
