using Finwright.Geometry.Blades;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Parts;

/// <summary>A dowel rod across a cut: one bore that both pieces share.</summary>
/// <param name="Cut">Number of the cut, from 0 at the root.</param>
/// <param name="From">Root-side end of the bore's axis, design axes, metres.</param>
/// <param name="To">Tip-side end of the bore's axis, design axes, metres.</param>
/// <param name="BoreDiameter">Diameter of the bore, metres.</param>
/// <param name="Wall">Least plastic left beside the bore, metres.</param>
public sealed record Dowel(int Cut, Point3 From, Point3 To, double BoreDiameter, double Wall)
{
    /// <summary>The bore as a cutting tool.</summary>
    public SolidExpression Tool() => Tools.Bore(BoreDiameter, From, To);
}

/// <summary>The dowels of one cut.</summary>
/// <param name="Dowels">Those that found room, front first.</param>
/// <param name="GreatestBore">Largest bore that would have had room at the best place for the first dowel that found none, metres; not positive when there is no room at all.</param>
public sealed record DowelRow(IReadOnlyList<Dowel> Dowels, double GreatestBore);

/// <summary>Places dowel rods along the section at a cut, clear of skin, bores, pockets and slot.</summary>
public static class DowelPlacer
{
    /// <summary>Added to the dowel's length, metres: room for resin at the ends.</summary>
    public const double EndRoom = 1e-3;

    private const double FirstShare = 0.08;
    private const double LastShare = 0.92;
    private const double ShareStep = 0.01;

    /// <summary>Places the dowels of one cut.</summary>
    /// <param name="number">Number of the cut, from 0.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="blade">Gives the direction of the dowels: along a line of equal chord share on the mid-surface.</param>
    /// <param name="body">The whole blade with all its bores and pockets.</param>
    /// <param name="wanted">How many.</param>
    /// <param name="bore">Diameter of the bore, metres.</param>
    /// <param name="length">Length of the dowel, metres.</param>
    /// <param name="wall">Least plastic to leave beside a bore, metres.</param>
    /// <param name="otherCuts">Cuts that the bore must not reach, with a wall between.</param>
    /// <remarks>
    /// Two dowels are wanted at 30 and 60 % of the chord, more of them spread from 20 to 70 %. Each goes to the place nearest to
    /// where it is wanted that has room.
    /// </remarks>
    public static DowelRow Place(
        int number, CutPlane cut, BladeShape blade, MeshProbe body, int wanted, double bore, double length, double wall,
        IReadOnlyList<CutPlane> otherCuts)
    {
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(otherCuts);
        ArgumentNullException.ThrowIfNull(body);
        List<Dowel> placed = [];
        double greatestMissing = double.PositiveInfinity;
        foreach (double share in WantedShares(wanted))
        {
            Dowel? found = null;
            double greatest = double.NegativeInfinity;
            for (int i = 0; i <= 2 * (int)((LastShare - FirstShare) / ShareStep) && found is null; i++)
            {
                // 0, +1, −1, +2, −2 … steps from where it is wanted.
                double tried = share + (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) * ShareStep;
                if (tried < FirstShare || tried > LastShare || Axis(cut, blade, tried, length + EndRoom) is not { } axis)
                    continue;
                // An end that crosses another cut would come out of the far side of its piece.
                if (otherCuts.Any(c => Math.Min(Math.Abs(c.Beyond(axis.From)), Math.Abs(c.Beyond(axis.To))) < wall || c.Beyond(axis.From) * c.Beyond(axis.To) < 0))
                    continue;
                // No farther than needed: most places that fail do so at once.
                double room = Room(axis, body, placed, bore / 2 + wall);
                greatest = Math.Max(greatest, 2 * (room - wall));
                if (room >= bore / 2 + wall)
                    found = new(number, axis.From, axis.To, bore, Room(axis, body, placed, 4 * (bore + wall)) - bore / 2);
            }

            if (found is not null)
                placed.Add(found);
            else
                greatestMissing = Math.Min(greatestMissing, greatest);
        }

        return new([.. placed.OrderBy(d => d.From.X)], greatestMissing);
    }

    private static double[] WantedShares(int count)
    {
        if (count <= 1)
            return count == 1 ? [0.42] : [];
        (double first, double last) = count == 2 ? (0.3, 0.6) : (0.2, 0.7);
        return [.. Enumerable.Range(0, count).Select(i => first + (last - first) * i / (count - 1))];
    }

    /// <summary>The axis at a share of the chord, centred on the cut; null when it would leave the span.</summary>
    private static (Point3 From, Point3 To)? Axis(CutPlane cut, BladeShape blade, double share, double length)
    {
        // Where the line of this share meets the plane, by halving over the span.
        double low = 0, high = blade.Span;
        if (cut.Beyond(OnLine(blade, share, low)) >= 0 || cut.Beyond(OnLine(blade, share, high)) <= 0)
            return null;
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            if (cut.Beyond(OnLine(blade, share, middle)) < 0)
                low = middle;
            else
                high = middle;
        }

        double above = Math.Max(0, high - length / 2), below = Math.Min(blade.Span, high + length / 2);
        Point3 along = OnLine(blade, share, below) - OnLine(blade, share, above);
        Point3 half = length / 2 / along.Length * along;
        Point3 centre = OnLine(blade, share, high);
        return (centre - half).Y < 0 || (centre + half).Y > blade.Span ? null : (centre - half, centre + half);
    }

    private static Point3 OnLine(BladeShape blade, double share, double y)
    {
        double x = blade.Outline.LeadingEdge(y) + share * blade.Outline.Chord(y);
        return new(x, y, blade.MidSurface(x, y));
    }

    /// <summary>Distance from the axis to the nearest surface, the bores of other dowels included, not more than <paramref name="within"/>; negative when the axis lies outside the solid.</summary>
    private static double Room((Point3 From, Point3 To) axis, MeshProbe body, List<Dowel> others, double within)
    {
        if (!body.Contains(0.5 * (axis.From + axis.To)))
            return -1;
        double room = body.Distance(axis.From, axis.To, within);
        foreach (Dowel other in others)
            room = Math.Min(room, SegmentDistance.ToSegment(axis.From, axis.To, other.From, other.To) - other.BoreDiameter / 2);
        return room;
    }
}
