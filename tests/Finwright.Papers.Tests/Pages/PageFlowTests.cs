using Finwright.Assessment.Verdicts;
using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Pages;

public sealed class PageFlowTests
{
    private const double Exact = 1e-3;

    [Fact]
    public void Everything_written_is_read_back_in_its_order()
    {
        string text = string.Join(' ', Press.Texts(Press.Flow(flow =>
        {
            flow.Title("Mudflat 21", "For shallow water");
            flow.Chapter(4, "Dry fit", "Put it together without glue first.");
            flow.Step("Push the rods in.", "They must go in by hand.", ["Carbon splinters.", "Wear gloves."]);
            flow.Verdict(VerdictState.Tight, "tight", "Rod in its bore", "0.1 mm, limit 0.1 mm", "drill it");
            flow.Box("Stop", ["When it smokes, leave."]);
            flow.Head("Parts");
            flow.Table([new("Part", 2), new("Mass", 1, IsNumber: true)], [["blade 1 of 2", "98 g"], ["base", "111 g"]]);
            flow.Blanks(["Out at"]);
            flow.Text("Done.");
            flow.Text("From memory.", quiet: true);
        })));
        Assert.Equal("Mudflat 21 For shallow water 4 Dry fit Put it together without glue first. Push the rods in. They must go in by hand. Carbon splinters. Wear gloves. "
            + "tight Rod in its bore 0.1 mm, limit 0.1 mm drill it Stop When it smokes, leave. Parts Part Mass blade 1 of 2 98 g base 111 g Out at Done. From memory.", text);
    }

    [Fact]
    public void Nothing_is_drawn_outside_the_room_between_head_and_foot()
    {
        foreach (PaperSize paper in (PaperSize[])[PaperSize.A4, PaperSize.Letter, new("A5", 0.148, 0.210)])
        {
            PaperSettings settings = Press.Settings with { Paper = paper };
            (Point2 from, Point2 to) = Press.Room(settings);
            using PdfDocument read = PdfDocument.Open(Press.Flow(flow => SamplePaper.Write(flow, 4), settings), new ParsingOptions { ClipPaths = true });
            Assert.True(read.NumberOfPages > 3);
            foreach (Page page in read.GetPages())
            {
                double top = page.Height * Press.PointMm - 1e3 * from.Y, bottom = page.Height * Press.PointMm - 1e3 * to.Y;
                PdfRectangle[] boxes = [.. page.Letters.Select(letter => letter.BoundingBox), .. page.Paths.Select(path => path.GetBoundingRectangle()!.Value)];
                // Head and foot have their own test.
                boxes = [.. boxes.Where(box => box.Bottom * Press.PointMm < top + 1.2 && box.Top * Press.PointMm > bottom - 1.2)];
                Assert.NotEmpty(boxes);
                Assert.All(boxes, box =>
                {
                    Assert.InRange(box.Left * Press.PointMm, 12 - 0.01, 1e3 * paper.Width - 12 + 0.01);
                    Assert.InRange(box.Right * Press.PointMm, 12 - 0.01, 1e3 * paper.Width - 12 + 0.01);
                    Assert.InRange(box.Bottom * Press.PointMm, bottom - 0.01, top + 0.01);
                    Assert.InRange(box.Top * Press.PointMm, bottom - 0.01, top + 0.01);
                });
            }
        }
    }

    [Fact]
    public void A_table_longer_than_a_page_repeats_its_heads_and_loses_no_row()
    {
        const int rows = 150;
        string[][] pages = Press.Words(Press.Flow(flow => flow.Table(SamplePaper.Columns, [.. Enumerable.Range(1, rows).Select(i => (IReadOnlyList<string>)[$"d{i}", $"w{i}", $"n{i}"])])));
        Assert.True(pages.Length >= 3);
        Assert.All(pages, words => Assert.Equal(["Depth", "Deflection", "Note"], words.Take(3), StringComparer.Ordinal));
        Assert.Equal(Enumerable.Range(1, rows).SelectMany(i => (string[])[$"d{i}", $"w{i}", $"n{i}"]), pages.SelectMany(words => words.Skip(3)), StringComparer.Ordinal);
    }

