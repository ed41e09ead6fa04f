using Finwright.Strength.Tests.Evidence;

namespace Finwright.Strength.Tests.Beams;

public sealed class PublishedBeamTests
{
    public static TheoryData<string> Cases => [.. BeamEvidence.Rows.Select(row => row.What)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Solve_of_published_beams_gives_their_values(string what) => BeamEvidence.Rows.Single(row => row.What == what).Hold();
}
