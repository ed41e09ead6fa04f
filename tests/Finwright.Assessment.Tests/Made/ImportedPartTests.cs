using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Motion;

namespace Finwright.Assessment.Tests.Made;

public sealed class ImportedPartTests
{
    [Fact]
    public void Pores_of_a_box_are_what_walls_solid_layers_and_infill_leave()
    {
        // 0.2 %: the kernel and the inset round to a fraction of a micrometre, and corners are cut by as little.
        PartPoured part = Assert.Single(BoxPart.Cured.Poured!.Parts);
        Assert.Equal(BoxPart.ExactPores, part.Pores.Pores.Value, 2e-3 * BoxPart.ExactPores);
        Assert.Equal(BoxPart.X * BoxPart.Y * BoxPart.Z, part.Layers.EnvelopeVolume, 1e-6 * BoxPart.X * BoxPart.Y * BoxPart.Z);
        Assert.Equal(80, part.Layers.Layers.Count);
        Assert.True(part.IsImported);
    }

    [Fact]
    public void Cure_of_a_box_keeps_its_heat_together_and_its_resin_is_what_fills_the_pores()
    {
        PartCured part = Assert.Single(BoxPart.Cured.Cured!.Parts);
        Assert.True(part.IsWhole);
        Assert.Null(part.Water);
        // Heat made is heat stored and lost, to a per cent of what is made: the cure's own time steps.
        Assert.True(Math.Abs(part.Band.Nominal.Balance.Gap) < 0.01);
        Assert.True(part.Band.Nominal.Resin.Temperature > 293.15);
        Point3 place = part.HottestPlace;
        Assert.True(place.X is > 0 and < BoxPart.X && place.Y is > 0 and < BoxPart.Y && place.Z is > 0 and < BoxPart.Z);
    }

    [Fact]
    public void Pores_by_a_motion_file_are_the_envelope_less_what_it_lays()
    {
        MakingResult planned = BoxPart.Cured;
        PlatePrinted plate = planned.Printed!.Plates[0];
        double laid = 0.9 * plate.Time.Volume;
        MotionOfPlate held = new(plate, new MotionComparison(plate.Size, 80, laid, []), [], []);
        MakingResult byMotion = PouredByMotion.Of(planned, held, "plate.gcode");
        Assert.Equal(BoxPart.X * BoxPart.Y * BoxPart.Z - laid, byMotion.Poured!.Parts[0].Pores.Pores.Value, 1e-9 * laid);
        Assert.Equal("plate.gcode", byMotion.Motion!.File);
        Assert.Equal(plate.Time.Volume, byMotion.Motion.Planned);
        // More pores take more resin; reservoir and losses come beside.
        Assert.True(byMotion.Poured.Parts[0].Need.Total.Value > planned.Poured!.Parts[0].Need.Total.Value);
        Assert.Null(planned.Motion);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1e-3)]
    public void A_motion_file_that_lays_nothing_or_more_than_the_part_holds_is_an_error_and_changes_nothing(double laid)
    {
        MakingResult planned = BoxPart.Cured;
        PlatePrinted plate = planned.Printed!.Plates[0];
        MakingResult told = PouredByMotion.Of(planned, new(plate, new MotionComparison(plate.Size, 80, laid, []), [], []), "other.gcode");
        Assert.Same(planned.Poured, told.Poured);
        Assert.Null(told.Motion);
        Assert.Equal("other.gcode", Assert.Single(told.Findings, finding => finding.Code == "motion-not-this-part").Path);
    }

    [Fact]
    public void A_port_is_moved_to_the_nearest_skin_and_refused_when_it_lies_far_from_it()
    {
        MakingResult near = BoxPart.Make(BoxPart.Settings with { Ports = [new() { XMm = 16, YMm = -3, ZMm = 8 }, new() { XMm = 16, YMm = 28, ZMm = 8 }] }, AssessmentDepth.Pour);
        Assert.DoesNotContain(near.Findings, finding => finding.IsError);
        foreach (PouredPort port in near.Poured!.Parts[0].Ports)
        {
            Point3 mouth = near.Poured.Parts[0].InMesh(port.Port.Mouth);
            Assert.Equal(16e-3, mouth.X, 1e-6);
            // Behind a wall of 1 mm, within a cell of the grid and a step of the drill.
            Assert.Equal(1e-3, Math.Min(mouth.Y, BoxPart.Y - mouth.Y), 0.5e-3);
        }

        MakingResult far = BoxPart.Make(BoxPart.Settings with { Ports = [new() { XMm = 16, YMm = -12, ZMm = 8 }] }, AssessmentDepth.Pour);
        Assert.True(far.InputIsWrong);
        Assert.Null(far.Printed);
        Assert.Equal("port-off-skin", Assert.Single(far.Findings).Code);
    }
}
