using AngleSharp.Dom;
using Bunit;
using Finwright.Design;
using Finwright.Page.Drawings;
using Finwright.Papers;

namespace Finwright.Page.Tests.Drawings;

public sealed class DrawingTests : IDisposable
{
    private readonly ShownFin _fin = new();

    public void Dispose() => _fin.Dispose();

    [Fact]
    public void A_handle_that_is_dragged_makes_one_step()
    {
        IRenderedComponent<PlanformDrawing> drawing = _fin.Show<PlanformDrawing>();
        for (int x = 60; x <= 120; x += 10)
            drawing.Instance.Move("rake-0", x, 300);
        drawing.Instance.LetGo();
        Assert.Equal(double.RadiansToDegrees(Math.Atan2(120, 300)), _fin.Session.Now.Design.Shape.Outline.RakeDegrees!.Value, 0.1);
        _fin.Session.Undo();
        Assert.Null(_fin.Session.Now.Design.Shape.Outline.RakeDegrees);
        Assert.False(_fin.Session.CanUndo);
    }

    [Fact]
    public void Escape_puts_back_what_was_there_before_the_drag()
    {
        _fin.Session.Set("$.shape.outline.rake_degrees", 12.5, "rake");
        string before = DesignWriter.Write(_fin.Session.Now.Design);
        IRenderedComponent<PlanformDrawing> drawing = _fin.Show<PlanformDrawing>();
        drawing.Instance.Move("rake-0", 90, 300);
        drawing.Instance.Move("rake-0", 130, 300);
        drawing.Instance.Cancel();
        Assert.Equal(before, DesignWriter.Write(_fin.Session.Now.Design));
        // A further drag that comes to nothing takes nothing else back.
        drawing.Instance.Cancel();
        Assert.Equal(before, DesignWriter.Write(_fin.Session.Now.Design));
    }

