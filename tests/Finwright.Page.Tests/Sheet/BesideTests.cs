using Bunit;
using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Sheet;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Tests.Sheet;

public sealed class BesideTests : IDisposable
{
    private const string Span = "$.shape.outline.span_mm";

    private readonly ShownFin _fin = new();

    public void Dispose() => _fin.Dispose();

    [Fact]
    public void A_revision_stands_beside_with_its_shape_at_once()
    {
        _fin.Session.Set(Span, 330.0, "span");
        using BesideBench bench = new(_fin.Desk, _fin.Session, _fin.View);
        bench.Put("Plain@1");
        Assert.Equal("Plain@1", _fin.View.Beside!.Label);
        Assert.Equal(300, _fin.View.Beside.Design.Shape.Outline.SpanMm);
        Assert.Equal(0.3, _fin.View.Beside.Shape.Planform!.Span, 9);
        bench.Put("");
        Assert.Null(_fin.View.Beside);
    }

    [Fact]
    public void What_is_not_on_the_shelf_is_said_and_nothing_stands_beside()
    {
        using BesideBench bench = new(_fin.Desk, _fin.Session, _fin.View);
        bench.Put("Nobody@3");
        Assert.Null(_fin.View.Beside);
        Assert.Contains("Nobody", bench.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void What_changed_is_told_old_beside_new()
    {
        using BesideBench bench = new(_fin.Desk, _fin.Session, _fin.View);
        bench.Put("Plain@1");
        _fin.Session.Set(Span, 330.0, "span");
        IRenderedComponent<ChangesTable> table = _fin.Show<ChangesTable>();
        string row = table.FindAll("tr").Single(line => line.QuerySelector("th")?.TextContent == "span").TextContent;
        Assert.Contains("300.0 mm", row, StringComparison.Ordinal);
        Assert.Contains("330.0 mm", row, StringComparison.Ordinal);
        Assert.Contains("+30.0 (+10 %)", row, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_design_beside_the_kept_revision_counts()
    {
        IRenderedComponent<ChangesTable> table = _fin.Show<ChangesTable>();
        Assert.Empty(table.FindAll("table"));
        _fin.Session.Set(Span, 270.0, "span");
        table.WaitForAssertion(() => Assert.Contains("revision 1", table.Find("h3").TextContent, StringComparison.Ordinal));
        Assert.Contains(table.FindAll("tr"), line => line.TextContent.Contains("270.0 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_name_goes_to_the_shelf_and_the_file_and_a_taken_one_is_refused()
    {
        FinDesign other = _fin.Session.Now.Design with { Name = "Other" };
        _fin.Desk.Change(store => store.Shelf.Add("Other", new(other, Picture: null, "", "test"), []));
        Assert.Throws<StoreException>(() => _fin.Session.Rename("Other"));
        Assert.Equal("Plain", _fin.Session.Name);
        _fin.Session.Rename(" Slim ");
        Assert.Equal("Slim", _fin.Session.Name);
        Assert.Equal("Slim", _fin.Session.Now.Design.Name);
        Assert.NotNull(_fin.Desk.Ask(store => store.Shelf.Find("Slim")));
    }
}
