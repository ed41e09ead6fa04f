namespace Finwright.Papers.Tests;

public sealed class PaperSizeTests
{
    [Fact]
    public void Letter_is_eight_and_a_half_by_eleven_inches()
    {
        // ANSI/ASME Y14.1, size A; an inch is 25.4 mm.
        Assert.Equal(8.5 * 25.4e-3, PaperSize.Letter.Width, 12);
        Assert.Equal(11 * 25.4e-3, PaperSize.Letter.Height, 12);
    }

    [Fact]
    public void Sides_of_A4_are_as_one_to_the_root_of_two()
    {
        // ISO 216: sides of the A series are 1 to the root of 2, rounded to whole millimetres.
        Assert.Equal(Math.Sqrt(2), PaperSize.A4.Height / PaperSize.A4.Width, 2);
    }
}
