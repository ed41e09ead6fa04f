using Finwright.Page.Shelf;
using Finwright.Workshop.Shelf;

namespace Finwright.Page.Tests.Shelf;

public sealed class RevisionTreeTests
{
    [Fact]
    public void What_goes_on_keeps_its_lane_and_what_branches_off_gets_its_own()
    {
        // 1 - 2 - 4, and 3 made from 1.
        IReadOnlyList<TreeRow> rows = RevisionTree.Of([Of(1, ""), Of(2, "Fin@1"), Of(3, "Fin@1"), Of(4, "Fin@2")]);
        Assert.Equal([4, 3, 2, 1], rows.Select(row => row.Revision.Number));
        Assert.Equal([0, 1, 0, 0], rows.Select(row => row.Lane));
        // The branch ends in the dot of revision 1, and passes by revision 2 on its own lane.
        Assert.Contains(new TreeLine(1, 0, 0, 0.5), rows[3].Lines);
        Assert.Contains(new TreeLine(1, 0, 1, 1), rows[2].Lines);
        Assert.Contains(new TreeLine(0, 0, 0, 1), rows[1].Lines);
    }

    [Fact]
    public void A_parent_of_another_design_begins_a_tree()
    {
        IReadOnlyList<TreeRow> rows = RevisionTree.Of([Of(1, "Other@3"), Of(2, "Fin@1")]);
        Assert.Equal([0, 0], rows.Select(row => row.Lane));
        Assert.Single(rows[1].Lines);
    }

    [Fact]
    public void Every_line_goes_on_in_the_row_below()
    {
        IReadOnlyList<TreeRow> rows = RevisionTree.Of([Of(1, ""), Of(2, "Fin@1"), Of(3, "Fin@1"), Of(4, "Fin@3"), Of(5, "Fin@1"), Of(6, "Fin@2")]);
        foreach ((TreeRow above, TreeRow below) in rows.Zip(rows.Skip(1)))
            Assert.Equal(above.Lines.Where(line => line.ToShare == 1).Select(line => line.ToLane).Order(), below.Lines.Where(line => line.FromShare == 0).Select(line => line.FromLane).Order());
    }

    private static Revision Of(int number, string parent) => new(number, 1, "Fin", number, parent, new('0', 64), "", DateTimeOffset.UnixEpoch, "test");
}
