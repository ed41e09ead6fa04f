using System.Text;
using CsCheck;
using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;

namespace Finwright.Strength.Tests.Files;

public sealed class BenchReadingsTests
{
    private const string Header = "mass_kg,at_mm,at_chord,read_at_mm,read_chord,deflection_mm,twist_degrees,note\n";

    [Fact]
    public void Read_a_plain_file_gives_its_lines_with_what_is_left_out()
    {
        BenchReadingsContent content = Read("# my bench\n\n" + Header + "15,90,mid-chord,180,leading-edge,2.5,-0.4,\"left, then \"\"right\"\"\"\n10,120,trailing-edge,,,3,,\n");
        Assert.Empty(content.Findings);
        BenchReadingLine first = content.Lines[0], second = content.Lines[1];
        Assert.Equal((4, 15.0, 90.0, ChordPlace.MidChord, 180.0, ChordPlace.LeadingEdge, "left, then \"right\""), (first.Line, first.MassKg, first.AtMm, first.AtChord, first.ReadAtMm, first.ReadChord, first.Note));
        // 0.1 mm or 0.1 degrees, and 2 % of the reading, as independent errors.
        Assert.Equal(2.5, first.DeflectionMm!.Value.Value);
        Assert.Equal(Math.Sqrt(0.01 + 0.0025), first.DeflectionMm.Value.Deviation, 1e-12);
        Assert.Equal(-0.4, first.TwistDegrees!.Value.Value);
        Assert.Equal(Math.Sqrt(0.01 + 0.000064), first.TwistDegrees.Value.Deviation, 1e-12);
        // Read where it hangs, when the columns say nothing.
        Assert.Equal((120, ChordPlace.TrailingEdge), (second.ReadAtMm, second.ReadChord));
        Assert.Null(second.TwistDegrees);
    }

    [Fact]
    public void Measurements_are_in_SI_and_one_each_for_deflection_and_twist()
    {
        BenchMeasurement[] own = [.. Read(Header + "15,90,mid-chord,180,trailing-edge,2.5,-0.4,\n").Lines[0].Measurements(0.2)];
        Assert.Equal(2, own.Length);
        Assert.Equal(new(15, 0.09, 0.5), own[0].Load);
        Assert.Equal((0.18, 1.0), (own[0].ReadDepth, own[0].ReadShare));
        Assert.Equal(0.0025, own[0].Value, 1e-15);
        Assert.Equal(double.DegreesToRadians(-0.4), own[1].Value, 1e-15);
        Assert.Equal("The twist on line 2", own[1].Name);
    }

    [Theory]
    [InlineData("mass_kg;at_mm;at_chord;deflection_mm\n7,5;90;mid-chord;2,25\n")]
    [InlineData("mass_kg\tat_mm\tat_chord\tdeflection_mm\n7,5\t90\tmid-chord\t2,25\n")]
    [InlineData("\uFEFFmass_kg;at_mm;at_chord;deflection_mm\r\n7.5;90;mid-chord;2.25\r\n;;;\r\n")]
    [InlineData("Mass_kg, at_mm, at_chord, deflection_mm\r7.5, 90, Mid-Chord, \"2.25\"")]
    [InlineData("deflection_mm,at_chord,at_mm,mass_kg\n2.25,mid-chord,90,7.5,,\n")]
    public void Read_takes_what_spreadsheets_write(string text)
    {
        BenchReadingsContent content = Read(text);
        Assert.Empty(content.Findings);
        BenchReadingLine own = Assert.Single(content.Lines);
        Assert.Equal((7.5, 90.0, 2.25), (own.MassKg, own.AtMm, own.DeflectionMm!.Value.Value));
    }

    [Fact]
    public void Read_twice_the_same_line_is_two_readings() => Assert.Equal(2, Read(Header + "15,90,mid-chord,,,2,,\n15,90,mid-chord,,,2,,\n").Lines.Count);

