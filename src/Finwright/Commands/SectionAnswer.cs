using Finwright.Geometry;
using Finwright.Geometry.Sections;

namespace Finwright.Commands;

/// <summary>The answer of <c>finwright section</c>; field names carry the units.</summary>
internal sealed record SectionAnswer
{
    public required string Name { get; init; }

    public required double ThicknessPercent { get; init; }

    public required double ThickestAtPercent { get; init; }

    public required double CamberPercent { get; init; }

    public required double HighestAtPercent { get; init; }

    public required double AreaPerChordSquared { get; init; }

    public required double CentroidAtPercent { get; init; }

    public required double NoseRadiusPercent { get; init; }

    public required double TrailingEdgePercent { get; init; }

    public required double TrailingEdgeAngleDegrees { get; init; }

    public required double SecondMomentPerChord4 { get; init; }

    public required IReadOnlyList<double[]> PointsPerChord { get; init; }

    public static SectionAnswer Of(Section section, IEnumerable<Point2> points)
    {
        SectionProperties p = SectionGeometry.Properties(section);
        return new()
        {
            Name = section.Name,
            ThicknessPercent = Math.Round(100 * p.MaximumThickness, 3),
            ThickestAtPercent = Math.Round(100 * p.MaximumThicknessAt, 2),
            CamberPercent = Math.Round(100 * p.MaximumCamber, 3) + 0.0,
            HighestAtPercent = Math.Round(100 * p.MaximumCamberAt, 2),
            AreaPerChordSquared = Math.Round(p.Area, 6),
            CentroidAtPercent = Math.Round(100 * p.Centroid.X, 3),
            NoseRadiusPercent = Math.Round(100 * p.LeadingEdgeRadius, 4),
            TrailingEdgePercent = Math.Round(100 * p.TrailingEdgeThickness, 4),
            TrailingEdgeAngleDegrees = Math.Round(double.RadiansToDegrees(p.TrailingEdgeAngle), 2),
            SecondMomentPerChord4 = Math.Round(p.SecondMomentAboutChord, 9),
            PointsPerChord = [.. points.Select(q => (double[])[Math.Round(q.X, 8), Math.Round(q.Y, 8) + 0.0])],
        };
    }
}
