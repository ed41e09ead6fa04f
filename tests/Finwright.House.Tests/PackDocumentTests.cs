using System.Text.Json;
using Finwright.Assessment.Packing;

namespace Finwright.House.Tests;

public sealed class PackDocumentTests
{
    private static readonly Type[] Water =
    [
        typeof(WaterSummary), typeof(VerdictSummary), typeof(LoadCaseSummary), typeof(DragSummary), typeof(StallSummary), typeof(BoundSummary),
        typeof(MarginSummary), typeof(SpanLoadSummary), typeof(SweepSummary), typeof(RuleOfThumbSummary), typeof(WaterStateSummary),
    ];

    [Fact]
    public void Every_field_of_the_summary_is_explained()
    {
        string document = Repository.Read("docs/pack.md");
        Type[] records = [.. Water, typeof(FinSummary), typeof(PlanformSummary), typeof(StationSummary), typeof(PartSummary), typeof(HardwareSummary), typeof(FindingSummary), typeof(FileSummary)];
        foreach (string field in records.SelectMany(record => record.GetProperties()).Where(p => p.Name is not "Words").Select(p => JsonNamingPolicy.SnakeCaseLower.ConvertName(p.Name)))
            Assert.True(document.Contains($"`{field}`", StringComparison.Ordinal) || document.Contains($"`{field}[]`", StringComparison.Ordinal), $"docs/pack.md does not explain {field}.");
    }
}
