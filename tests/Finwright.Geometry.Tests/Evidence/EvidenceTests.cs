namespace Finwright.Geometry.Tests.Evidence;

public sealed class EvidenceTests : EvidenceTests<GeometryArea>;

public sealed class GeometryArea : IEvidenceArea
{
    public static string Name => "geometry";

    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. SectionEvidence.Rows, .. OutlineEvidence.Rows, .. SolidEvidence.Rows, .. HardwareEvidence.Rows];
}
