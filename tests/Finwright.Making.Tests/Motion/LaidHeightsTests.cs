using System.Globalization;
using System.Text;
using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

public sealed class LaidHeightsTests
{
    [Fact]
    public void Layers_are_the_heights_at_which_plastic_is_laid_whatever_hops_between()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 1; i <= 5; i++)
        {
            // A hop of 0.6 mm in the middle of each layer, and one down below it.
            string z = (0.2 * i).ToString("0.###", CultureInfo.InvariantCulture), hop = (0.2 * i + 0.6).ToString("0.###", CultureInfo.InvariantCulture);
            text.Append(MotionText.Square(0.2 * i)).Append(CultureInfo.InvariantCulture, $"G1 E-1\nG1 Z{hop}\nG0 X60 Y60\nG1 Z{z}\nG1 E1\nG1 X80 F1200 E0.5\n");
        }

        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.Equal([0.2, 0.4, 0.6, 0.8, 1.0], s.Layers.Select(l => Math.Round(l.Height * 1e3, 6)));
        // Four sides of 40 mm with 1 mm each, one line of 20 mm with 0.5 mm.
        Assert.All(s.Layers, l => Assert.Equal(4.5e-3 * MotionText.Filament, l.Volume, 1e-18));
        Assert.All(s.Layers, l => Assert.Equal(0.180, l.LaidLength, 1e-12));
        Assert.Empty(s.Spirals);
        Assert.False(s.ReturnsToLowerHeights);
        // The move that leaves a layer is the hop back to the next square, right after its last line.
        Assert.Equal(4, s.Layers[0].LeavingLine);
        Assert.Equal(4 + 12, s.Layers[1].LeavingLine);
    }

    [Theory]
    [InlineData("0.######")]
    [InlineData("0.##")] // heights rounded so that many pieces of the spiral look level
    public void Continuous_rise_is_one_spiral(string format)
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        text.Append(MotionText.Square(0.2)).Append(MotionText.Square(0.4));
        const int Turns = 50, Steps = 90;
        for (int i = 1; i <= Turns * Steps; i++)
        {
            double angle = 2 * Math.PI * i / Steps, z = 0.4 + 0.2 * i / Steps;
            text.Append(CultureInfo.InvariantCulture, $"G1 X{100 - 50 * Math.Cos(angle):0.###} Y{50 + 20 * Math.Sin(angle):0.###} Z{z.ToString(format, CultureInfo.InvariantCulture)} E0.1\n");
        }

        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.Equal(2, s.Layers.Count);
        MotionSpiral spiral = Assert.Single(s.Spirals);
        // From the second layer's height by 50 turns of 0.2 mm; 4500 pieces of 0.1 mm of filament.
        Assert.Equal(0.0004, spiral.From, 1.1e-5);
        Assert.Equal(0.0104, spiral.To, 1e-9);
        Assert.Equal(450e-3 * MotionText.Filament, spiral.Volume, 0.002 * 450e-3 * MotionText.Filament);
        Assert.Equal(458e-3 * MotionText.Filament, s.PartVolume, 1e-15);
    }

    [Fact]
    public void Ramp_at_the_seam_belongs_to_its_layer()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 1; i <= 10; i++)
        {
            double z = 0.2 * i;
            text.Append(CultureInfo.InvariantCulture, $"G0 X50 Y50 F6000\nG1 Z{z - 0.2:0.###}\nG1 X55 Z{z - 0.1:0.###} E0.1 F1200\nG1 X60 Z{z:0.###} E0.1\nG1 X90 E1\nG1 Y90 E1\nG1 X50 E1\nG1 Y50 E1\n");
        }

        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.Equal(10, s.Layers.Count);
        Assert.Empty(s.Spirals);
        Assert.All(s.Layers, l => Assert.Equal(4.2e-3 * MotionText.Filament, l.Volume, 1e-18));
    }

    [Fact]
    public void Parts_printed_one_after_another_are_told()
    {
        string first = string.Concat(Enumerable.Range(1, 8).Select(i => MotionText.Square(0.2 * i))), second = string.Concat(Enumerable.Range(1, 7).Select(i => MotionText.Square(0.2 * i, 40, 150)));
        MotionSummary s = MotionText.Summary("G21\nM83\n" + first + second);
        Assert.True(s.ReturnsToLowerHeights);
        Assert.Equal(8, s.Layers.Count);
        Assert.All(s.Layers.Take(7), l => Assert.Equal(8e-3 * MotionText.Filament, l.Volume, 1e-18));
        Assert.Equal(4e-3 * MotionText.Filament, s.Layers[7].Volume, 1e-18);
        Assert.False(MotionText.Summary("G21\nM83\n" + first).ReturnsToLowerHeights);
    }

    [Fact]
    public void Priming_line_and_skirt_are_told_apart_and_make_no_layer()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        // A priming line at 0.3 mm in the corner, a skirt 5 mm away from the part, and the part.
        text.Append("G1 Z0.3 F600\nG0 X2 Y2\nG1 X102 E10 F1200\nG1 E-1\n");
        text.Append("G1 Z0.2\nG0 X45 Y45\nG1 E1\nG1 X95 E2 F1200\nG1 Y95 E2\nG1 X45 E2\nG1 Y45 E2\n");
        for (int i = 1; i <= 10; i++)
            text.Append(MotionText.Square(0.2 * i));
        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.NotNull(s.Apart);
        Assert.Equal(18e-3 * MotionText.Filament, s.Apart.Volume, 1e-18);
        Assert.Equal(0.300, s.Apart.LaidLength, 1e-12);
        Assert.Equal(0.050, s.PartBox!.Value.Minimum.X, 1e-12);
        Assert.Equal(0.090, s.PartBox!.Value.Maximum.Y, 1e-12);
        Assert.Equal(10, s.Layers.Count);
        Assert.Equal(40e-3 * MotionText.Filament, s.PartVolume, 1e-17);
        Assert.Equal(58e-3 * MotionText.Filament, s.PlasticVolume, 1e-17);
        Assert.Equal(0.0012, s.UpperBox!.Value.Minimum.Z, 2.1e-4);
    }

    [Fact]
    public void Brim_belongs_to_the_part_but_not_to_the_box_above()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 0; i < 10; i++)
            text.Append(MotionText.Square(0.2, 40 + 0.9 * i, 50 - 0.45 * i));
        for (int i = 2; i <= 20; i++)
            text.Append(MotionText.Square(0.2 * i));
        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.Null(s.Apart);
        Assert.Equal(0.050 - 9 * 0.00045, s.PartBox!.Value.Minimum.X, 1e-12);
        Assert.Equal(0.050, s.UpperBox!.Value.Minimum.X, 1e-12);
    }

    [Fact]
    public void Wide_lowest_layer_of_a_tapering_part_is_no_skirt()
    {
        // Each layer 3 mm smaller all round than the one below, filled with lines 0.5 mm apart: a flat pyramid.
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 0; i < 12; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{0.2 * (i + 1):0.###} F600\n");
            for (int j = 0; j <= 2 * (80 - 6 * i); j++)
                text.Append(CultureInfo.InvariantCulture, $"G0 X{50 + 3 * i} Y{50 + 3 * i + 0.5 * j:0.#} F6000\nG1 X{130 - 3 * i} E1 F1200\n");
        }

        MotionSummary s = MotionText.Summary(text.ToString());
        Assert.Null(s.Apart);
        Assert.Equal(12, s.Layers.Count);
        Assert.Equal(0.080, s.PartBox!.Value.Size.X, 1e-12);
    }

    [Fact]
    public void File_of_one_layer_cannot_tell_a_skirt()
    {
        MotionReading reading = MotionText.Read("G21\nM83\n" + MotionText.Square(0.2) + MotionText.Square(0.2, 60, 40));
        Assert.Contains(reading.Findings, f => f.Code is "part-not-told");
        Assert.Null(reading.Summary!.Apart);
        Assert.Equal(0.060, reading.Summary.PartBox!.Value.Size.X, 1e-12);
    }

    [Fact]
    public void Low_part_of_several_layers_is_told_from_its_skirt()
    {
        MotionSummary s = MotionText.Summary("G21\nM83\n" + MotionText.Square(0.2, 60, 40) + MotionText.Square(0.2) + MotionText.Square(0.4) + MotionText.Square(0.6));
        Assert.Equal(4e-3 * MotionText.Filament, s.Apart!.Volume, 1e-18);
        Assert.Equal(0.040, s.PartBox!.Value.Size.X, 1e-12);
        Assert.Equal(3, s.Layers.Count);
    }
}
