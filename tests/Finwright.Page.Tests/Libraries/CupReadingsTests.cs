using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Page.Libraries;
using Finwright.Workshop.Library;

namespace Finwright.Page.Tests.Libraries;

public sealed class CupReadingsTests
{
    [Theory]
    [InlineData("0; 21,5\n10; 22\n20; 23\n30; 25\n40; 30")]
    [InlineData("0, 21.5\n10, 22\n20, 23\n30, 25\n40, 30")]
    [InlineData("0 21.5\n10 22\n20 23\n\n30 25\n40 30\n")]
    [InlineData("0\t21,5\r\n10\t22\r\n20\t23\r\n30\t25\r\n40\t30")]
    public void Rows_are_read_however_they_are_typed(string rows)
    {
        CupTestReading reading = new CupReadings { Rows = rows, MassGrams = "120,5" }.Read();
        Assert.Empty(reading.Findings);
        Assert.Equal(0.1205, reading.Test!.Mass, 9);
        Assert.Equal((600, 273.15 + 22), (reading.Test.Readings[1].Seconds, reading.Test.Readings[1].Temperature));
        Assert.Equal(273.15 + 21.5, reading.Test.Readings[0].Temperature, 9);
    }

    [Fact]
    public void A_row_that_is_none_is_said_with_its_line()
    {
        CupTestReading reading = new CupReadings { Rows = "0; 21\n10; warm\n20; 23\n30; 25\n40; 30" }.Read();
        Assert.Null(reading.Test);
        Assert.Contains(reading.Findings, finding => finding.Line == 5 && finding.Message.Contains("warm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_brought_in_fills_the_form_and_a_wrong_one_leaves_it()
    {
        CupReadings cup = new();
        Assert.Empty(cup.Take("mass_g,80\nroom_celsius,19\ncup_diameter_mm,60\n0,20\n10,21\n20,23\n30,26\n40,33\n"u8));
        Assert.Equal(("80", "19", "60"), (cup.MassGrams, cup.RoomCelsius, cup.DiameterMm));
        Assert.Empty(cup.Read().Findings);
        Assert.NotEmpty(cup.Take("mass_g,80\n"u8));
        Assert.Equal(5, cup.Rows.Split('\n').Length);
    }

    // The cup of a resin twice as fast is computed with the model itself; the fit starts from the slow one. Tolerance: the doubt that the fit itself states.
    [Fact]
    public void A_cup_of_a_resin_twice_as_fast_is_told_and_kept_as_a_resin_that_can_be_taken()
    {
        ResinSystem slow = ResinLibrary.Get("laminating-slow");
        ResinSystem fast = slow with { Kinetics = slow.Kinetics with { Rate1 = 2 * slow.Kinetics.Rate1, Rate2 = 2 * slow.Kinetics.Rate2 } };
        CupRun cup = CupModel.Solve(new() { Resin = fast, Mass = 0.1, Diameter = 0.07, StartTemperature = 294.15, RoomTemperature = 293.15, Duration = 3 * 3600 }, TestContext.Current.CancellationToken);
        CupReadings readings = new() { Rows = string.Join('\n', Enumerable.Range(0, 25).Select(i => FormattableString.Invariant($"{5 * i}; {cup.TemperatureAt(300 * i) - 273.15:0.00}"))) };
        CupFitResult fit = CupFit.Solve(slow, readings.Read().Test!, TestContext.Current.CancellationToken);
        Assert.Equal(CupFitStatus.Fitted, fit.Status);
        Assert.InRange(2, fit.RateFactor.Low, fit.RateFactor.High);
        KeptResin kept = CupReadings.Kept(fit, "Harz der Werkstatt", "from a cup");
        Assert.Equal("harz-der-werkstatt", kept.Resin.Name);
        LibraryReading back = LibraryFile.Read(LibraryKind.Resin, kept.Write());
        Assert.DoesNotContain(back.Findings, finding => finding.IsError);
        Assert.Equal(fit.Resin.Kinetics.Rate1, Assert.IsType<KeptResin>(back.Content).Resin.Kinetics.Rate1, 1e-6 * fit.Resin.Kinetics.Rate1);
        CupPlot plot = new(fit.Residuals, new(new() { Date = new(2027, 1, 1), ProgramVersion = "test" }));
        Assert.Equal(25, plot.Marks.Count);
        Assert.StartsWith("M", plot.Line, StringComparison.Ordinal);
    }
}
