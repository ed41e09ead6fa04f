using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Parts;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;

namespace Finwright.Papers.Tests.Pictures;

public sealed class PlatePictureTests
{
    [Fact]
    public void Bed_and_parts_are_as_large_and_where_they_are_on_the_printer()
    {
        foreach ((_, Func<AssessmentResult> made) in PictureFins.All)
        {
            AssessmentResult fin = made();
            double bedX = 1e-3 * fin.Design!.Print.BedXMm, bedY = 1e-3 * fin.Design.Print.BedYMm, margin = 1e-3 * fin.Design.Print.EdgeMarginMm;
            foreach (Plate plate in fin.Parts!.Plates)
            {
                Drawing drawing = SheetPictures.Plate(fin, plate.Number, PictureFins.Speaking(PaperLanguage.English), 0.17, 0.11);
                DrawnBox bed = PictureFins.Layer(drawing, PlatePicture.BedLayer), room = PictureFins.Layer(drawing, PlatePicture.RoomLayer), parts = PictureFins.Layer(drawing, PlatePicture.PartLayer);
                double scale = bed.Width / bedX;
                Assert.Equal(bedY, bed.Height / scale, 12);
                Assert.Equal(bedX - 2 * margin, room.Width / scale, 12);
                Assert.Equal(bedY - 2 * margin, room.Height / scale, 12);

                Point3[] places = [.. plate.Parts.SelectMany(one => one.Part.Mesh.Points().Select(one.Placement.Apply))];
                // A silhouette is true to a dot, and the longest side of a part has 1400 of them.
                double dot = Math.Max(bedX, bedY) / 1400 * 1.5;
                Assert.Equal(places.Min(p => p.X), (parts.From.X - bed.From.X) / scale, dot);
                Assert.Equal(places.Max(p => p.X), (parts.To.X - bed.From.X) / scale, dot);
                // The front of the bed lies at the lower edge.
                Assert.Equal(places.Min(p => p.Y), (bed.To.Y - parts.To.Y) / scale, dot);
                Assert.Equal(places.Max(p => p.Y), (bed.To.Y - parts.From.Y) / scale, dot);
                Assert.All(plate.Parts, one => Assert.Contains(PictureFins.Speaking(PaperLanguage.English).Words.Names.Part(one.Part.Name), PictureFins.Words(drawing), StringComparer.Ordinal));
            }
        }
    }

    [Fact]
    public void A_plate_that_there_is_not_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SheetPictures.Plate(MadeFins.Sandbar, 99, PictureFins.Speaking(PaperLanguage.English), 0.1, 0.1));
}
