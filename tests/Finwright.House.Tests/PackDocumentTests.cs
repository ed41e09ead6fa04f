using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Finwright.Assessment.Packing;

namespace Finwright.House.Tests;

public sealed class PackDocumentTests
{
    private static readonly Type[] Water =
    [
        typeof(WaterSummary), typeof(VerdictSummary), typeof(LoadCaseSummary), typeof(DragSummary), typeof(StallSummary), typeof(BoundSummary),
        typeof(MarginSummary), typeof(SpanLoadSummary), typeof(SweepSummary), typeof(RuleOfThumbSummary), typeof(WaterStateSummary),
    ];

    private static readonly Type[] Strength =
    [
        typeof(StrengthSummary), typeof(LoadedSummary), typeof(BendSummary), typeof(StressSummary), typeof(JointSummary), typeof(GroundingSummary), typeof(SectionSummary), typeof(RootSummary),
        typeof(TieSummary), typeof(TorqueSummary), typeof(MaterialSummary),
    ];

    private static readonly Type[] Bench = [typeof(BenchSummary), typeof(BenchDeflections), typeof(EdgeDeflections), typeof(BenchNumbers)];

    private static readonly Type[] Made =
    [
        typeof(PrintSummary), typeof(PlatePrintSummary), typeof(StopSummary), typeof(StopItemSummary), typeof(PartPrintSummary), typeof(OrientationSummary),
        typeof(PourSummary), typeof(RangeSummary), typeof(PlaceSummary), typeof(PourNeedSummary), typeof(PouredPartSummary), typeof(BubbleSummary), typeof(OtherAttitudeSummary), typeof(RockingSummary),
        typeof(PortSummary), typeof(SuggestedPortsSummary), typeof(BatchSummary), typeof(CureSummary), typeof(CuredPartSummary), typeof(WaterTimeSummary), typeof(CureNumbers), typeof(CureMomentSummary),
        typeof(LumpSummary), typeof(PlanSummary), typeof(BillLineSummary), typeof(ScheduleStepSummary), typeof(MotionAnswer), typeof(BoxSummary), typeof(SpiralSummary), typeof(MotionStopSummary),
        typeof(MotionPlateSummary), typeof(NeededStopSummary), typeof(InsertedStopsSummary), typeof(InsertedStopSummary), typeof(ResinFitAnswer), typeof(ResinFitReading), typeof(CureSlabSummary),
        typeof(CureSlabNumbers), typeof(CureThickestNumbers),
    ];

    [Fact]
    public void Every_field_of_the_summary_is_explained()
    {
        string document = Repository.Read("docs/pack.md");
        Type[] records = [.. Water, .. Strength, .. Made, typeof(FinSummary), typeof(PlanformSummary), typeof(StationSummary), typeof(PartSummary), typeof(HardwareSummary), typeof(FindingSummary), typeof(FileSummary)];
        IEnumerable<string> fields = records.SelectMany(record => record.GetProperties()).Where(IsWritten).Select(p => JsonNamingPolicy.SnakeCaseLower.ConvertName(p.Name));
        IEnumerable<string> tabular = Bench.SelectMany(record => record.GetProperties()).Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name));
        foreach (string field in fields.Concat(tabular))
            Assert.True(document.Contains($"`{field}`", StringComparison.Ordinal) || document.Contains($"`{field}[]`", StringComparison.Ordinal), $"docs/pack.md does not explain {field}.");
    }

    private static bool IsWritten(PropertyInfo property) => property.GetCustomAttribute<JsonIgnoreAttribute>() is null;
}
