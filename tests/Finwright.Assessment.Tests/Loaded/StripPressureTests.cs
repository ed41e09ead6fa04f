using Finwright.Assessment.Loaded;
using Finwright.Strength.Plates;
using Finwright.Water.Lifting;

namespace Finwright.Assessment.Tests.Loaded;

public sealed class StripPressureTests
{
    // Forces of a strip; one more for a vortex along the nose.
    private const int Forces = 6, PerStrip = Forces + 1;

    public static TheoryData<bool> Both => [false, true];

    [Theory]
    [MemberData(nameof(Both))]
    public void Of_every_strip_sums_to_its_force_and_moment(bool raked)
    {
        LoadedFin fin = raked ? LoadedFin.Raked : LoadedFin.Upright;
        LiftingResult result = fin.At(9, 5);
        IReadOnlyList<PlateLoad> loads = StripPressure.Of(result, fin.Surface);
        Assert.Equal(PerStrip * result.Strips.Count + 1, loads.Count);
        for (int i = 0; i < result.Strips.Count; i++)
        {
            StripResult strip = result.Strips[i];
            PlateLoad[] own = [.. loads.Skip(PerStrip * i).Take(Forces)];
            double force = strip.Load * strip.Width;
            Assert.Equal(force, own.Sum(load => load.Force), 1e-12 * Math.Abs(force) + 1e-15);
            // Nose up is against a force behind the quarter chord.
            Assert.Equal(strip.Moment * strip.Width, -own.Sum(load => load.Force * (load.X - strip.QuarterChord)), 1e-12 * Math.Abs(force) * strip.Chord + 1e-15);
            Assert.All(own, load => Assert.InRange(load.X, strip.QuarterChord - strip.Chord / 4, strip.QuarterChord + 3 * strip.Chord / 4));
        }
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void Of_the_whole_fin_sums_to_the_force_across_it_at_its_centre_of_effort(bool raked)
    {
        LoadedFin fin = raked ? LoadedFin.Raked : LoadedFin.Upright;
        LiftingResult result = fin.At(9, 5);
        IReadOnlyList<PlateLoad> loads = StripPressure.Of(result, fin.Surface);
        double force = loads.Sum(load => load.Force);
        Assert.Equal(result.ForceZ, force, 2e-3 * result.ForceZ);
        // The centre of effort is that of the force across the stream, drag and all: to 2 % of the span.
        Assert.Equal(result.CentreOfEffort!.Value.Y, loads.Sum(load => load.Force * load.Y) / force, 0.02 * fin.Surface.Fin.Span);
    }

    [Fact]
    public void Of_a_strip_without_moment_falls_off_from_the_nose()
    {
        LiftingResult result = LoadedFin.Upright.At(9, 4);
        StripResult strip = result.Strips[5] with { Moment = 0, Load = 1000 };
        PlateLoad[] own = [.. StripPressure.Of(result with { Strips = [strip], VortexForce = 0 }, LoadedFin.Upright.Surface).Take(Forces)];
        // Points at even angles carry 1 + cos θ: cot(θ/2) sin θ.
        for (int k = 1; k < Forces; k++)
            Assert.True(own[k].Force < own[k - 1].Force && own[k].Force > 0);
        Assert.Equal((1 + Math.Cos(Math.PI / 12)) / (1 + Math.Cos(3 * Math.PI / 12)), own[0].Force / own[1].Force, 1e-9);
    }

    [Fact]
    public void Times_scales_every_force()
    {
        PlateLoad[] loads = [new(0.1, 0.2, 3), new(0.2, 0.1, -4)];
        Assert.Equal([new(0.1, 0.2, 6), new(0.2, 0.1, -8)], StripPressure.Times(loads, 2));
    }
}
