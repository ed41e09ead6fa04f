namespace Finwright.Geometry.Sections;

/// <summary>Numbers of a section of unit chord; multiply areas by the chord squared and second moments by its fourth power.</summary>
/// <param name="Area">Enclosed area.</param>
/// <param name="Centroid">Centroid of the area.</param>
/// <param name="SecondMomentAboutChord">∫ y² dA, axis along the chord line: what resists bending toward starboard.</param>
/// <param name="SecondMomentAcrossChord">∫ (x - centroid)² dA, axis through the centroid square to the chord line.</param>
/// <param name="MaximumThickness">Greatest thickness.</param>
/// <param name="MaximumThicknessAt">Where it is, from the nose.</param>
/// <param name="MaximumCamber">Greatest camber, signed.</param>
/// <param name="MaximumCamberAt">Where it is, from the nose; 0 without camber.</param>
/// <param name="LeadingEdgeRadius">Radius of curvature of the thickness form at the nose; 0 when the nose is sharp.</param>
/// <param name="TrailingEdgeThickness">Thickness at x = 1.</param>
/// <param name="TrailingEdgeAngle">Angle between both sides of the thickness form at x = 1, radians; negative when it opens aft.</param>
public sealed record SectionProperties(
    double Area,
    Point2 Centroid,
    double SecondMomentAboutChord,
    double SecondMomentAcrossChord,
    double MaximumThickness,
    double MaximumThicknessAt,
    double MaximumCamber,
    double MaximumCamberAt,
    double LeadingEdgeRadius,
    double TrailingEdgeThickness,
    double TrailingEdgeAngle);
