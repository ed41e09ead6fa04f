using Finwright.Geometry.Sections;
using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>Curves of sections by the coupled viscous method.</summary>
public static class SectionCurves
{
    /// <summary>Solves one section in one stream at several angles; see <see cref="SectionCurveSolver"/> and <see cref="SectionFlow"/>.</summary>
    /// <param name="section">The section.</param>
    /// <param name="conditions">The stream and the surface.</param>
    /// <param name="angles">Angles of attack, radians, rising.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static SectionCurve Solve(Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken cancellation) =>
        new() { Conditions = conditions, Points = new SectionFlow(section).Sweep(angles, conditions, withSurface: false, cancellation) };
}
