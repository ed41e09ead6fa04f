namespace Finwright.Design.Tests;

public sealed class DesignReaderTests
{
    [Theory]
    [InlineData(Examples.Small)]
    [InlineData(Examples.Full)]
    public void Read_a_good_design_finds_nothing(string text)
    {
        DesignReading reading = DesignReader.Read(text);

        Assert.Empty(reading.Findings);
        Assert.NotNull(reading.Design);
    }

    [Fact]
    public void Read_takes_each_value_from_its_key()
    {
        FinDesign design = DesignReader.Read(Examples.Full).Design!;

        Assert.Equal("Ebb tide, wide", design.Name);
        Assert.Equal(74.5, design.Brief.RiderMassKg);
        Assert.Equal(310, design.Brief.SideForceN);
        Assert.Equal(4.5, design.Brief.GettingGoingSpeedMPerS);
        Assert.Equal(290, design.Shape.Outline.AreaCm2);
        Assert.Equal(OutlineFamily.WideDelta, design.Shape.Outline.Family);
        Assert.Equal("naca-0010-35 estuary naca-16-009", string.Join(" ", design.Shape.Sections.Select(section => section.Section)));
        Assert.Equal([0.7, -0.03], design.Shape.ImportedSections[0].Points[7]);
        Assert.Equal(Thread.M6, design.Base.Measured!.Bolts[1].Thread);
        Assert.Equal(4, design.Base.Measured.Bolts[0].LeanDegrees);
        Assert.Equal(NutKind.Square, design.Hardware.ClampRods[1].Nut);
        Assert.Equal(ChordPlace.LeadingEdge, design.Prove.AtChord);
    }
}
