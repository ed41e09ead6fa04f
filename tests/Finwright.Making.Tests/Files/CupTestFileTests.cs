using System.Text;
using CsCheck;
using Finwright.Making.Files;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Files;

public sealed class CupTestFileTests
{
    private const string Rows = "0,22\n5,22.5\n10,23.4\n20,26\n30,31.5\n";

    private const string Good = "mass_g,100\nroom_celsius,21.5\ncup_diameter_mm,65\n" + Rows;

    [Theory]
    [InlineData(Good)]
    [InlineData("# my cup\n" + Good)]
    [InlineData("\uFEFFMass_g;100\r\nroom_celsius;21,5\r\ncup_diameter_mm;65;\r\n\r\nminutes;celsius\r\n0;22\r\n5;22,5\r\n10;23,4\r\n20;26\r\n30;31,5\r\n")]
    [InlineData("mass_g\t100\nroom_celsius\t21,5\ncup_diameter_mm\t65\n\"minutes\"\t\"celsius\"\n0\t22\n5\t22.5\n10\t23,4\n20\t26\n30\t31.5")]
    public void Every_way_of_writing_the_same_test_gives_the_same_numbers(string text)
    {
        CupTestReading reading = Read(text);
        Assert.Empty(reading.Findings);
        CupTest test = reading.Test!;
        Assert.Equal(0.1, test.Mass, 1e-12);
        Assert.Equal(294.65, test.RoomTemperature, 1e-9);
        Assert.Equal(0.065, test.CupDiameter, 1e-12);
        Assert.Equal(5, test.Readings.Count);
        Assert.Equal(1800, test.Readings[4].Seconds);
        Assert.Equal(304.65, test.Readings[4].Temperature, 1e-9);
    }

    [Theory]
    [InlineData("mass_g,100\n", "", "missing-field", null)]
    [InlineData("mass_g,100", "mass_g,100 g", "wrong-type", 1)]
    [InlineData("mass_g,100", "mass_g,0.1", "out-of-range", 1)]
    [InlineData("mass_g,100", "weight_g,100", "unknown-field", 1)]
    [InlineData("room_celsius,21.5", "room_celsius,21,5", "not-two-cells", 2)]
    [InlineData("room_celsius,21.5", "mass_g,90", "duplicate-field", 2)]
    [InlineData("10,23.4", "4,23.4", "time-order", 6)]
    [InlineData("10,23.4", "10,warm", "wrong-type", 6)]
    [InlineData("10,23.4", "10,2340", "out-of-range", 6)]
    [InlineData("\n0,22\n", "\n0,220\n", "hot-beginning", null)]
    [InlineData("10,23.4\n20,26\n30,31.5\n", "", "too-few-readings", null)]
    public void Read_says_what_is_wrong_and_where(string from, string to, string code, int? line)
    {
        CupTestReading reading = Read(Good.Replace(from, to, StringComparison.Ordinal));
        Assert.Null(reading.Test);
        Assert.Contains(reading.Findings, f => f.Code == code && f.Line == line && f.IsError && f.Remedy.Length > 0);
    }

    [Fact]
    public void All_mistakes_are_told_at_once()
    {
        CupTestReading reading = Read("mass_g,x\nroom_celsius,300\n0,22\n5,hot\n");
        Assert.Equal("wrong-type out-of-range wrong-type missing-field missing-field missing-field too-few-readings", string.Join(" ", reading.Findings.Select(f => f.Code)));
    }

    [Fact]
    public void Random_bytes_are_answered() =>
        Gen.Byte.Array[0, 400].Hold(bytes => Assert.NotEmpty(CupTestFile.Read(bytes).Findings), iter: 300);

    [Fact]
    public void Random_cells_are_answered()
    {
        string[] pieces = ["mass_g", "room_celsius", "cup_diameter_mm", ",", ";", "\t", "\n", "\n", "1", "22", "0.5", "-3", "#", "\"", "minutes", "celsius", " ", "1e9", "NaN"];
        Gen.Int[0, pieces.Length - 1].Array[0, 80].Hold(picks =>
        {
            CupTestReading reading = Read(string.Concat(picks.Select(p => pieces[p])));
            Assert.Equal(reading.Test is null, reading.Findings.Count > 0);
        }, iter: 2000);
    }

    private static CupTestReading Read(string text) => CupTestFile.Read(Encoding.UTF8.GetBytes(text));
}
