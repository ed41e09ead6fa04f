using Finwright.Page.Drawings;

namespace Finwright.Page.Tests.Drawings;

public sealed class SheetBoxTests
{
    [Fact]
    public void The_box_keeps_still_while_the_hand_moves_and_fits_again_when_it_rests()
    {
        SheetBox box = default(SheetBox).Holding(-10, -90, 250, 310, moves: false);
        Assert.Equal("-20 -100 280 420", box.Text);
        Assert.Equal(box, box.Holding(-5, -80, 120, 200, moves: true));
        SheetBox grown = box.Holding(-10, -90, 250, 345, moves: true);
        Assert.True(grown.Bottom >= 345 && grown.Left == box.Left && grown.Top == box.Top);
        Assert.True(grown.Holding(-5, -80, 120, 200, moves: false).Height < box.Height);
    }
}
