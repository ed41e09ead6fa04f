using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Parts;
using Outline = Finwright.Geometry.Outlines.Outline;

namespace Finwright.Geometry.FromDesign;

/// <summary>Puts a port dimple at the front and at the rear of every part that is poured.</summary>
/// <remarks>
/// With the fin held nose down, the front port is low and the rear one high: resin rises through the part and pushes
/// the air out. So each is put close to its edge, half way along the part if it can be.
/// </remarks>
internal static class PortsFromDesign
{
    private const double ShareStep = 0.02;

    /// <summary>How much a step along the part counts against a step along the chord when choosing the nearest place.</summary>
    private const double AlongWeight = 0.3;

    private static readonly double[] FrontShares = [.. Enumerable.Range(0, 20).Select(i => 0.08 + i * ShareStep)];
    private static readonly double[] RearShares = [.. Enumerable.Range(0, 22).Select(i => 0.92 - i * ShareStep)];
    private static readonly double[] AlongShares = [.. Enumerable.Range(0, 17).Select(i => 0.1 + i * 0.05)];

    /// <summary>Dimples of one piece of the blade.</summary>
    /// <param name="work">The design.</param>
    /// <param name="name">The part's short name, for example "blade 2".</param>
    /// <param name="from">The cut at its root side; null at the root.</param>
    /// <param name="to">The cut at its tip side; null at the tip.</param>
    /// <param name="body">The whole blade.</param>
    /// <param name="dowels">All dowels.</param>
    public static IReadOnlyList<PortDimple> OfBlade(PartWork work, string name, CutPlane? from, CutPlane? to, MeshProbe body, IReadOnlyList<Dowel> dowels)
    {
        Outline outline = work.Blade.Outline;
        double high = from?.Through.Y ?? 0, low = to?.Through.Y ?? outline.Span, margin = work.PortDiameter / 2 + work.Wall;
        return Both(work, name, body, dowels, (share, along) =>
        {
            double y = high + along * (low - high);
            double x = outline.LeadingEdge(y) + share * outline.Chord(y);
            Point3 place = new(x, y, 0);
            // A sloping cut passes the depth of its middle elsewhere.
            bool within = (from?.Beyond(place) ?? y) >= margin && (to?.Beyond(place) ?? y - outline.Span) <= -margin;
            return within ? new Point2(x, y) : null;
        });
    }

    /// <summary>Dimples of the base.</summary>
    /// <param name="work">The design.</param>
    /// <param name="body">The base.</param>
    public static IReadOnlyList<PortDimple> OfBase(PartWork work, MeshProbe body)
    {
        BasePlan plan = work.Solids.Plan;
        return Both(work, "base", body, [], (share, along) =>
        {
            double depth = along * plan.Depth;
            double front = plan.FrontX + depth * Math.Tan(plan.FrontAngle), rear = plan.RearX - depth * Math.Tan(plan.RearAngle);
            return new Point2(front + share * (rear - front), -depth);
        });
    }

    /// <summary>Further dimples where the design asks for them.</summary>
    /// <param name="work">The design.</param>
    /// <param name="nameAt">Short name of the part in which a place of the blade lies.</param>
    /// <param name="body">The whole blade.</param>
    /// <param name="dowels">All dowels.</param>
    public static IReadOnlyList<PortDimple> Further(PartWork work, Func<Point3, string> nameAt, MeshProbe body, IReadOnlyList<Dowel> dowels)
    {
        PortPlacer placer = Placer(work, body);
        Outline outline = work.Blade.Outline;
        List<PortDimple> ports = [];
        foreach ((int number, PortPlace place) in work.Design.Pour.Ports.Further.Index())
        {
            string path = $"$.pour.ports.further[{number}]";
            double y = place.AtDepthMm / 1e3;
            if (y > outline.Span)
            {
                work.Findings.Add(new(
                    "port-beyond-tip", Severity.Error, $"{path}.at_depth_mm",
                    $"The port {PartWork.Mm(y)} below the hull lies beyond the tip at {PartWork.Mm(outline.Span)}.", "Put it higher, or take it out.")
                { Value = PartWork.Mm(y), Limit = PartWork.Mm(outline.Span) });
                continue;
            }

            double x = outline.LeadingEdge(y) + place.AtChordPercent / 100 * outline.Chord(y);
            string name = $"{nameAt(new(x, y, 0))} further {number + 1}";
            PortSearch search = placer.Find(name, [new(x, y)], dowels);
            if (search.Dimple is not null)
                ports.Add(search.Dimple);
            else
                work.Findings.Add(NoRoom(work, name, search.ThickestFound, placer.NeededThickness) with { Path = path });
        }

        return ports;
    }

    private static PortPlacer Placer(PartWork work, MeshProbe body) =>
        new(body, work.Design.Pour.Ports.Side == Side.Starboard, work.PortDiameter, work.PortDepth, work.Wall);

    private static List<PortDimple> Both(PartWork work, string part, MeshProbe body, IReadOnlyList<Dowel> dowels, Func<double, double, Point2?> at)
    {
        PortPlacer placer = Placer(work, body);
        List<PortDimple> ports = [];
        foreach ((string end, double[] shares) in new[] { ("front", FrontShares), ("rear", RearShares) })
        {
            var places =
                from share in shares
                from along in AlongShares
                orderby Math.Abs(share - shares[0]) + AlongWeight * Math.Abs(along - 0.5)
                select at(share, along);
            PortSearch search = placer.Find($"{part} {end}", places.OfType<Point2>(), dowels);
            if (search.Dimple is not null)
                ports.Add(search.Dimple);
            else
                work.Findings.Add(NoRoom(work, $"{part} {end}", search.ThickestFound, placer.NeededThickness));
        }

        return ports;
    }

    private static Finding NoRoom(PartWork work, string name, double thickest, double needed)
    {
        string found = thickest > 0
            ? $"the thickest whole place there has {PartWork.Mm(thickest)}"
            : "there is no place where a dimple of this size stays whole";
        return new(
            "port-no-room", Severity.Caution, "$.pour.ports",
            $"No dimple is made at the {name}: it needs {PartWork.Mm(needed)} of solid section ({PartWork.Mm(work.PortDepth)} deep and two walls), and {found}.",
            "Drill that port by eye, or make the dimples smaller or shallower.")
        { Value = PartWork.Mm(thickest), Limit = PartWork.Mm(needed) };
    }
}
