using CsCheck;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates.Tiling;

namespace Finwright.Papers.Tests.Tiling;

public sealed class TilePlanTests
{
    private const double Overlap = 10e-3, Hair = 1e-7;

    private static readonly Gen<TileRoom> Rooms = Gen.Select(Gen.Double[0.06, 0.4], Gen.Double[0.06, 0.4]).Select(sides => new TileRoom(sides.Item1, sides.Item2));

    private static readonly Gen<TilePlan> Plans = Gen.Select(Gen.Double[0.005, 1.2], Gen.Double[0.005, 1.2], Rooms, Rooms)
        .Select(given => Plan(given.Item1, given.Item2, given.Item3, given.Item4));

    [Fact]
    public void Tiles_cover_the_template_from_corner_to_corner() => Plans.Hold(plan =>
    {
        Assert.Equal(plan.Rows * plan.Columns, plan.Tiles.Count);
        Assert.Equal(0, plan.Tiles[0].Box.From.Length);
        Assert.Equal(plan.Width, plan.Tiles[^1].Box.To.X, Hair);
        Assert.Equal(plan.Height, plan.Tiles[^1].Box.To.Y, Hair);
        foreach (Tile tile in plan.Tiles)
        {
            if (plan.At(tile.Row, tile.Column + 1) is { } right)
                Assert.InRange(tile.Box.To.X - right.Box.From.X, Overlap - Hair, Overlap + Hair);
            if (plan.At(tile.Row + 1, tile.Column) is { } below)
                Assert.InRange(tile.Box.To.Y - below.Box.From.Y, Overlap - Hair, Overlap + Hair);
        }
    });

    [Fact]
    public void Every_tile_fits_its_page_and_none_of_several_is_a_sliver() =>
        Gen.Select(Gen.Double[0.005, 1.2], Gen.Double[0.005, 1.2], Rooms, Rooms).Hold((width, height, upright, landscape) =>
        {
            TilePlan plan = Plan(width, height, upright, landscape);
            TileRoom room = plan.IsLandscape ? landscape : upright;
            foreach (Tile tile in plan.Tiles)
            {
                Assert.InRange(tile.Box.Width, 0, room.Width + Hair);
                Assert.InRange(tile.Box.Height, 0, room.Height + Hair);
                if (plan.Columns > 1)
                    Assert.True(tile.Box.Width > Overlap + 20e-3);
                if (plan.Rows > 1)
                    Assert.True(tile.Box.Height > Overlap + 20e-3);
            }
        });

    [Fact]
    public void No_other_way_of_holding_the_paper_takes_fewer_sheets() =>
        Gen.Select(Gen.Double[0.005, 1.2], Gen.Double[0.005, 1.2], Rooms, Rooms).Hold((width, height, upright, landscape) =>
        {
            int standing = Sheets(width, upright.Width) * Sheets(height, upright.Height), lying = Sheets(width, landscape.Width) * Sheets(height, landscape.Height);
            TilePlan plan = Plan(width, height, upright, landscape);
            Assert.Equal(Math.Min(standing, lying), plan.Tiles.Count);
            double joinsStanding = Joins(width, height, upright), joinsLying = Joins(width, height, landscape);
            Assert.Equal(lying < standing || lying == standing && joinsLying < joinsStanding, plan.IsLandscape);
        });

    [Fact]
    public void A_join_runs_beside_what_should_stay_whole()
    {
        TileRoom room = new(0.17, 0.24);
        Assert.Equal(0.11, TilePlan.On(0.21, 0.2, room, isLandscape: false)!.Tiles[0].Box.To.X, Hair);
        // Where equal sheets would be cut, at 100 mm, there is a word; the second sheet, which lies on top, begins behind it.
        TilePlan plan = TilePlan.On(0.21, 0.2, room, isLandscape: false, [new(new(0.05, 0.01), new(0.131, 0.02))])!;
        Assert.Equal(0, plan.Broken);
        Assert.InRange(plan.Tiles[1].Box.From.X, 0.131 - Hair, 0.132 + Hair);
        Assert.Equal(0.01, plan.Tiles[0].Box.To.X - plan.Tiles[1].Box.From.X, Hair);
        Assert.Equal(0.21, plan.Tiles[1].Box.To.X, Hair);
        // No sheet is wide enough for this one.
        Assert.Equal(1, TilePlan.On(0.21, 0.2, room, isLandscape: false, [new(new(0, 0), new(0.21, 0.01))])!.Broken);
    }

    [Fact]
    public void Of_as_many_sheets_those_are_taken_that_break_less()
    {
        TileRoom upright = new(0.17, 0.24), landscape = new(0.26, 0.15);
        DrawnBox[] rows = [new(new(0, 0.01), new(0.2, 0.03)), new(new(0, 0.05), new(0.2, 0.12)), new(new(0, 0.14), new(0.2, 0.2))];
        TilePlan standing = TilePlan.On(0.2, 0.2, upright, isLandscape: false, rows)!, lying = TilePlan.On(0.2, 0.2, landscape, isLandscape: true, rows)!;
        Assert.Equal(3, standing.Broken);
        Assert.Equal(0, lying.Broken);
        Assert.Same(lying, TilePlan.Better(standing, lying));
    }

    [Fact]
    public void A_template_as_large_as_the_room_takes_one_sheet_and_a_millimetre_more_takes_two()
    {
        TileRoom upright = new(0.17, 0.24), landscape = new(0.25, 0.15);
        Assert.Single(Plan(0.17, 0.24, upright, landscape).Tiles);
        Assert.Equal(["A1", "B1"], Plan(0.171, 0.24, upright, landscape).Tiles.Select(tile => tile.Name), StringComparer.Ordinal);
        Assert.Equal(["A1", "A2", "B1", "B2"], Plan(0.3, 0.3, upright, upright).Tiles.Select(tile => tile.Name), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, "A1")]
    [InlineData(25, 11, "Z12")]
    [InlineData(26, 0, "AA1")]
    public void Rows_have_letters_and_columns_numbers(int row, int column, string name) => Assert.Equal(name, Tile.NameOf(row, column));

    [Fact]
    public void Paper_without_room_for_a_tile_is_refused() =>
        Assert.Throws<ArgumentException>(() => Plan(0.1, 0.1, new(0.2, 0.0599), new(0.0599, 0.2)));

    [Theory]
    [InlineData(0.0899, 0.1)]
    [InlineData(0.1, 0.1101)]
    [InlineData(double.NaN, 0.1)]
    public void A_reading_that_cannot_be_a_printers_scale_is_refused(double across, double down) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PrinterScale.Of(new(across, down)));

    private static TilePlan Plan(double width, double height, TileRoom upright, TileRoom landscape) =>
        TilePlan.Better(TilePlan.On(width, height, upright, isLandscape: false), TilePlan.On(width, height, landscape, isLandscape: true));

    private static double Joins(double width, double height, TileRoom room) => (Sheets(width, room.Width) - 1) * height + (Sheets(height, room.Height) - 1) * width;

    // Counted: one more sheet adds its length less the overlap.
    private static int Sheets(double length, double room)
    {
        int sheets = 1;
        for (double reach = room; reach < length - 1e-8; reach += room - Overlap)
            sheets++;
        return sheets;
    }
}
