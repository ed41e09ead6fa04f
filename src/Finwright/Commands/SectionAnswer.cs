using System.Text.Json.Serialization;
using Finwright.Assessment.Packing;
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

    /// <summary>What the section does in the water; null when it was not asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SectionPolar? Polar { get; init; }

    public static SectionAnswer Of(Section section, IEnumerable<Point2> points)
    {
        SectionProperties p = SectionGeometry.Properties(section);
        return new()
        {
            Name = section.Name,
            ThicknessPercent = Rounded.Percent(p.MaximumThickness),
            ThickestAtPercent = Rounded.Percent(p.MaximumThicknessAt),
            CamberPercent = Rounded.Percent(p.MaximumCamber),
            HighestAtPercent = Rounded.Percent(p.MaximumCamberAt),
            AreaPerChordSquared = Rounded.Digits(p.Area),
            CentroidAtPercent = Rounded.Percent(p.Centroid.X),
            NoseRadiusPercent = Rounded.Percent(p.LeadingEdgeRadius),
            TrailingEdgePercent = Rounded.Percent(p.TrailingEdgeThickness),
            TrailingEdgeAngleDegrees = Rounded.Degrees(p.TrailingEdgeAngle),
            SecondMomentPerChord4 = Rounded.Digits(p.SecondMomentAboutChord),
            PointsPerChord = [.. points.Select(q => (double[])[Rounded.Digits(q.X), Rounded.Digits(q.Y)])],
        };
    }
}
