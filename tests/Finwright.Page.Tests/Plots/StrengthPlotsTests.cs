using Finwright.Assessment.Loaded;
using Finwright.Page.Plots;
using Finwright.Strength.Margins;
using Finwright.Water.Sailing;

namespace Finwright.Page.Tests.Plots;

public sealed class StrengthPlotsTests
{
    private static readonly FinLoaded Loaded = MadeFin.Sailing.Loaded!;

    [Fact]
    public void Deflection_ends_at_the_tip_of_the_answer_and_starts_with_what_the_root_gives()
    {
        PlotSheet sheet = new StrengthPlots(MadeFin.Reader()).Deflection(Loaded, MadeFin.Sailing.Bench?.Prediction, ("the other", Loaded))!;
        CaseLoaded cruise = Loaded[LoadCaseKind.Cruise]!;
        PlotLine line = sheet.Lines[0];
        Assert.Equal("cruise", line.Name);
        Assert.Equal(1e3 * cruise.Tip.MidChord, line.Points[^1].Y, 1e-9);
        Assert.True(line.Points[0].Y < 0.1 * line.Points[^1].Y);
        Assert.Equal(line.Points, Assert.Single(sheet.Lines, own => own.IsGhost).Points);
        Assert.Contains(sheet.Lines, own => own.Name.EndsWith("on the bench", StringComparison.Ordinal));
    }

    [Fact]
    public void The_most_used_place_of_the_walls_is_that_of_their_verdict()
    {
        CaseLoaded overload = Loaded[LoadCaseKind.Overload]!;
        StressPeak worst = overload.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers).MinBy(peak => peak.Reserve)!;
        WallUseAlong most = WallUseAlong.Of(Loaded.Structure!, overload.Plate).MaxBy(place => place.Use);
        // Both look at the same grid of places; the verdict may also look at one side alone.
        Assert.Equal(1 / worst.Reserve, most.Use, 1e-9 / worst.Reserve);
        Assert.Equal(worst.Y, most.Depth, 1e-9);
        PlotSheet sheet = new StrengthPlots(MadeFin.Reader()).WallUse(Loaded)!;
        Assert.Equal(100 / worst.Reserve, sheet.Lines.Single(line => line.Name == "gust or landing").Points.Max(point => point.Y), 1e-6);
    }

    [Fact]
    public void Frequencies_in_water_lie_below_those_in_air()
    {
        PlotSheet sheet = new StrengthPlots(MadeFin.Reader()).Frequencies(MadeFin.Sailing.Vibration!)!;
        Assert.True(sheet.Y.IsLogarithmic);
        Assert.All(sheet.Lines[0].Points.Zip(sheet.Lines[1].Points), pair => Assert.True(pair.Second.Y < pair.First.Y));
        Assert.Equal(MadeFin.Sailing.Vibration!.Eddies!.High, sheet.Limits[0].To);
    }
}
