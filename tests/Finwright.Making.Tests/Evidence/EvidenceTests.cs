namespace Finwright.Making.Tests.Evidence;

public sealed class EvidenceTests : EvidenceTests<MakingArea>;

public sealed class MakingArea : IEvidenceArea
{
    public static string Name => "print, pour and cure";

    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. LayersEvidence.Rows, .. MotionEvidence.Rows, .. PoresEvidence.Rows, .. CureEvidence.Rows];
}
