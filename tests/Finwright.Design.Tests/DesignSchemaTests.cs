
namespace Finwright.Design.Tests;

public sealed class DesignSchemaTests
{
    /// <summary>What the schema can see; the rest are limits of the file or rules that tie fields together.</summary>
    private static readonly HashSet<string> SchemaCodes =
        ["unknown-field", "missing-field", "wrong-type", "null-not-allowed", "unknown-word", "out-of-range", "text-too-long", "too-many-items", "wrong-root", "newer-format", "older-format"];

    [Fact]
    public void Generate_is_what_the_shipped_schema_says() =>
        Repository.Holds("src/Finwright.Design/fin-design.schema.json", DesignSchema.Generate());

    [Fact]
    public void Shipped_schema_lies_beside_the_program_and_in_the_assembly()
    {
        using Stream? inside = typeof(DesignSchema).Assembly.GetManifestResourceStream(DesignSchema.FileName);
        Assert.NotNull(inside);
        using var reader = new StreamReader(inside);

        // Both are copies of the committed file, which is held to the types above.
        string embedded = reader.ReadToEnd();
        Assert.Contains("https://json-schema.org/draft/2020-12/schema", embedded, StringComparison.Ordinal);
        Assert.Equal(embedded, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, DesignSchema.FileName)));
    }

    [Theory]
    [InlineData(Examples.Small)]
    [InlineData(Examples.Full)]
    public void Schema_accepts_good_designs_and_what_the_writer_makes_of_them(string text)
    {
        FinDesign design = DesignReader.Read(text).Design!;

        Assert.True(SchemaOracle.IsValid(text));
        Assert.True(SchemaOracle.IsValid(DesignWriter.Write(design)));
        Assert.True(SchemaOracle.IsValid(DesignWriter.Write(design, compact: true)));
    }

    [Theory]
    [InlineData("""{ "name": "x" }""")]
    [InlineData("""[]""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "Free" } } }""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "free" } }, "colour": 1 }""")]
    [InlineData("""{ "name": null, "shape": { "outline": { "family": "free" } } }""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "free" }, "strip": { "sheet_mm": "0.3" } } }""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "free", "span_mm": -300 } } }""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "free" } }, "print": { "walls": 2.5 } }""")]
    [InlineData("""{ "name": "x", "shape": { "outline": { "family": "free" }, "imported_sections": [ { "name": "y", "points": [[0, 0, 0]] } ] } }""")]
    [InlineData("""{ "name": "x", "format": 3, "shape": { "outline": { "family": "free" } } }""")]
    public void Schema_refuses_what_the_reader_refuses(string text)
    {
        Assert.True(DesignReader.Read(text).HasErrors);
        Assert.False(SchemaOracle.IsValid(text));
    }

    [Fact]
    public void Schema_and_reader_agree_on_any_change_of_a_good_design() =>
        JsonChange.Gen(Examples.Full).Hold(
            text =>
            {
                bool readerAgrees = DesignReader.Read(text).Findings.All(finding => !SchemaCodes.Contains(finding.Code));
                Assert.Equal(SchemaOracle.IsValid(text), readerAgrees);
            },
            iter: 4000);
}
