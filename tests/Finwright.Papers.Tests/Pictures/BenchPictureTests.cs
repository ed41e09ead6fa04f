using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Pictures;

public sealed class BenchPictureTests
{
    private static readonly Tongue English = PictureFins.Speaking(PaperLanguage.English);

    [Fact]
    public void The_weight_hangs_at_its_distance_from_the_hull()
    {
        foreach ((_, Func<AssessmentResult> made) in PictureFins.All)
        {
            AssessmentResult fin = made();
            Drawing drawing = SheetPictures.Bench(fin, English, 0.17, 0.13);
            DrawnBox blade = PictureFins.Layer(drawing, BenchPicture.BladeLayer), hull = PictureFins.Layer(drawing, "hull");
            double scale = blade.Width / fin.Blade!.Span;
            DrawnStroke loop = drawing.Items.OfType<DrawnStroke>().Single(stroke => stroke.Closed && string.Equals(stroke.Layer, BenchPicture.WeightLayer, StringComparison.Ordinal));
            // The mean of a round's evenly spread corners is its middle.
            double middle = loop.Points.Average(p => p.X);
            double distance = fin.Design!.Prove.AtSpanPercent / 100 * fin.Blade.Span;
            Assert.Equal(distance, (middle - hull.From.X) / scale, 1e-6);
            Assert.Equal(blade.From.X, hull.From.X, 1e-9);
            Assert.Contains(English.Length(distance, 0), PictureFins.Words(drawing), StringComparer.Ordinal);
            Assert.Contains(English.Mass(fin.Design.Prove.MassKg), PictureFins.Words(drawing), StringComparer.Ordinal);
            // Widest chord over span, from the stations.
            double chord = Enumerable.Range(0, 1001).Select(i => fin.Blade.Span * i / 1000).Max(fin.Blade.Outline.TrailingEdge) - Enumerable.Range(0, 1001).Select(i => fin.Blade.Span * i / 1000).Min(fin.Blade.Outline.LeadingEdge);
            Assert.Equal(chord, blade.Height / scale, 1e-3 * chord);
        }
    }

    [Fact]
    public void Six_places_are_lettered_in_the_order_of_the_table()
    {
        foreach ((_, Func<AssessmentResult> made) in PictureFins.All)
        {
            Drawing drawing = SheetPictures.Bench(made(), English, 0.17, 0.13);
            Assert.Equal(BenchPicture.Letters, PictureFins.Words(drawing).Where(word => word.Length == 1), StringComparer.Ordinal);
            Assert.Equal(6, drawing.Items.Count(item => item is DrawnArea && string.Equals(item.Layer, BenchPicture.ReadLayer, StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void The_bent_blade_is_drawn_only_when_it_is_known()
    {
        AssessmentResult fin = MadeFins.Sandbar;
        Assert.Contains("bent", SheetPictures.Bench(fin, English, 0.17, 0.13).Layers, StringComparer.Ordinal);
        Assert.DoesNotContain("bent", SheetPictures.Bench(fin with { Bench = null }, English, 0.17, 0.13).Layers, StringComparer.Ordinal);
    }
}
