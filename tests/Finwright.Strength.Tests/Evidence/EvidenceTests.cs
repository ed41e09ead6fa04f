namespace Finwright.Strength.Tests.Evidence;

public sealed class EvidenceTests : EvidenceTests<StrengthArea>;

public sealed class StrengthArea : IEvidenceArea
{
    public static string Name => "strength";

    public static IReadOnlyList<EvidenceRow> Rows { get; } =
    [
        .. PlateEvidence.Rows, .. SectionEvidence.Rows, .. BeamEvidence.Rows, .. VibrationEvidence.Rows, .. DivergenceEvidence.Rows, .. MaterialsEvidence.Rows, .. JointEvidence.Rows,
        .. CalibrationEvidence.Rows,
    ];
}
