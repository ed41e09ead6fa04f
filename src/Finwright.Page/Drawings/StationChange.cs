using Finwright.Design;
using Finwright.Geometry.Blades;

namespace Finwright.Page.Drawings;

/// <summary>Sections put into a blade and taken out of it.</summary>
public static class StationChange
{
    // Sections closer than this would be one, % of the span.
    private const double Apart = 1;

    /// <summary>Puts a section where the blade has none yet, such that nothing changes until it is changed: thickness, camber and twist as they are there.</summary>
    /// <param name="design">The design.</param>
    /// <param name="blade">Its blade.</param>
    /// <param name="share">Place, share of the span.</param>
    /// <returns>The design; the same when a section stands there already.</returns>
    public static FinDesign Add(FinDesign design, Blade blade, double share)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        double at = Math.Round(100 * share, 1), depth = share * blade.Span;
        IReadOnlyList<SectionStation> sections = design.Shape.Sections;
        if (sections.Any(section => Math.Abs(section.AtPercent - at) < Apart))
            return design;
        SectionStation above = sections.LastOrDefault(section => section.AtPercent < at) ?? sections[0];
        double camber = Math.Round(100 * blade.Camber(depth), 2);
        SectionStation added = new()
        {
            AtPercent = at,
            Section = above.Section,
            ThicknessPercent = Math.Round(100 * blade.ThicknessRatio(depth), 2),
            CamberPercent = above.CamberPercent is null && camber == 0 ? null : camber,
            TwistDegrees = Math.Round(double.RadiansToDegrees(blade.Twist(depth)), 2) + 0.0,
        };
        return design with { Shape = design.Shape with { Sections = [.. sections.Where(section => section.AtPercent < at), added, .. sections.Where(section => section.AtPercent > at)] } };
    }
}
