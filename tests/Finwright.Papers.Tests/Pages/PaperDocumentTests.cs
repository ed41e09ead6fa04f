using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Tokens;

namespace Finwright.Papers.Tests.Pages;

public sealed class PaperDocumentTests
{
    // The file's numbers carry three decimals of a point: half of the last is 0.00018 mm.
    private const double Exact = 2e-4;

    private static readonly Pen Thin = new(Palette.Line, 0.2e-3);
    private static readonly TextLook Look = new(4e-3, Palette.Line);

    [Theory]
    [InlineData("A4", false, 210, 297)] // ISO 216
    [InlineData("A4", true, 297, 210)]
    [InlineData("Letter", false, 215.9, 279.4)] // ANSI/ASME Y14.1, size A
    [InlineData("Letter", true, 279.4, 215.9)]
    public void Pages_have_the_size_of_their_paper(string paper, bool landscape, double width, double height)
    {
        byte[] file = Press.Pages(document => document.AddPage(landscape), Press.Settings with { Paper = paper == "A4" ? PaperSize.A4 : PaperSize.Letter });
        using PdfDocument read = PdfDocument.Open(file);
        Page page = read.GetPage(1);
        Assert.Equal(width, page.Width * Press.PointMm, Exact);
        Assert.Equal(height, page.Height * Press.PointMm, Exact);
        Assert.Equal(0, page.Rotation.Value);
    }

