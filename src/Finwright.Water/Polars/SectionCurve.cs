using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>Solves one section in one stream at several angles of attack.</summary>
/// <param name="section">The section.</param>
/// <param name="conditions">The stream and the surface.</param>
/// <param name="angles">Angles of attack, radians, rising.</param>
/// <param name="cancellation">Stops the work.</param>
/// <returns>
/// The points, angles rising; a point that did not converge says so. A solver may leave angles out that lie beyond its reach and add others
/// where lift peaks.
/// </returns>
public delegate SectionCurve SectionCurveSolver(Geometry.Sections.Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken cancellation);

/// <summary>One section in one stream over angle of attack, as solved: nothing smoothed, nothing filled in.</summary>
public sealed record SectionCurve
{
    /// <summary>The stream and the surface.</summary>
    public required SectionConditions Conditions { get; init; }

    /// <summary>The points, angles rising.</summary>
    public required IReadOnlyList<SectionPoint> Points { get; init; }

    /// <summary>How many points converged and have not stalled at the nose.</summary>
    public int SolvedCount => Points.Count(point => point.IsUsable);

    /// <summary>
    /// The whole curve of a symmetric section, equally finished on both sides, from its half: angles from 0 up. At 0 lift and moment are
    /// nothing, by symmetry.
    /// </summary>
    /// <exception cref="InvalidOperationException">The first angle is not 0, or both sides are finished differently.</exception>
    public SectionCurve Mirrored()
    {
        if (Points.Count == 0 || Points[0].AngleOfAttack is not 0)
            throw new InvalidOperationException("Only a curve that starts at an angle of 0 can be mirrored.");
        if (Conditions.Upper != Conditions.Lower)
            throw new InvalidOperationException("Only a curve of a section with equal sides can be mirrored.");
        return this with { Points = [.. Points.Skip(1).Reverse().Select(Mirror), Points[0] with { Cl = 0, Cm = 0 }, .. Points.Skip(1)] };
    }

    private static SectionPoint Mirror(SectionPoint point) => point with
    {
        AngleOfAttack = -point.AngleOfAttack,
        Cl = -point.Cl,
        Cm = -point.Cm,
        TransitionUpper = point.TransitionLower,
        TransitionLower = point.TransitionUpper,
        SeparationUpper = point.SeparationLower,
        SeparationLower = point.SeparationUpper,
        Surface = null,
    };
}