    [Fact]
    public void Handles_say_what_they_are_and_where_they_stand()
    {
        IRenderedComponent<PlanformDrawing> drawing = _fin.Show<PlanformDrawing>();
        IReadOnlyList<IElement> sliders = [.. drawing.FindAll("[role=slider]")];
        // Root chord, tip chord, rake, span, two sections, and the section that is drawn.
        Assert.Equal(7, sliders.Count);
        Assert.All(sliders, slider => Assert.False(string.IsNullOrWhiteSpace(slider.GetAttribute("aria-label")) || string.IsNullOrWhiteSpace(slider.GetAttribute("aria-valuetext"))));
        Assert.Equal("300 mm", drawing.Find("[data-handle=span-0]").GetAttribute("aria-valuetext"));
        Assert.Contains("120 mm", drawing.Find("svg").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Freed_points_can_be_added_and_moved_by_key()
    {
        IRenderedComponent<PlanformDrawing> drawing = _fin.Show<PlanformDrawing>();
        await drawing.InvokeAsync(() => drawing.FindAll("button").Single(button => button.TextContent == "move points freely").Click());
        Assert.Equal(OutlineFamily.Free, _fin.Session.Now.Design.Shape.Outline.Family);
        OutlinePoint before = _fin.Session.Now.Design.Shape.Outline.LeadingEdge[1];
        drawing.Instance.Nudge("leadingpoint-1", 0.1, 0);
        Assert.Equal(before.AftMm + 0.1, _fin.Session.Now.Design.Shape.Outline.LeadingEdge[1].AftMm, 0.01);
        int count = _fin.Session.Now.Design.Shape.Outline.LeadingEdge.Count;
        drawing.Instance.Points("leadingpoint-1", more: true);
        Assert.Equal(count + 1, _fin.Session.Now.Design.Shape.Outline.LeadingEdge.Count);
        drawing.WaitForAssertion(() => Assert.Equal(count + 1, drawing.FindAll("[data-handle^=leadingpoint]").Count + drawing.FindAll("[data-handle^=meetingpoint]").Count));
    }

    [Fact]
    public void The_line_of_the_section_can_be_moved_and_the_section_follows()
    {
        IRenderedComponent<PlanformDrawing> planform = _fin.Show<PlanformDrawing>();
        IRenderedComponent<SectionDrawing> section = _fin.Show<SectionDrawing>();
        planform.Instance.Move("shown", 0, 0.5 * 300);
        Assert.Equal(0.5, _fin.View.Station, 6);
        section.WaitForAssertion(() => Assert.Contains("150 mm", section.Find("figcaption").TextContent, StringComparison.Ordinal));
        double thickness = _fin.Session.Now.Shape!.Blade!.ThicknessRatio(0.15) * _fin.Session.Now.Shape!.Blade!.Outline.Chord(0.15);
        Assert.Contains($"{1e3 * thickness:0.0} mm", section.Find("svg").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_drawn_is_said_and_the_last_fin_stays()
    {
        IRenderedComponent<PlanformDrawing> drawing = _fin.Show<PlanformDrawing>();
        _fin.Session.Set("$.shape.outline.span_mm", 5000.0, "span");
        drawing.WaitForAssertion(() => Assert.Contains("cannot be drawn", drawing.Find("figcaption").TextContent, StringComparison.Ordinal));
        Assert.NotNull(drawing.Find("path.line.stale"));
    }

    [Fact]
    public async Task Sections_are_changed_added_and_taken_away_in_the_table()
    {
        IRenderedComponent<StationTable> table = _fin.Show<StationTable>();
        await table.InvokeAsync(() => table.Find("#at---shape-sections-1--thickness_percent").Change("9.2"));
        Assert.Equal(9.2, _fin.Session.Now.Design.Shape.Sections[1].ThicknessPercent);
        await table.InvokeAsync(() => table.FindAll("button").Single(button => button.TextContent.StartsWith("a section where", StringComparison.Ordinal)).Click());
        Assert.Equal([0, 40, 100], _fin.Session.Now.Design.Shape.Sections.Select(section => section.AtPercent));
        table.WaitForElements("tbody tr", 3);
        await table.InvokeAsync(() => table.Find("button[aria-label='take section 2 away']").Click());
        Assert.Equal([0, 100], _fin.Session.Now.Design.Shape.Sections.Select(section => section.AtPercent));
        await table.InvokeAsync(() => table.Find("#at---shape-sections-0--section").Change("nonsense"));
        table.WaitForAssertion(() => Assert.Contains("nonsense", table.Find("p.error").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void A_section_file_is_brought_in_and_a_broken_one_changes_nothing()
    {
        IRenderedComponent<SectionImport> import = _fin.Show<SectionImport>();
        IRenderedComponent<Microsoft.AspNetCore.Components.Forms.InputFile> file = import.FindComponent<Microsoft.AspNetCore.Components.Forms.InputFile>();
        file.UploadFiles(InputFileContent.CreateFromText("<b>no numbers</b>\n1 2 3 four\n", "bad.dat"));
        import.WaitForElement("p.error");
        Assert.Empty(_fin.Session.Now.Design.Shape.ImportedSections);
        file.UploadFiles(InputFileContent.CreateFromText(Wedge(), "wedge.dat"));
        import.WaitForAssertion(() => Assert.Equal("wedge", Assert.Single(_fin.Session.Now.Design.Shape.ImportedSections).Name));
        _fin.Session.Set("$.shape.sections[0].section", "wedge", "section");
        Assert.Equal(_fin.Session.Now.Version, _fin.Session.Now.ShapeVersion);
    }

    [Fact]
    public void In_german_with_inches_the_drawing_speaks_so()
    {
        using ShownFin german = new(PaperLanguage.German, PaperUnits.Inch);
        IRenderedComponent<PlanformDrawing> drawing = german.Show<PlanformDrawing>();
        Assert.Contains("Rumpf", drawing.Find("svg").TextContent, StringComparison.Ordinal);
        Assert.Equal("11,8 in", drawing.Find("[data-handle=span-0]").GetAttribute("aria-valuetext"));
    }

    // A lens of two parabolas, once round from the trailing edge.
    private static string Wedge()
    {
        IEnumerable<double> stations = Enumerable.Range(0, 41).Select(i => (1 + Math.Cos(Math.PI * i / 40)) / 2);
        IEnumerable<(double X, double Y)> up = stations.Select(x => (x, 0.2 * x * (1 - x) + 0.002)), down = stations.Reverse().Skip(1).Select(x => (x, -0.2 * x * (1 - x) - 0.002));
        return string.Join('\n', up.Concat(down).Select(p => FormattableString.Invariant($"{p.X:0.00000} {(p.X <= 0 ? 0 : p.Y):0.00000}")));
    }
}
