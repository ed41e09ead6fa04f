using System.Text;
using CsCheck;

namespace Finwright.Design.Tests.Reading;

/// <summary>Whatever the bytes are: findings or a design, never an exception.</summary>
public sealed class HostileTextTests
{
    private static readonly string[] Marks =
        ["{", "}", "[", "]", ",", ":", "\"", "name", "\"name\"", "\"shape\"", "null", "1e400", "-", "//", "/*", "*/", "\\", "\n", "\uFEFF", "NaN"];

    [Theory]
    [InlineData(Examples.Small)]
    [InlineData(Examples.Full)]
    public void Read_of_a_file_cut_off_at_any_byte_gives_findings(string text)
    {
        byte[] whole = Encoding.UTF8.GetBytes(text.TrimEnd());
        for (int length = 0; length < whole.Length; length++)
        {
            DesignReading reading = DesignReader.Read(whole.AsSpan(0, length));

            Assert.Null(reading.Design);
            Assert.True(reading.HasErrors);
            AssertWellFormed(reading);
        }
    }

    [Fact]
    public void Read_of_any_change_of_bytes_gives_findings_or_a_design()
    {
        byte[] good = Encoding.UTF8.GetBytes(Examples.Full);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Int[0, 40], Gen.Byte.Array[0, 6]).List[1, 4].Hold(
            changes =>
            {
                List<byte> bytes = [.. good];
                foreach ((int at, int removed, byte[] added) in changes)
                {
                    int place = at % bytes.Count;
                    bytes.RemoveRange(place, Math.Min(removed, bytes.Count - place));
                    bytes.InsertRange(place, added);
                }

                AssertAnswered(DesignReader.Read([.. bytes]));
            },
            iter: 4000);
    }

    [Fact]
    public void Read_of_marks_of_JSON_in_any_order_gives_findings_or_a_design() =>
        Gen.Int[0, Marks.Length - 1].Array[0, 30].Hold(
            places => AssertAnswered(DesignReader.Read(string.Concat(places.Select(place => Marks[place])))),
            iter: 4000);

    [Fact]
    public void Read_of_any_change_of_values_gives_findings_or_a_design() =>
        JsonChange.Gen(Examples.Full).Hold(text => AssertAnswered(DesignReader.Read(text)), iter: 4000);

    private static void AssertAnswered(DesignReading reading)
    {
        Assert.True(reading.Design is not null || reading.HasErrors);
        AssertWellFormed(reading);
        // The finished design can be checked again by itself, and says no more than the reader did.
        if (reading is { Design: FinDesign design, HasErrors: false })
            Assert.Equal(reading.Findings.Count(finding => finding.Code != "older-format"), DesignValidation.Check(design).Count);
    }

    private static void AssertWellFormed(DesignReading reading)
    {
        Assert.All(reading.Findings, finding =>
        {
            Assert.StartsWith("$", finding.Path, StringComparison.Ordinal);
            Assert.True(finding.Line is null or > 0);
            Assert.True(finding.Message.EndsWith('.') && finding.Remedy[^1] is '.' or '?', $"{finding.Message} {finding.Remedy}");
            Assert.DoesNotContain("NaN", finding.Value ?? "", StringComparison.Ordinal);
        });
    }
}
