using Finwright.Design;
using Finwright.Workshop.Library;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Library;

public sealed class LibraryTableTests : IDisposable
{
    private readonly TemporaryStore _place = new();
    private readonly WorkshopStore _store;

    public LibraryTableTests() => _store = _place.Open();

    public void Dispose()
    {
        _store.Dispose();
        _place.Dispose();
    }

    [Fact]
    public void What_is_kept_is_there_when_the_store_is_opened_again()
    {
        LibraryItem kept = _store.Library.Add(Board("Blue", 680));
        using WorkshopStore again = _place.Open();
        LibraryItem item = Assert.Single(again.Library.List(LibraryKind.Board));
        Assert.Equal((kept.Id, "Blue"), (item.Id, item.Name));
        DesignPart part = Assert.IsType<DesignPart>(LibraryFile.Read(item.Kind, item.Text).Content);
        Assert.Equal(680, part.Carrier.Brief.BoardWidthMm);
        Assert.Empty(again.Library.List(LibraryKind.Sail));
    }

    [Fact]
    public void Two_of_a_kind_never_share_a_name_whatever_its_capitals()
    {
        _store.Library.Add(Board("Blue", 680));
        Assert.Throws<StoreException>(() => _store.Library.Add(Board("BLUE", 700)));
        _store.Library.Add(DesignPart.Usual(LibraryKind.Sail, "Blue", ""));
        Assert.Equal("Blue 2", _store.Library.FreeName(LibraryKind.Board, "Blue"));
        Assert.Equal(2, _store.Library.List().Count);
    }

    [Fact]
    public void A_deleted_thing_comes_back_unless_its_name_was_given_away()
    {
        LibraryItem first = _store.Library.Add(Board("Blue", 680));
        _store.Library.Delete(first.Id);
        Assert.Empty(_store.Library.List());
        Assert.Equal(BinKind.Library, Assert.Single(_store.Bin.List()).Kind);
        LibraryItem second = _store.Library.Add(Board("Blue", 700));
        Assert.Throws<StoreException>(() => _store.Restore(BinKind.Library, first.Id));
        _store.Library.Change(second.Id, Board("Green", 700));
        _store.Restore(BinKind.Library, first.Id);
        Assert.Equal(["Blue", "Green"], _store.Library.List().Select(item => item.Name));
    }

    [Fact]
    public void A_thing_cannot_become_one_of_another_kind()
    {
        LibraryItem board = _store.Library.Add(Board("Blue", 680));
        Assert.Throws<StoreException>(() => _store.Library.Change(board.Id, DesignPart.Usual(LibraryKind.Sail, "Blue", "")));
        Assert.Throws<StoreException>(() => _store.Library.Add(Board(" ", 680)));
    }

    internal static DesignPart Board(string name, double width)
    {
        FinDesign blank = PartFields.Blank();
        return new(LibraryKind.Board, name, "measured", blank with { Brief = blank.Brief with { BoardWidthMm = width } });
    }
}
