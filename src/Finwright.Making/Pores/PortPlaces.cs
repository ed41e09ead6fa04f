using Finwright.Geometry;
using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>Places for ports in an attitude.</summary>
/// <param name="Feed">For the resin, at the lowest point.</param>
/// <param name="Vents">For the air: the highest point first, then the tops of the largest bubbles left.</param>
/// <param name="Air">Air that stays with these vents.</param>
public sealed record PortPlan(PourPort Feed, IReadOnlyList<PourPort> Vents, TrappedAirResult Air);

/// <summary>Where ports should go: resin in at the lowest point, air out at the highest and at the top of every bubble worth a hole.</summary>
public static class PortPlaces
{
    /// <summary>Most vents.</summary>
    public const int MostVents = 6;

    /// <summary>A bubble is worth a vent from this share of the pores on (judgement).</summary>
    public const double WorthShare = 0.01;

    /// <summary>A bubble is worth a vent from this volume on, m³: half a millilitre (judgement).</summary>
    public const double WorthVolume = 0.5e-6;

    /// <summary>Suggests places.</summary>
    /// <param name="part">The part on its grid.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.95.</param>
    /// <param name="up">Upward direction in which it is poured, layer axes; need not be of unit length.</param>
    /// <param name="diameter">Diameter of the holes, metres.</param>
    /// <returns>The plan; null when the part has no core.</returns>
    public static PortPlan? Suggest(PartVoxels part, double infillShare, Point3 up, double diameter)
    {
        Require.Positive(diameter);
        Point3 unit = 1 / Require.Positive(up.Length) * up;
        PoreGrid grid = PoreGrid.Create(part, infillShare);
        if (grid.Count is 0)
            return null;
        TrappedAir air = new(grid);
        Point3 down = -1 * unit;
        PourPort feed = At(grid, air.Highest(down), down, diameter);
        List<PourPort> vents = [At(grid, air.Highest(unit), unit, diameter)];
        TrappedAirResult left = air.Solve(unit, vents);
        while (vents.Count < MostVents && left.Regions.Count > 0 && (left.Regions[0].Volume >= WorthVolume || left.Regions[0].Volume >= WorthShare * grid.Volume))
        {
            vents.Add(At(grid, air.CellAt(left.Regions[0].Highest), unit, diameter));
            TrappedAirResult next = air.Solve(unit, vents);
            // A vent that frees nothing would be drilled again and again.
            if (!(next.Volume < left.Volume))
            {
                vents.RemoveAt(vents.Count - 1);
                break;
            }

            left = next;
        }

        return new(feed, vents, left);
    }

    private static PourPort At(PoreGrid grid, int cell, Point3 wanted, double diameter)
    {
        (Point3 place, Point3 outward) = grid.Border(cell, wanted);
        return new(place, outward, diameter);
    }
}
