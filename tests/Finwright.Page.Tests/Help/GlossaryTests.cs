using Finwright.Page.Help;

namespace Finwright.Page.Tests.Help;

public sealed class GlossaryTests
{
    [Fact]
    public void Every_row_of_the_document_is_a_term_with_a_meaning()
    {
        Assert.InRange(Glossary.All.Count, 150, 400);
        Assert.All(Glossary.All, term => Assert.True(term.Name.Length > 0 && term.Meaning.Length > 1 && term.Chapter.Length > 0, term.ToString()));
        Term span = Glossary.All.First(term => term.Name == "Span");
        Assert.Equal(("The fin", "s", "m", "Depth of the tip below the hull."), (span.Chapter, span.Symbol, span.Unit, span.Meaning));
        Assert.DoesNotContain(Glossary.All, term => term.Name.Contains('`', StringComparison.Ordinal) || term.Meaning.Contains('`', StringComparison.Ordinal));
    }

    [Fact]
    public void Packages_of_the_product_are_listed_with_their_licences()
    {
        Assert.Contains(LicenceRow.All, row => row.Name == "MathNet.Numerics" && row.Licence == "MIT");
        Assert.DoesNotContain(LicenceRow.All, row => row.Name.StartsWith("BenchmarkDotNet", StringComparison.Ordinal));
    }
}
