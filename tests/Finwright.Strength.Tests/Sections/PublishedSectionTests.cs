using Finwright.Strength.Tests.Evidence;

namespace Finwright.Strength.Tests.Sections;

public sealed class PublishedSectionTests
{
    public static TheoryData<string> Cases => [.. SectionEvidence.Rows.Select(row => row.What)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_published_sections_gives_their_values(string what) => SectionEvidence.Rows.Single(row => row.What == what).Hold();
}
