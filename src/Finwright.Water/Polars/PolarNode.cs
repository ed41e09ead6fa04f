using Finwright.Geometry.Sections;
using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>One place at which the section of a blade is solved.</summary>
/// <param name="Position">Place along the span, 0 at the root to 1 at the tip, or any other measure by which sections between two nodes are mixed.</param>
/// <param name="Section">The section there.</param>
/// <param name="CriticalAmplification">Amplification exponent n; see <see cref="SectionConditions.CriticalAmplification"/>.</param>
/// <param name="Upper">Finish of the upper (starboard) side, for the chord there.</param>
/// <param name="Lower">Finish of the lower (port) side.</param>
/// <param name="ReynoldsNumbers">Reynolds numbers to solve, rising; see <see cref="PolarGrid.ReynoldsNumbers"/>.</param>
public sealed record PolarNode(
    double Position,
    Section Section,
    double CriticalAmplification,
    SideFinish Upper,
    SideFinish Lower,
    IReadOnlyList<double> ReynoldsNumbers)
{
    /// <summary>Whether both sides are the same, so that half the angles are enough.</summary>
    public bool IsSymmetric => Section.MaximumCamber is 0 && Upper == Lower;
}
