namespace Finwright.Design.Tests.Reading;

/// <summary>Texts that are no JSON: one clear finding with its place.</summary>
public sealed class BrokenTextTests
{
    [Theory]
    [InlineData("{\n  \"name\": \"x\",\n  \"shape\": NaN\n}", 3, "Line 3, column 12: NaN is not a number.")]
    [InlineData("{ \"a\": nan }", 1, "Line 1, column 8: nan is not a number.")]
    [InlineData("{ \"a\": -Infinity }", 1, "Line 1, column 8: -Infinity is not a number.")]
    [InlineData("{ 'a': 1 }", 1, "Line 1, column 3: a single quote does not belong here.")]
    [InlineData("{ \"a\": 24,5 }", 1, "Line 1, column 11: a number is not written as it should be.")]
    [InlineData("{ \"a\": 012 }", 1, "Line 1, column 8: a number is not written as it should be.")]
    [InlineData("{ \"a\": .5 }", 1, "Line 1, column 8: a number is not written as it should be.")]
    [InlineData("{ \"a\": 1\n \"b\": 2 }", 2, "Line 2, column 2: a new field or value begins where it is not expected.")]
    [InlineData("{ \"a\": True }", 1, "Line 1, column 8: True does not belong here.")]
    [InlineData("{ \"ä\": True }", 1, "Line 1, column 8: True does not belong here.")]
    [InlineData("{ \"a\": [1, 2} }", 1, "Line 1, column 13: } closes something that is not open here")]
    [InlineData("{ } }", 1, "Line 1, column 5: } closes something that is not open here")]
    [InlineData("{ \"a\": [,] }", 1, "Line 1, column 9: a comma stands where a value is expected.")]
    [InlineData("{ \"a\": \"b\n\" }", 1, "Line 1, column 10: a line break or control character stands inside a text.")]
    [InlineData("{\n\n \"a\": [\n", 3, "The file ends on line 3 before the design is complete")]
    [InlineData("// nothing but a comment", 1, "The file ends on line 1 before the design is complete")]
    public void Read_says_where_and_what_stops_it(string text, int line, string message)
    {
        Finding finding = Assert.Single(DesignReader.Read(text).Findings);

        Assert.Equal("not-json", finding.Code);
        Assert.Equal(line, finding.Line);
        Assert.StartsWith(message, finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Remedy);
    }

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData(" \r\n\t", "empty-file")]
    [InlineData("\uFEFF", "empty-file")]
    [InlineData("[]", "wrong-root")]
    [InlineData("null", "wrong-root")]
    [InlineData("3", "wrong-root")]
    [InlineData("\"a design\"", "wrong-root")]
    [InlineData("{ \"name\": \"\\ud800\" }", "broken-text")]
    [InlineData("{ \"\\udfff\": 1 }", "broken-text")]
    [InlineData("{ \"name\": \"a\0b\" }", "not-utf8")]
    public void Read_refuses_with_one_finding(string text, string code)
    {
        DesignReading reading = DesignReader.Read(text);

        Assert.Null(reading.Design);
        Assert.Equal(code, Assert.Single(reading.Findings).Code);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'{', 0, (byte)'}', 0 })]
    [InlineData(new byte[] { (byte)'{', (byte)'"', 0xE4, (byte)'"', (byte)':', (byte)'1', (byte)'}' })]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04, 0x00 })]
    public void Read_refuses_bytes_that_are_not_text(byte[] bytes) =>
        Assert.Equal("not-utf8", Assert.Single(DesignReader.Read(bytes).Findings).Code);

    [Theory]
    [InlineData("name\u0007bell")]
    [InlineData("two\nlines")]
    public void Read_refuses_a_name_that_cannot_be_printed(string name)
    {
        string escaped = System.Text.Json.JsonSerializer.Serialize(name);

        Assert.Equal("unprintable-text", Assert.Single(DesignReader.Read(Examples.Small.Replace("\"Saltmarsh 24\"", escaped, StringComparison.Ordinal)).Findings).Code);
    }

    [Fact]
    public void Read_cleans_what_it_repeats_of_a_strangers_text()
    {
        string key = "\\u001b[31m" + new string('k', 5000);
        Finding finding = Assert.Single(DesignReader.Read(Examples.Small.Insert(1, $"\"{key}\": 1,")).Findings);

        Assert.DoesNotContain('\u001b', finding.Message + finding.Path + finding.Remedy + finding.Value);
        Assert.True(finding.Message.Length + finding.Path.Length < 250);
    }
}