    [Fact]
    public void A_rectangle_of_212_3_by_380_mm_reads_back_in_that_size_and_place()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("outline", Thin, [new(0, 0), new(0.2123, 0), new(0.2123, 0.38), new(0, 0.38)], Closed: true));
        byte[] file = Press.Pages(document => document.AddPage().Draw(drawing, new(0.04, 0.05)), Press.Settings with { Paper = new("large", 0.3, 0.5) });
        PdfRectangle box = Press.Paths(file).Single().GetBoundingRectangle()!.Value;
        Assert.Equal(212.3, box.Width * Press.PointMm, Exact);
        Assert.Equal(380.0, box.Height * Press.PointMm, Exact);
        Assert.Equal(40, box.Left * Press.PointMm, Exact);
        Assert.Equal(500 - 50 - 380, box.Bottom * Press.PointMm, Exact);
    }

    [Fact]
    public void Dashes_are_as_long_as_the_pen_says()
    {
        byte[] file = Press.Drawn(new DrawnStroke("line", new(Palette.Line, 0.5e-3, [3e-3, 1e-3]), [new(0, 0), new(0.1, 0)], Closed: false));
        PdfPath path = Press.Paths(file).Single();
        Assert.Equal([3.0, 1.0], path.LineDashPattern!.Value.Array.Select(length => Math.Round(length * Press.PointMm, 3)));
        Assert.Equal(0.5, path.LineWidth * Press.PointMm, 1e-3);
    }

    [Fact]
    public void A_ring_within_a_ring_stays_free()
    {
        byte[] file = Press.Drawn(new DrawnArea("tone", Palette.Water, [[new(0, 0), new(0.04, 0), new(0.04, 0.04), new(0, 0.04)], [new(0.01, 0.01), new(0.03, 0.01), new(0.03, 0.03), new(0.01, 0.03)]]));
        PdfPath path = Press.Paths(file).Single();
        Assert.True(path.IsFilled);
        Assert.False(path.IsStroked);
        Assert.Equal(FillingRule.EvenOdd, path.FillingRule);
        Assert.Equal(2, path.Count);
    }

    [Theory]
    [InlineData(TextAnchor.Start, 0)]
    [InlineData(TextAnchor.Middle, 0.5)]
    [InlineData(TextAnchor.End, 1)]
    public void A_text_lies_at_its_place_by_its_anchor(TextAnchor anchor, double share)
    {
        byte[] file = Press.Drawn(new DrawnText("word", "HAMBURG", new(0.05, 0.04), Look with { Anchor = anchor }));
        using PdfDocument read = PdfDocument.Open(file);
        Letter[] letters = [.. read.GetPage(1).Letters.Where(letter => Math.Abs(letter.PointSize * Press.PointMm - 4) < 0.01)];
        double start = letters[0].StartBaseLine.X * Press.PointMm, end = letters[^1].EndBaseLine.X * Press.PointMm;
        // 20 mm + 50 mm; the base line 30 mm + 40 mm below the top. The reader knows widths to whole thousandths of the size.
        Assert.Equal(70, start + share * (end - start), 0.02);
        Assert.Equal(297 - 70, letters[0].StartBaseLine.Y * Press.PointMm, 1e-3);
    }

    [Fact]
    public void A_text_turned_upward_runs_upward_from_its_place()
    {
        byte[] file = Press.Drawn(new DrawnText("word", "SPAN", new(0.05, 0.1), Look with { UpwardTurn = Math.PI / 2 }));
        using PdfDocument read = PdfDocument.Open(file);
        Letter[] letters = [.. read.GetPage(1).Letters.Where(letter => letter.TextOrientation == TextOrientation.Rotate270 || letter.TextOrientation == TextOrientation.Rotate90)];
        Assert.Equal("SPAN", string.Concat(letters.Select(letter => letter.Value)));
        Assert.Equal(70, letters[0].StartBaseLine.X * Press.PointMm, 1e-2);
        Assert.Equal(297 - 130, letters[0].StartBaseLine.Y * Press.PointMm, 1e-2);
        Assert.True(letters[^1].StartBaseLine.Y > letters[0].StartBaseLine.Y);
    }

    [Fact]
    public void What_lies_outside_the_clip_is_not_drawn()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("line", Thin, [new(0, 0), new(0.15, 0)], Closed: false));
        drawing.Add(new DrawnStroke("away", Thin, [new(0.12, 0.01), new(0.14, 0.01)], Closed: false));
        drawing.Add(new DrawnText("word", "inside", new(0.02, 0.02), Look));
        drawing.Add(new DrawnText("word", "outside", new(0.12, 0.02), Look));
        byte[] file = Press.Pages(document => document.AddPage().Draw(drawing, new(0.02, 0.05), (new(0.03, 0.04), new(0.1, 0.1))));
        using PdfDocument read = PdfDocument.Open(file, new ParsingOptions { ClipPaths = true });
        PdfRectangle[] seen = [.. read.GetPage(1).Paths.Where(path => path.IsStroked).Select(path => path.GetBoundingRectangle()!.Value).Where(box => Math.Abs((297 - 50) - box.Bottom * Press.PointMm) < 20)];
        PdfRectangle line = Assert.Single(seen);
        Assert.Equal(30, line.Left * Press.PointMm, 1e-3);
        Assert.Equal(100, line.Right * Press.PointMm, 1e-3);
        Assert.Equal(["inside"], Press.Words(file)[0]);
    }

    [Fact]
    public void Every_page_bears_title_kind_foot_and_its_number_of_all()
    {
        byte[] file = Press.Pages(document =>
        {
            for (int i = 0; i < 3; i++)
                document.AddPage(landscape: i == 1);
        });
        using PdfDocument read = PdfDocument.Open(file);
        foreach (Page page in read.GetPages())
        {
            string text = string.Join(' ', page.GetWords().Select(word => word.Text));
            Assert.Equal($"Mudflat 21 Build sheet Finwright 0.9.0 · 27 November 2026 · 4f1c0a22 Page {page.Number} of 3", text);
            Assert.All(page.Letters, letter => Assert.True(letter.StartBaseLine.X * Press.PointMm >= 12 - 0.1 && letter.EndBaseLine.X * Press.PointMm <= page.Width * Press.PointMm - 12 + 0.1));
        }
    }

    [Fact]
    public void A_name_too_long_for_the_head_is_shortened_with_three_dots()
    {
        string name = string.Join(' ', Enumerable.Repeat("Mudflat", 40));
        byte[] file = Press.Pages(document => document.AddPage(), marks: Press.Marks with { Title = name });
        using PdfDocument read = PdfDocument.Open(file);
        Page page = read.GetPage(1);
        Assert.Contains("…", page.Text, StringComparison.Ordinal);
        Assert.All(page.Letters, letter => Assert.True(letter.EndBaseLine.X * Press.PointMm <= 210 - 12 + 0.1));
        Assert.Equal($"{name}: Build sheet", read.Information.Title);
    }

    [Fact]
    public void The_file_tells_what_it_is()
    {
        byte[] file = Press.Pages(document => document.AddPage(), Press.Settings with { Language = PaperLanguage.German });
        using PdfDocument read = PdfDocument.Open(file);
        Assert.Equal("Mudflat 21: Build sheet", read.Information.Title);
        Assert.Equal("Finwright 0.9.0", read.Information.Creator);
        Assert.Equal(new DateTimeOffset(2026, 11, 27, 12, 0, 0, TimeSpan.Zero), read.Information.GetCreatedDateTimeOffset());
        DictionaryToken catalog = read.Structure.Catalog.CatalogDictionary;
        Assert.Equal("de", ((StringToken)catalog.Data["Lang"]).Data);
        IndirectReferenceToken preferences = (IndirectReferenceToken)catalog.Data["ViewerPreferences"];
        DictionaryToken asked = (DictionaryToken)read.Structure.GetObject(preferences.Data).Data;
        Assert.Equal("None", ((NameToken)asked.Data["PrintScaling"]).Data);
    }

    [Fact]
    public void Fonts_lie_in_the_file()
    {
        byte[] file = Press.Flow(flow =>
        {
            flow.Title("Title", "Below");
            flow.Text("α → ü");
        });
        using PdfDocument read = PdfDocument.Open(file);
        DictionaryToken[] descriptors = [.. read.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(key => read.Structure.GetObject(key).Data).OfType<DictionaryToken>()
            .Where(token => token.Data.TryGetValue("Type", out IToken? type) && type is NameToken { Data: "FontDescriptor" })];
        Assert.Equal(2, descriptors.Length);
        Assert.All(descriptors, descriptor => Assert.True(descriptor.Data.ContainsKey("FontFile2")));
        Assert.All(descriptors, descriptor => Assert.Matches("^[A-Z]{6}\\+Inter", ((NameToken)descriptor.Data["FontName"]).Data));
    }

    [Fact]
    public void Same_calls_give_the_same_bytes_from_several_threads_too()
    {
        static byte[] Make(int number) => Press.Flow(flow => SamplePaper.Write(flow, number));
        byte[] one = Make(1), two = Make(2);
        byte[][] again = new byte[8][];
        Parallel.For(0, again.Length, i => again[i] = Make(1 + i % 2));
        for (int i = 0; i < again.Length; i++)
            Assert.Equal(i % 2 == 0 ? one : two, again[i]);
        Assert.NotEqual(one, two);
    }

    [Fact]
    public void A_document_gives_its_file_twice()
    {
        PaperDocument document = new(Press.Settings, Press.Marks);
        PageFlow flow = new(document);
        flow.Chapter(1, "Only a head", "");
        Assert.Equal(document.ToBytes(), document.ToBytes());
        Assert.Equal(1, document.PageCount);
    }

    [Fact]
    public void Paper_smaller_than_A5_is_refused_and_A5_is_not()
    {
        // ISO 216: A5 is 148 x 210 mm.
        Assert.Throws<ArgumentOutOfRangeException>(() => new PaperDocument(Press.Settings with { Paper = new("A6", 0.105, 0.148) }, Press.Marks));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PaperDocument(Press.Settings with { Paper = new("none", double.NaN, 0.297) }, Press.Marks));
        Assert.Equal(0, new PaperDocument(Press.Settings with { Paper = new("A5", 0.148, 0.210) }, Press.Marks).PageCount);
    }

    [Fact]
    public void A_document_without_pages_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => new PaperDocument(Press.Settings, Press.Marks).ToBytes());
}
