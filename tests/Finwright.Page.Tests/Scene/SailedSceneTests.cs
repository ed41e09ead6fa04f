using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Geometry.Blades;
using Finwright.Page.Editing;
using Finwright.Page.Scene;
using Finwright.Strength.Margins;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Page.Tests.Scene;

public sealed class SailedSceneTests(KnownFin fin)
{
    [Fact]
    public void Pressure_over_the_skin_adds_up_to_what_the_strips_carry()
    {
        CaseAfloat cruise = fin.Sailed.Sailing!.Afloat![LoadCaseKind.Cruise]!;
        BladePressure pressure = BladePressure.Of(fin.Sailed.Sailing, cruise, TestContext.Current.CancellationToken)!;
        Assert.Equal(pressure.Asked, pressure.Solved.Count);
        double carried = 0, found = 0;
        foreach (StripResult strip in cruise.UnderHull.Result.Strips.Where(strip => strip.Depth > 0.1 * 0.16 && strip.Depth < 0.85 * 0.16))
        {
            const int steps = 400;
            double sum = 0;
            for (int i = 0; i < steps; i++)
            {
                // Even steps of the angle, as the pressure is steep at the nose.
                double angle = (i + 0.5) * Math.PI / steps, share = (1 - Math.Cos(angle)) / 2;
                sum += (pressure.At(share, strip.Depth, isStarboard: false) - pressure.At(share, strip.Depth, isStarboard: true)) * Math.Sin(angle) / 2 * Math.PI / steps;
            }

            // One table of one depth stands for all sections in the lifting surface; toward root and tip the flow is not that of a section: 15 %.
            Assert.Equal(strip.Load, sum * strip.Chord, 0.15 * Math.Abs(strip.Load));
            (carried, found) = (carried + strip.Load * strip.Width, found + sum * strip.Chord * strip.Width);
        }

        Assert.Equal(carried, found, 0.08 * Math.Abs(carried));
    }

    [Fact]
    public void Suction_is_on_the_side_to_which_the_fin_pulls()
    {
        DrawnScene scene = Draw(fin.Sailed, Surface.Pressure);
        Assert.True(scene.IsThere);
        SceneReading read = new(scene.File);
        float[] values = read.Floats(read.Part("blade"), "value"), places = read.Floats(read.Part("blade"), "position");
        Assert.True(fin.Sailed.Sailing!.Afloat![LoadCaseKind.Cruise]!.UnderHull.Result.SideForce > 0);
        double starboard = 0, port = 0;
        for (int i = 0; i < values.Length; i++)
        {
            if (places[3 * i + 2] > 1e-3)
                starboard += values[i];
            else if (places[3 * i + 2] < -1e-3)
                port += values[i];
        }

        Assert.True(starboard < port);
        // Nothing pushes harder than the stream brought to rest.
        double most = fin.Sailed.Sailing.Afloat[LoadCaseKind.Cruise]!.UnderHull.Result.Flow.DynamicPressure / 1e3;
        Assert.InRange(values.Max(), 0.5 * most, 1.02 * most);
    }

    [Fact]
    public void The_bent_tip_goes_as_far_as_the_loaded_blade_says()
    {
        DrawnScene scene = Draw(fin.Sailed, Surface.Bent);
        CaseLoaded own = fin.Sailed.Sailing!.Loaded![LoadCaseKind.Overload]!;
        Assert.True(own.HasNumbers);
        SceneReading read = new(scene.File);
        float[] places = read.Floats(read.Part("blade"), "position"), shifts = read.Floats(read.Part("blade"), "shift"), values = read.Floats(read.Part("blade"), "value");
        Blade blade = fin.Sailed.Sailing.Blade!;
        int tip = Enumerable.Range(0, values.Length).MaxBy(i => places[3 * i + 1]);
        // The tip's edge is short: its middle moves as its ends do, to a hundredth.
        double expected = own.Plate.Deflection(places[3 * tip], blade.Span);
        Assert.Equal(expected, shifts[3 * tip + 2], 1e-6);
        Assert.Equal(own.Tip.MidChord, shifts[3 * tip + 2], 0.1 * Math.Abs(own.Tip.MidChord));
        Assert.Equal(1e3 * Math.Abs(expected), values[tip], 1e-3);
        Assert.Contains(scene.Exaggeration!.Value, new double[] { 1, 2, 5, 10, 20, 50 });
        int root = Enumerable.Range(0, values.Length).MinBy(i => places[3 * i + 1]);
        Assert.True(values[root] < 0.2 * values[tip]);
    }

