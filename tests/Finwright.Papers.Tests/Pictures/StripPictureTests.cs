using Finwright.Assessment;
using Finwright.Design;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Pictures;

public sealed class StripPictureTests
{
    private static readonly Tongue English = PictureFins.Speaking(PaperLanguage.English);

    [Fact]
    public void Slot_and_sheet_are_as_the_design_has_them()
    {
        AssessmentResult fin = MadeFins.Sandbar;
        Strip strip = fin.Design!.Shape.Strip!;
        Drawing drawing = SheetPictures.Strip(fin, English, 0.17, 0.11)!;
        DrawnBox slot = PictureFins.Layer(drawing, StripPicture.SlotLayer), sheet = PictureFins.Layer(drawing, StripPicture.SheetLayer);
        double scale = slot.Width / (1e-3 * strip.SlotDepthMm);
        Assert.Equal(1e-3 * (strip.SlotDepthMm + strip.OverhangMm), sheet.Width / scale, 1e-9);
        Assert.Equal(1e-3 * strip.OverhangMm, (sheet.To.X - slot.To.X) / scale, 1e-9);
        // The section has no camber and no twist: both lie level.
        Assert.Equal(1e-3 * (strip.SheetMm + strip.AllowanceMm), slot.Height / scale, 1e-6);
        Assert.Equal(1e-3 * strip.SheetMm, sheet.Height / scale, 1e-6);
        Assert.Equal(Math.Round(2 * scale) / 2, scale, 1e-6);
    }

    [Fact]
    public void A_fin_without_a_strip_has_no_picture_of_one() => Assert.Null(SheetPictures.Strip(MadeFins.Fairway, English, 0.17, 0.11));
}
