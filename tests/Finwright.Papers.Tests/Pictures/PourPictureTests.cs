using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Pictures;

public sealed class PourPictureTests
{
    private static readonly Tongue English = PictureFins.Speaking(PaperLanguage.English);

    [Fact]
    public void Ports_are_numbered_in_their_order_and_told_apart_by_shape()
    {
        foreach ((_, Func<AssessmentResult> made) in PictureFins.All)
            foreach (PartPoured part in made().Poured!.Parts)
            {
                Drawing drawing = SheetPictures.Pour(made(), part.Name, English, 0.17, 0.11);
                Assert.Equal(part.Ports.Count(port => port.IsFeed), drawing.Items.Count(item => item is DrawnArea && string.Equals(item.Layer, PourPicture.FeedLayer, StringComparison.Ordinal)));
                Assert.Equal(part.Ports.Count(port => !port.IsFeed), drawing.Items.Count(item => item is DrawnArea && string.Equals(item.Layer, PourPicture.VentLayer, StringComparison.Ordinal)));
                string[] numbered = [.. PictureFins.Words(drawing).Where(word => word.EndsWith(" feed", StringComparison.Ordinal) || word.EndsWith(" vent", StringComparison.Ordinal))];
                Assert.Equal(part.Ports.Select((port, index) => $"{index + 1} {(port.IsFeed ? "feed" : "vent")}"), numbered, StringComparer.Ordinal);
            }
    }

    [Theory]
    [InlineData(95)]
    [InlineData(40)]
    public void Water_stands_at_its_share_of_the_height(double percent)
    {
        AssessmentResult fin = MadeFins.Sandbar;
        AssessmentResult changed = fin with { Design = fin.Design! with { Pour = fin.Design.Pour with { Cooling = Cooling.WaterBath, BathLevelPercent = percent } } };
        Drawing drawing = SheetPictures.Pour(changed, fin.Poured!.Parts[0].Name, English, 0.17, 0.11);
        DrawnBox held = PictureFins.Layer(drawing, PourPicture.PartLayer), level = PictureFins.Layer(drawing, PourPicture.LevelLayer);
        Assert.Equal(level.From.Y, level.To.Y, 15);
        // The silhouette is true to a dot of 1400 along its longer side.
        double dot = Math.Max(held.Width, held.Height) / 1400 * 1.5;
        Assert.Equal(held.To.Y - percent / 100 * held.Height, level.From.Y, 2 * dot);
    }

    [Fact]
    public void Without_bath_and_reservoir_there_is_neither_water_nor_funnel()
    {
        AssessmentResult fin = MadeFins.Sandbar;
        string part = fin.Poured!.Parts[0].Name;
        AssessmentResult dry = fin with { Design = fin.Design! with { Pour = fin.Design.Pour with { Cooling = Cooling.StillAir, ReservoirMl = 0 } } };
        string[] wet = [.. SheetPictures.Pour(fin, part, English, 0.17, 0.11).Layers], bare = [.. SheetPictures.Pour(dry, part, English, 0.17, 0.11).Layers];
        Assert.Contains("funnel", wet, StringComparer.Ordinal);
        Assert.Contains("water", wet, StringComparer.Ordinal);
        Assert.DoesNotContain("funnel", bare, StringComparer.Ordinal);
        Assert.DoesNotContain("water", bare, StringComparer.Ordinal);
    }

    [Fact]
    public void A_part_keeps_its_proportions()
    {
        foreach ((_, Func<AssessmentResult> made) in PictureFins.All)
            foreach (PartPoured part in made().Poured!.Parts)
            {
                // Height and width along the part's own up and across it bound what is seen; height is seen whole.
                DrawnBox held = PictureFins.Layer(SheetPictures.Pour(made(), part.Name, English, 0.17, 0.11), PourPicture.PartLayer);
                DrawnBox small = PictureFins.Layer(SheetPictures.Pour(made(), part.Name, English, 0.09, 0.09), PourPicture.PartLayer);
                double[] heights = [.. made().Parts!.Parts.Single(one => string.Equals(one.Name, part.Name, StringComparison.Ordinal)).Mesh.Points().Select(p => part.Layers.ToLayers.Apply(p).Dot(part.Up) / part.Up.Length)];
                double height = heights.Max() - heights.Min(), scale = held.Height / height, inverse = scale >= 1 ? scale : 1 / scale;
                // The scale that is written is round: a whole or half number.
                Assert.Equal(Math.Round(2 * inverse) / 2, inverse, 0.02);
                Assert.Equal(held.Width / held.Height, small.Width / small.Height, 0.01 * held.Width / held.Height);
            }
    }

    [Fact]
    public void A_part_that_is_not_poured_is_refused() =>
        Assert.Throws<ArgumentException>(() => SheetPictures.Pour(MadeFins.Sandbar, "keel", English, 0.1, 0.1));
}