    [Fact]
    public void The_walls_use_most_where_their_peak_is()
    {
        DrawnScene scene = Draw(fin.Sailed, Surface.Stress);
        SceneReading read = new(scene.File);
        float[] values = read.Floats(read.Part("blade"), "value");
        double greatest = 100 / fin.Sailed.Sailing!.Loaded![LoadCaseKind.Overload]!.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers).Min(peak => peak.Reserve);
        // The peak is judged on a grid half as fine as the one that is shown.
        Assert.Equal(greatest, values.Max(), 0.05 * greatest);
        Assert.True(scene.Legend!.Scale.Last >= greatest);
    }

    [Fact]
    public void Another_case_is_another_picture()
    {
        DrawnScene cruise = FinScene.Of(fin.Sailed, new(Surface.Bent) { Case = LoadCaseKind.Cruise }, fin.Reader, TestContext.Current.CancellationToken)!, overload = Draw(fin.Sailed, Surface.Bent);
        Assert.Equal(LoadCaseKind.Cruise, cruise.Case);
        Assert.NotEqual(cruise.Says, overload.Says);
        Assert.Contains(LoadCaseKind.TopSpeed, cruise.Cases);
    }

    [Theory]
    [InlineData(Surface.Pressure)]
    [InlineData(Surface.Stress)]
    [InlineData(Surface.Bent)]
    [InlineData(Surface.Warmth)]
    [InlineData(Surface.Air)]
    [InlineData(Surface.Parts)]
    public void What_is_not_known_yet_is_said_and_the_plain_fin_stands_in(Surface surface)
    {
        DrawnScene scene = Draw(fin.Shaped, surface);
        Assert.False(scene.IsThere);
        Assert.Contains("still being worked out", scene.Note, StringComparison.Ordinal);
        SceneReading read = new(scene.File);
        Assert.NotEmpty(read.Floats(read.Part("blade"), "position"));
        Assert.Contains("stopped", Draw(fin.Shaped with { IsStopped = true }, surface).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_old_is_said_and_the_new_outline_is_drawn()
    {
        DrawnScene scene = Draw(fin.Sailed with { Version = 2, ShapeVersion = 2 }, Surface.Bent);
        Assert.Contains("Before the last change", scene.Note, StringComparison.Ordinal);
        Assert.Equal(1, scene.Version);
        Assert.NotEmpty(new SceneReading(scene.File).Floats(new SceneReading(scene.File).Part("now"), "position"));
    }

    [Fact]
    public void What_is_pointed_at_lights_up()
    {
        DrawnScene plain = Draw(fin.Shaped, Surface.Plain), section = FinScene.Of(fin.Shaped, new(Surface.Plain) { Place = "$.shape.sections[0].thickness_percent" }, fin.Reader, TestContext.Current.CancellationToken)!;
        Assert.DoesNotContain(new SceneReading(plain.File).Parts, part => part.GetProperty("tone").GetString() == "move");
        Assert.Contains(new SceneReading(section.File).Parts, part => part.GetProperty("tone").GetString() == "move");
    }

    [Fact]
    public void The_fin_made_clear_shows_its_hardware()
    {
        DrawnScene inside = FinScene.Of(fin.Shaped, new(Surface.Plain) { Inside = true }, fin.Reader, TestContext.Current.CancellationToken)!;
        SceneReading read = new(inside.File);
        Assert.Contains(read.Parts, part => part.GetProperty("tone").GetString() == "metal");
        Assert.Contains(read.Parts, part => part.GetProperty("tone").GetString() == "clear");
    }

    private DrawnScene Draw(Standing standing, Surface surface) => FinScene.Of(standing, new(surface), fin.Reader, TestContext.Current.CancellationToken)!;
}
