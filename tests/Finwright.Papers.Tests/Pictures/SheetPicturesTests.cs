using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Pictures;

public sealed class SheetPicturesTests
{
    // A column of an A4 page, half of it, the least room. German has the longer words.
    private static readonly (PaperLanguage Language, double Width, double Height)[] Rooms =
    [
        (PaperLanguage.English, 0.17, 0.11), (PaperLanguage.German, 0.082, 0.09), (PaperLanguage.German, 0.05, 0.05),
    ];

    [Fact]
    public void Every_picture_stays_within_its_room()
    {
        const double hair = 1e-9;
        foreach ((string fin, Func<AssessmentResult> made) in PictureFins.All)
            foreach ((PaperLanguage language, double width, double height) in Rooms)
                foreach ((string name, Drawing drawing) in PictureFins.Pictures(made(), PictureFins.Speaking(language), width, height))
                {
                    bool isBench = string.Equals(name, "bench", StringComparison.Ordinal);
                    double leastWidth = isBench ? PictureRoom.LeastBenchWidth : 0, leastHeight = isBench ? PictureRoom.LeastBenchHeight : 0;
                    DrawnBox box = drawing.Bounds;
                    Assert.True(
                        box.From.X >= -hair && box.From.Y >= -hair && box.To.X <= Math.Max(width, leastWidth) + hair && box.To.Y <= Math.Max(height, leastHeight) + hair,
                        $"{fin} {name} {language} in {width} by {height}: {box}");
                }
    }

    [Fact]
    public void Both_languages_have_their_own_words()
    {
        string[] same = ["T", .. BenchPicture.Letters, "A B C", "D E F", "Thermometer"];
        Dictionary<string, string> german = Words(MadeFins.Sandbar, PaperLanguage.German);
        foreach ((string picture, string words) in Words(MadeFins.Sandbar, PaperLanguage.English))
            Assert.NotEqual(words, german[picture], StringComparer.Ordinal);

        Dictionary<string, string> Words(AssessmentResult result, PaperLanguage language) =>
            PictureFins.Pictures(result, PictureFins.Speaking(language), 0.17, 0.11)
                .ToDictionary(one => one.Name, one => string.Join('|', PictureFins.Words(one.Drawing).Except(same, StringComparer.Ordinal).Where(word => word.Any(char.IsLetter)).Order(StringComparer.Ordinal)), StringComparer.Ordinal);
    }

    [Fact]
    public void The_same_fin_twice_gives_the_same_pictures()
    {
        AssessmentResult fin = MadeFins.Sandbar;
        Tongue tongue = PictureFins.Speaking(PaperLanguage.English);
        string[] Drawn() => [.. PictureFins.Pictures(fin, tongue, 0.17, 0.11).Select(one => one.Name + PictureFins.Svg(one.Drawing))];
        Assert.Equal(Drawn(), Drawn(), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(0.049, 0.1)]
    [InlineData(0.1, 0.049)]
    [InlineData(double.NaN, 0.1)]
    [InlineData(0.1, double.PositiveInfinity)]
    public void A_room_too_small_to_read_in_is_refused(double width, double height)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PictureRoom.Check(width, height));
        PictureRoom.Check(0.05, 0.05);
    }
}
