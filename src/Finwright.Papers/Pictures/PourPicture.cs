using Finwright.Assessment;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Making.Pores;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;
using OxyPlot;

namespace Finwright.Papers.Pictures;

/// <summary>A part as it is held for the pour, with its ports, the air that stays, water and thermometer.</summary>
internal static class PourPicture
{
    /// <summary>Layer of the part's outline.</summary>
    public const string PartLayer = "part";

    /// <summary>Layer of the water's surface across the part.</summary>
    public const string LevelLayer = "water-level";

    /// <summary>Layer of the discs of feeds.</summary>
    public const string FeedLayer = "feed";

    /// <summary>Layer of the rings of vents.</summary>
    public const string VentLayer = "vent";

    // Room for the arrow; beside the part for tube, numbers and the water's height; above it with and without a funnel; below it with and without water.
    private const double ArrowRoom = 7e-3, Side = 15e-3, Funnel = 18e-3, Bare = 9e-3, Deep = 6e-3, Dry = 7e-3, LevelAside = 10e-3;

    // Below this no air is said to stay, m³: less than a drop.
    private const double Nothing = 0.05e-6;

    // Bubbles told one by one.
    private const int MostBubbles = 5;

    // Air is drawn where at least this share of a cell's width is air.
    private const double SeenShare = 0.3;

    private const double PortRadius = 1.1e-3, Stem = 3.2e-3;

    public static Drawing Draw(AssessmentResult result, string part, Tongue tongue, double width, double height)
    {
        if (result is not { Design: { } design, Parts: { } parts, Poured: { } pours })
            throw new ArgumentException("The pour of the fin was not worked out.", nameof(result));
        PartPoured poured = pours.Parts.FirstOrDefault(one => string.Equals(one.Name, part, StringComparison.Ordinal)) ?? throw new ArgumentException($"The part \"{part}\" is not poured.", nameof(part));
        TriangleMesh mesh = parts.Parts.First(one => string.Equals(one.Name, part, StringComparison.Ordinal)).Mesh;
        Pour pour = design.Pour;
        bool isInWater = pour.Cooling is Cooling.WaterBath, hasTube = pour.ReservoirMl > 0;
        SideView view = new(poured.Voxels, poured.Layers, poured.Up, poured.Layers.ToLayers.Turn(new(1, 0, 0)));
        Point2 Seen(Point3 layered) => Metres(view.At(layered));
        Point2[] all = [.. mesh.Points().Select(p => Seen(poured.Layers.ToLayers.Apply(p)))];
        DrawnBox box = DrawnBox.Round(all);

        double above = hasTube ? Funnel : Bare, below = isInWater ? Deep : Dry;
        double share = Math.Min(1, pour.BathLevelPercent / 100);
        IReadOnlyList<string> Said(string ratio) => Spoken(tongue, isInWater ? share : null, hasTube, ratio);
        double notes = Notes.Height(Said("1:88.8"), width);
        RoundScale scale = RoundScale.Largest(Math.Min((width - ArrowRoom - 2 * Side) / box.Width, (height - above - below - notes) / box.Height));
        double factor = scale.Factor;
        Point2 corner = new(ArrowRoom + Side, above);
        Point2 On(Point2 seen) => corner + factor * (seen - box.From);
        DrawnBox held = new(corner, corner + factor * (box.To - box.From));

        Drawing drawing = new();
        IReadOnlyList<IReadOnlyList<Point2>> rings = Silhouette.Of(mesh, p => On(Seen(poured.Layers.ToLayers.Apply(p))));
        double level = held.To.Y - share * held.Height;
        if (isInWater)
            Bath(drawing, held, level);
        drawing.Add(new DrawnArea(PartLayer, PictureInk.Part, rings));
        IReadOnlyList<TrappedRegion> bubbles = [.. poured.Air.Regions.Where(bubble => bubble.Volume >= Nothing).Take(MostBubbles)];
        if (bubbles.Count > 0)
            Air(drawing, view, poured, On);
        foreach (IReadOnlyList<Point2> ring in rings)
            drawing.Add(new DrawnStroke(PartLayer, PictureInk.Outline, ring, Closed: true));
        if (isInWater)
            drawing.Add(new DrawnStroke(LevelLayer, PictureInk.Dashed, [new(held.From.X, level), new(held.To.X, level)], Closed: false));

        Point2 feed = On(Seen(poured.Ports[0].Port.Mouth)), way = Way(view, poured.Ports[0].Port.Outward);
        bool isRight = Math.Abs(way.X) > 0.3 ? way.X > 0 : feed.X > (held.From.X + held.To.X) / 2;
        Dimensions dimensions = new(drawing, tongue);
        if (hasTube)
            FeedTube.Draw(drawing, dimensions, held, feed, way, isRight, tongue.Length(1e-3 * pour.HeadMm, 0));
        if (isInWater)
        {
            Point2 lowest = On(all.MaxBy(p => p.Y));
            double x = isRight ? held.From.X - LevelAside : held.To.X + LevelAside;
            dimensions.Down(lowest, new(x, level), x, tongue.Length(share * box.Height, 0));
        }

        UpArrow(drawing, dimensions, tongue, held.From.Y);
        foreach (PouredPort port in poured.Ports)
            Port(drawing, On(Seen(port.Port.Mouth)), Way(view, port.Port.Outward), port.IsFeed, factor * port.Port.Diameter / 2);
        Point2? hottest = result.Cured?.Parts.FirstOrDefault(one => string.Equals(one.Name, part, StringComparison.Ordinal)) is { } cured ? On(Seen(cured.Band.Nominal.HottestPlace)) : null;
        if (hottest is { } hot)
            Marks.Registration(drawing, "thermometer", hot, 1.8e-3);

        Labels labels = new(drawing, new(new(ArrowRoom, 0), new(width, held.To.Y + below)));
        foreach ((int index, PouredPort port) in poured.Ports.Index())
        {
            Point2 out2 = Way(view, port.Port.Outward);
            // A port that looks at the reader gets its number above it.
            double wanted = out2.Length > 0.3 ? Math.Atan2(-out2.Y, out2.X) : Math.PI / 2;
            labels.PutBeside(new($"{index + 1} {(port.IsFeed ? tongue.Words.Pictures.Feed : tongue.Words.Pictures.Vent)}", Size: PictureInk.Large, IsBold: true), On(Seen(port.Port.Mouth)), 2e-3, wanted);
        }

        if (hottest is { } place)
            labels.PutBeside(new("T", tongue.Words.Pictures.Thermometer, PictureInk.Large, IsBold: true), place, 2.4e-3, 0);
        foreach (TrappedRegion bubble in bubbles)
            labels.PutBeside(new(tongue.Words.Pictures.Air(tongue.Millilitres(bubble.Volume, 1))), On(Seen(bubble.Centroid)), 2.4e-3, Math.PI / 2, leader: 0);
        Notes.Write(drawing, Said(tongue.Ratio(scale.Factor)), held.To.Y + below, width);
        return drawing;
    }

