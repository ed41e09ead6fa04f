using Finwright.Geometry;

namespace Finwright.Making.Pores;

/// <summary>One bubble that stays.</summary>
/// <param name="Volume">Pore volume it takes, m³.</param>
/// <param name="Highest">Its highest point, layer axes, metres; a vent there frees it.</param>
/// <param name="Centroid">Its middle, layer axes, metres.</param>
/// <param name="Depth">From its highest point down to where the resin closes its way out, metres.</param>
/// <param name="IsClosed">Whether it has no way to any vent at all, however the part is turned.</param>
public sealed record TrappedRegion(double Volume, Point3 Highest, Point3 Centroid, double Depth, bool IsClosed);

/// <summary>The air that stays in a part's pores when resin rises in it.</summary>
/// <param name="Up">Upward unit vector, layer axes.</param>
/// <param name="Volume">Pore volume of the air that stays, m³.</param>
/// <param name="Total">Pore volume of the part, m³.</param>
/// <param name="Regions">The bubbles, the largest first.</param>
/// <param name="Tolerance">Bubbles no deeper than this are not seen: half a cell's height, metres.</param>
/// <param name="VentsReach">For each vent whether it meets the pores; one that does not lets no air out.</param>
/// <param name="Cells">For each cell that counts the share of its pores that stays air; empty unless asked for.</param>
public sealed record TrappedAirResult(
    Point3 Up, double Volume, double Total, IReadOnlyList<TrappedRegion> Regions, double Tolerance, IReadOnlyList<bool> VentsReach, IReadOnlyList<float> Cells)
{
    /// <summary>Share of the pores that stays air, 0 to 1.</summary>
    public double Share => Total > 0 ? Volume / Total : 0;
}