    [Theory]
    [InlineData("", null, "no-rows")]
    [InlineData("# nothing\n", null, "no-rows")]
    [InlineData(Header, null, "no-rows")]
    [InlineData("one,two\n1,2\n", 1, "no-header")]
    [InlineData("15,90,mid-chord,2\n", 1, "no-header")]
    [InlineData("mass_kg,at_mm,at_chord,deflection_cm,twist_degrees\n15,90,mid-chord,2,1\n", 1, "unknown-column", "deflection_mm")]
    [InlineData("mass_kg,at_mm,at_chord,deflection_mm,mass_kg\n", 1, "column-twice")]
    [InlineData("mass_kg,at_mm,at_chord,,deflection_mm\n", 1, "no-name")]
    [InlineData("mass_kg,at_chord,deflection_mm\n", 1, "column-missing", "at_mm")]
    [InlineData("mass_kg,at_mm,at_chord\n", 1, "column-missing", "deflection_mm")]
    [InlineData(Header + "15,90,mid-chord,,,,,\n", 2, "nothing-read")]
    [InlineData(Header + ",90,mid-chord,,,2,,\n", 2, "missing-number", "Column 1, mass_kg")]
    [InlineData(Header + "15,90,,,,2,,\n", 2, "missing-word", "Column 3, at_chord")]
    [InlineData(Header + "15,90,middle,,,2,,\n", 2, "unknown-word", "middle")]
    [InlineData(Header + "15,90,mid-chord,,,2 mm,,\n", 2, "not-a-number", "Column 6")]
    [InlineData(Header + "15,90,mid-chord,,,NaN,,\n", 2, "not-a-number")]
    [InlineData(Header + "15,90,mid-chord,,,1e999,,\n", 2, "not-a-number")]
    [InlineData(Header + "15000,90,mid-chord,,,2,,\n", 2, "out-of-range", "0.2 to 80")]
    [InlineData(Header + "15,-90,mid-chord,,,2,,\n", 2, "out-of-range")]
    [InlineData(Header + "7,5,90,0,mid-chord,90,5,mid-chord,2,25\n", 2, "too-many-cells", "semicolons")]
    [InlineData(Header + "15,90,mid-chord,,,2,,\"open\n", 2, "open-quote")]
    [InlineData(Header + "15,90,mid-chord,,,2,,\"a\"b\n", 2, "after-quote")]
    [InlineData("mass_kg;at_mm;at_chord;deflection_mm\n15;90;mid-chord;1.234,5\n", 2, "not-a-number")]
    [InlineData("PK\u0003\u0004", null, "not-text")]
    [InlineData(Header + "15,90,mid-chord,,,2,,\u001b[31mred\n", null, "not-text")]
    public void Read_refuses_with_place_and_reason(string text, int? line, string code, string says = "")
    {
        BenchReadingsContent content = Read(text);
        Assert.Empty(content.Lines);
        Finding own = Assert.Single(content.Findings);
        Assert.Equal((code, line), (own.Code, own.Line));
        Assert.Contains(says, own.Message + own.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_says_everything_that_is_wrong_at_once_up_to_a_limit()
    {
        Assert.Equal([2, 3, 3], Read(Header + "x,90,mid-chord,,,2,,\n15,y,mid-chord,,,z,,\n").Findings.Select(own => own.Line));
        Assert.InRange(Read(Header + string.Concat(Enumerable.Repeat("x,90,mid-chord,,,2,,\n", 500))).Findings.Count, 20, 25);
    }

    [Fact]
    public void Read_refuses_a_huge_file_and_one_with_too_many_readings()
    {
        using MemoryStream endless = new(new byte[8 << 20]);
        Assert.Equal("too-large", Assert.Single(BenchReadings.Read(endless).Findings).Code);
        Assert.InRange(endless.Position, 1, 1 << 20);
        Assert.Equal("too-many", Assert.Single(Read(Header + string.Concat(Enumerable.Repeat("15,90,mid-chord,,,2,,\n", 2500))).Findings).Code);
        Assert.Equal("not-text", Assert.Single(BenchReadings.Read([0xFF, 0xFE, 0x6D, 0x00]).Findings).Code);
    }

    [Fact]
    public void Read_never_throws_and_never_lets_a_bad_number_through() => Gen.String[Gen.Char["mass_kg,at;\"\n\r\t#0123456789.-eNa "], 0, 80].Hold(tail =>
    {
        BenchReadingsContent content = Read(Header + tail);
        Assert.True(content.Lines.Count == 0 || content.Findings.Count == 0);
        Assert.All(content.Lines, own => Assert.True(double.IsFinite(own.MassKg) && own.MassKg > 0 && (own.DeflectionMm is not { } d || (double.IsFinite(d.Value) && d.Deviation > 0))));
    }, iter: 2000);

    [Fact]
    public void Readings_written_are_read_back_the_same() => Gen.Select(Gen.Double[0.2, 80], Gen.Double[1, 1000], Gen.Enum<ChordPlace>(), Gen.Double[-45, 45], Gen.Double[0.001, 20], Gen.String[Gen.Char["a =-\"#;,'\n"], 0, 20])
        .Select(Gen.Bool, Gen.Bool).Hold(own =>
        {
            ((double mass, double at, ChordPlace place, double value, double deviation, string note), bool bends, bool twists) = own;
            ReadValue read = new(value, deviation);
            BenchReadingLine line = new(3, mass, at, place, at / 2, ChordPlace.MidChord, bends || !twists ? read : null, twists ? read : null, note);
            BenchReadingsContent content = Read(BenchReadings.Write([new BenchReadingsBlock("in the vice,\n=1", [line])]));
            Assert.Empty(content.Findings);
            Assert.Equal(line, Assert.Single(content.Lines));
            Assert.Null(BenchReadings.Problem([line]));
            Assert.NotNull(BenchReadings.Problem([line with { MassKg = 1e3 }]));
        }, iter: 500);

    [Fact]
    public void Beyond_names_the_line_of_a_place_past_the_tip()
    {
        BenchReadingLine own = Read(Header + "15,90,mid-chord,250,,2,,\n").Lines[0];
        Assert.Equal(("read_at_mm", 2), (Assert.Single(own.Beyond(0.2)).Path, own.Line));
        Assert.Empty(own.Beyond(0.25));
        Assert.Equal(0.2498, own.Measurements(0.2498).First().ReadDepth);
    }

    private static BenchReadingsContent Read(string text) => BenchReadings.Read(Encoding.UTF8.GetBytes(text));
}