    private static Point2 Metres(DataPoint millimetres) => new(1e-3 * millimetres.X, 1e-3 * millimetres.Y);

    private static Point2 Way(SideView view, Point3 direction)
    {
        DataPoint way = view.Way(direction);
        return new(way.X, way.Y);
    }

    private static List<string> Spoken(Tongue tongue, double? water, bool hasTube, string ratio)
    {
        PictureWords words = tongue.Words.Pictures;
        List<string> said = [words.Scale(ratio)];
        if (hasTube)
            said.Add(words.TubeShortened);
        if (water is { } share)
            said.Add(words.Water(tongue.Percent(share)));
        return said;
    }

    private static void Bath(Drawing drawing, DrawnBox held, double level)
    {
        double left = held.From.X - Side, right = held.To.X + Side, floor = held.To.Y + Deep - 1e-3, rim = level - 3.5e-3;
        drawing.Add(new DrawnArea("water", PictureInk.Water, [[new(left, level), new(right, level), new(right, floor), new(left, floor)]]));
        drawing.Add(new DrawnStroke("bath", PictureInk.Fitting, [new(left, rim), new(left, floor), new(right, floor), new(right, rim)], Closed: false));
        Waves(left, held.From.X);
        Waves(held.To.X, right);

        void Waves(double from, double to)
        {
            const double length = 4e-3, height = 0.4e-3;
            int steps = (int)Math.Ceiling((to - from) / length * 12);
            drawing.Add(new DrawnStroke("waves", PictureInk.Surface, [.. Enumerable.Range(0, steps + 1).Select(i => new Point2(from + (to - from) * i / steps, level + height * Math.Sin(Math.Tau * (to - from) * i / steps / length)))], Closed: false));
        }
    }

    private static void Air(Drawing drawing, SideView view, PartPoured part, Func<Point2, Point2> on)
    {
        if (TrappedAirFigure.AirShares(part) is not { } shares)
            return;
        double edge = Math.Min(part.Voxels.Cell.X, Math.Min(part.Voxels.Cell.Y, part.Voxels.Cell.Z));
        IReadOnlyList<IReadOnlyList<Point2>> rings = [.. view.Through(shares).RegionFrom(SeenShare * edge).Select(ring => (IReadOnlyList<Point2>)[.. ring.Select(p => on(Metres(p)))])];
        if (rings.Count == 0)
            return;
        drawing.Add(new DrawnArea("air", PictureInk.Bare, rings));
        foreach (IReadOnlyList<Point2> ring in rings)
            drawing.Add(new DrawnStroke("air", PictureInk.Air, ring, Closed: true));
    }

    // Feed: a filled disc; vent: an open one. Shape tells them apart without colour.
    private static void Port(Drawing drawing, Point2 at, Point2 way, bool isFeed, double radius)
    {
        if (!isFeed && way.Length > 0.3)
            drawing.Add(new DrawnStroke("ports", PictureInk.Outline, [at, at + Stem / way.Length * way], Closed: false));
        IReadOnlyList<Point2> round = Rounds.Circle(at, Math.Max(PortRadius, radius));
        drawing.Add(new DrawnArea(isFeed ? FeedLayer : VentLayer, isFeed ? Palette.Line : PictureInk.Bare, [round]));
        drawing.Add(new DrawnStroke("ports", PictureInk.Outline, round, Closed: true));
    }

    private static void UpArrow(Drawing drawing, Dimensions dimensions, Tongue tongue, double top)
    {
        Point2 tip = new(3.2e-3, top), foot = tip + new Point2(0, 12e-3);
        drawing.Add(new DrawnStroke("up", PictureInk.Outline, [foot, tip + new Point2(0, 1e-3)], Closed: false));
        dimensions.Arrow(tip, new(0, -1));
        drawing.Add(new DrawnText(Label.Layer, tongue.Words.Pictures.Up, foot + new Point2(0, 3e-3), new(PictureInk.Small, Palette.Line, TextAnchor.Middle)));
    }
}
