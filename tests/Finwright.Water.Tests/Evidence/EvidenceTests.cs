namespace Finwright.Water.Tests.Evidence;

public sealed class EvidenceTests : EvidenceTests<WaterArea>;

public sealed class WaterArea : IEvidenceArea
{
    public static string Name => "water";

    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. SectionEvidence.Rows, .. LiftingEvidence.Rows, .. WaterEvidence.Rows];
}
