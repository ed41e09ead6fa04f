using Finwright.Page.Help;

namespace Finwright.Page.Tests.Help;

public sealed class EvidenceTests
{
    [Fact]
    public void Every_comparison_of_the_document_is_shown_the_missed_ones_first()
    {
        Assert.InRange(Evidence.All.Count, 300, 2000);
        Assert.Equal(["Water", "Strength", "Print, pour and cure", "Geometry"], Evidence.All.Select(own => own.Area).Distinct());
        Assert.All(Evidence.All, own => Assert.True(own is { Topic.Length: > 0, Case.Length: > 0, Source.Length: > 0, Expected.Length: > 0, Computed.Length: > 0, Verdict.Length: > 0 }, own.ToString()));
        foreach (IGrouping<string, Comparison> area in Evidence.All.GroupBy(own => own.Area, StringComparer.Ordinal))
        {
            Assert.Equal(area.Count(own => own.Verdict.StartsWith("missed", StringComparison.Ordinal)), area.Count(own => own.IsMissed));
            Assert.All(area.SkipWhile(own => own.IsMissed), own => Assert.False(own.IsMissed));
        }
    }
}
