using System.Text;
using CsCheck;
using Finwright.Design.Tables;

namespace Finwright.Design.Tests.Tables;

public sealed class CsvTableTests
{
    private static readonly CsvRules Rules = new("things", "thing", ["name", "size_mm", "day", "count"], ["name"], ["name", "size_mm"]) { LongestCell = 500 };

    private static readonly Gen<string> AnyWords = Gen.String[Gen.Char["ab =+-@'\"#;,\t\r\n|1é風\u2028"], 0, 12];

    [Fact]
    public void Words_and_numbers_written_are_read_back_the_same() => Gen.Select(AnyWords.Array[1, 5], Gen.Double).Hold((words, number) =>
    {
        double value = double.IsFinite(number) ? number : 1;
        string text = CsvText.Line("name", "size_mm") + string.Concat(words.Select(own => CsvText.Line(CsvText.Words(own), CsvText.Number(value))));
        CsvTable table = Read(text);
        Assert.Empty(table.Findings);
        Assert.Equal(words, table.Rows.Select(row => row.Text("name")), StringComparer.Ordinal);
        Assert.All(table.Rows, row => Assert.Equal(value, row.Number("size_mm", double.MinValue, double.MaxValue)));
    }, iter: 2000);

    // RFC 4180, section 2, rules 5 to 7: fields with line breaks, quotes and commas stand in quotes; a quote is doubled.
    [Theory]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("a\"b", "\"a\"\"b\"")]
    [InlineData("a\r\nb", "\"a\r\nb\"")]
    [InlineData("plain", "plain")]
    // The signs with which spreadsheets begin formulas; common practice, no source.
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+49", "'+49")]
    [InlineData("-3", "'-3")]
    [InlineData("@name", "'@name")]
    [InlineData(" =1", "' =1")]
    [InlineData("'=1", "''=1")]
    [InlineData("'s Heerenberg", "'s Heerenberg")]
    [InlineData("# no comment", "\"# no comment\"")]
    [InlineData("a\u0001b", "a\uFFFDb")]
    public void Words_are_written_by_the_rules(string text, string written) => Assert.Equal(written, CsvText.Words(text));

    [Theory]
    [InlineData("name,size_mm\n\"two\nlines\",3\nx,bad\n", 4, "not-a-number")]
    [InlineData("name,size_mm\r\n\"two\r\nlines\",3\r\nx,bad\r\n", 4, "not-a-number")]
    [InlineData("name,day\nx,31.05.2027\n", 2, "not-a-day")]
    [InlineData("name,count\nx,1.5\n", 2, "not-whole")]
    [InlineData("name,count\n\"x,1\n", 2, "open-quote")]
    [InlineData("name,count\n\"x\"y,1\n", 2, "after-quote")]
    public void What_is_wrong_is_told_with_its_line(string text, int line, string code)
    {
        CsvTable table = Read(text);
        foreach (CsvRow row in table.Rows)
        {
            row.Number("size_mm", 0, 10);
            row.Day("day");
            row.Whole("count", 0, 10);
        }

        Finding own = Assert.Single(table.Findings);
        Assert.Equal((line, code), (own.Line, own.Code));
    }

    private static CsvTable Read(string text) => CsvTable.Read(Encoding.UTF8.GetBytes(text), Rules);
}