    [Fact]
    public void A_row_higher_than_a_page_is_broken_within_and_loses_no_word()
    {
        string[] words = [.. Enumerable.Range(1, 900).Select(i => $"word{i}")];
        string[][] pages = Press.Words(Press.Flow(flow =>
        {
            flow.Text("Before.");
            flow.Table(SamplePaper.Columns, [["a", "b", string.Join(' ', words)], ["c", "d", "last"]]);
        }));
        Assert.True(pages.Length >= 2);
        Assert.Equal([.. words, "last"], pages.SelectMany(page => page).Where(word => word.StartsWith("word", StringComparison.Ordinal) || word == "last"), StringComparer.Ordinal);
        Assert.All(pages.Skip(1), page => Assert.Equal("Depth", page[0]));
    }

    [Fact]
    public void A_long_text_runs_on_to_the_next_page_without_loss()
    {
        string[] words = [.. Enumerable.Range(1, 3000).Select(i => $"w{i}")];
        string[][] pages = Press.Words(Press.Flow(flow => flow.Text(string.Join(' ', words))));
        Assert.True(pages.Length >= 2);
        Assert.Equal(words, pages.SelectMany(page => page), StringComparer.Ordinal);
    }

    // However full the page is when it comes.
    [Fact]
    public void A_head_is_never_the_last_on_a_page()
    {
        byte[] file = Press.Flow(flow =>
        {
            for (int filled = 0; filled < 30; filled++)
            {
                flow.NewPage();
                flow.Text("Filled.");
                while (flow.Left > 0.06 - 2e-3 * filled)
                    flow.Text(".");
                flow.Chapter(filled + 1, "Pour", "In two goes.");
                flow.Head("Cups");
                flow.Text($"First{filled} block.");
            }
        });
        string[] pages = Press.Texts(file);
        for (int filled = 0; filled < 30; filled++)
            Assert.Contains($"{filled + 1} Pour In two goes. Cups First{filled} block.", pages.Single(page => page.Contains($"First{filled} ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.True(pages.Length > 40);
    }

    [Fact]
    public void A_head_moves_on_with_the_picture_below_it()
    {
        string[] pages = Press.Texts(Press.Flow(flow =>
        {
            while (flow.Left > 0.06)
                flow.Text("Filled.");
            flow.Head("Bench");
            flow.Picture(SamplePaper.Square(0.08), "A square");
        }));
        Assert.Equal("Bench A square", pages[1]);
    }

    [Fact]
    public void A_new_page_right_after_a_head_takes_the_head_along()
    {
        string[] pages = Press.Texts(Press.Flow(flow =>
        {
            flow.Text("Before.");
            flow.Chapter(0, "After", "");
            flow.NewPage();
            flow.NewPage();
            flow.Text("Text.");
        }));
        Assert.Equal(["Before.", "After Text."], pages);
    }

    [Fact]
    public void A_step_stays_whole_and_has_a_box_of_4_mm_to_tick()
    {
        const int steps = 40;
        byte[] file = Press.Flow(flow =>
        {
            for (int i = 0; i < steps; i++)
                flow.Step($"do{i}", $"why{i}", [$"care{i}"]);
        });
        string[][] pages = Press.Words(file);
        for (int i = 0; i < steps; i++)
            Assert.Contains(pages, page => page.Contains($"do{i}") && page.Contains($"why{i}") && page.Contains($"care{i}"));
        int boxes = Enumerable.Range(1, pages.Length).Sum(page => Press.Paths(file, page).Count(path => IsBox(path, 4)));
        Assert.Equal(steps, boxes);
    }

    [Fact]
    public void States_of_verdicts_are_told_by_the_shape_of_their_marks_alone()
    {
        string[] shapes = [.. Enum.GetValues<VerdictState>().Select(state =>
        {
            PdfPath[] paths = Press.Paths(Press.Flow(flow => flow.Verdict(state, "word", "what", "", "")));
            Assert.NotEmpty(paths);
            return string.Join('|', paths.Select(path => $"{path.IsFilled} {path.IsStroked} {Math.Round(path.GetBoundingRectangle()!.Value.Width)} {path.Sum(part => part.Commands.Count)}"));
        })];
        Assert.Equal(shapes.Length, shapes.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void An_empty_cell_of_a_boxed_table_is_high_enough_to_write_in()
    {
        PdfPath[] paths = Press.Paths(Press.Flow(flow => flow.Table(SamplePaper.Columns, [["", "1", PageFlow.TickEntry]], boxed: true)));
        PdfRectangle[] cells = [.. paths.Where(path => path.IsStroked && !IsBox(path, 4)).Select(path => path.GetBoundingRectangle()!.Value)];
        Assert.Equal(6, cells.Length);
        Assert.All(cells[3..], cell => Assert.True(cell.Height * Press.PointMm >= 8 - Exact));
        Assert.Single(paths, path => IsBox(path, 4));
    }

    [Fact]
    public void Numbers_of_a_column_end_below_one_another()
    {
        using PdfDocument read = PdfDocument.Open(Press.Flow(flow => flow.Table([new("Part", 1), new("Mass", 1, IsNumber: true), new("x", 1)], [["a", "7", ""], ["b", "1111", ""]])));
        double[] ends = [.. read.GetPage(1).GetWords().Where(word => word.Text is "7" or "1111").Select(word => word.Letters[^1].EndBaseLine.X * Press.PointMm)];
        Assert.Equal(ends[0], ends[1], 0.01);
    }

    [Fact]
    public void A_row_with_too_few_entries_is_refused() =>
        Assert.Throws<ArgumentException>(() => Press.Flow(flow => flow.Table(SamplePaper.Columns, [["only one"]])));

    [Fact]
    public void A_picture_keeps_its_size_and_lies_in_the_middle()
    {
        PdfRectangle box = Press.Paths(Press.Flow(flow => flow.Picture(SamplePaper.Square(0.05), "Words"))).Single().GetBoundingRectangle()!.Value;
        Assert.Equal(50, box.Width * Press.PointMm, Exact);
        Assert.Equal(50, box.Height * Press.PointMm, Exact);
        Assert.Equal(105, (box.Left + box.Right) / 2 * Press.PointMm, Exact);
    }

    [Fact]
    public void A_picture_too_large_for_the_page_is_refused_with_its_size()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Press.Flow(flow => flow.Picture(SamplePaper.Square(0.2), "")));
        Assert.Contains("200.2 x 200.2 mm", refused.Message, StringComparison.Ordinal);
        Assert.Contains("186.0 x", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Press.Flow(flow => flow.Figure(PlotSample.Figure(), double.NaN, "")));
        Assert.Throws<ArgumentException>(() => Press.Flow(flow => flow.Picture(new Drawing(), "")));
    }

    [Fact]
    public void Need_turns_the_page_only_when_too_little_is_left()
    {
        PaperDocument document = new(Press.Settings, Press.Marks);
        PageFlow flow = new(document);
        flow.Need(0.1);
        Assert.Equal(0, document.PageCount);
        double whole = flow.Left;
        flow.Text("First.");
        Assert.True(flow.Left < whole);
        flow.Need(flow.Left - 1e-3);
        Assert.Equal(1, document.PageCount);
        flow.Need(flow.Left + 1e-3);
        Assert.Equal(2, document.PageCount);
        Assert.Equal(whole, flow.Left, 12);
    }

    [Fact]
    public void A_box_longer_than_a_page_goes_on_and_loses_no_line()
    {
        string[] lines = [.. Enumerable.Range(1, 90).Select(i => $"line{i}")];
        string[][] pages = Press.Words(Press.Flow(flow => flow.Box("Safety", lines)));
        Assert.True(pages.Length >= 2);
        Assert.Equal(["Safety", .. lines], pages.SelectMany(page => page), StringComparer.Ordinal);
    }

    private static bool IsBox(PdfPath path, double edge) =>
        path.IsStroked && path.GetBoundingRectangle() is { } box && Math.Abs(box.Width * Press.PointMm - edge) < Exact && Math.Abs(box.Height * Press.PointMm - edge) < Exact;
}
