using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Blades;

/// <summary>The section at one depth of a blade; everything between stations is smooth.</summary>
/// <param name="Depth">Depth below the hull, metres.</param>
/// <param name="Section">Section with its thickness ratio and camber at this depth; its trailing edge is blunted by the blade.</param>
/// <param name="Twist">Twist about the quarter chord, radians, positive nose to starboard.</param>
public sealed record BladeStation(double Depth, Section Section, double Twist);
