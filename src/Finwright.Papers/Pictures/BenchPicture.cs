using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;
using Finwright.Strength.FromDesign;

namespace Finwright.Papers.Pictures;

/// <summary>The fin held level by its base, from above and from the side, with the weight and the places to read.</summary>
internal static class BenchPicture
{
    /// <summary>Layer of the blade's outline from above.</summary>
    public const string BladeLayer = "blade";

    /// <summary>Layer of the mark at the weight's loop.</summary>
    public const string WeightLayer = "weight";

    /// <summary>Layer of the places to read.</summary>
    public const string ReadLayer = "read";

    // Room: left for what holds the base, right for letters at the tip, above for words; below the view from above for two dimensions.
    private const double Left = 6e-3, Right = 12e-3, Between = 6e-3, Above = 10e-3, DistanceBelow = 6e-3, SpanBelow = 11.5e-3, SideBelow = 15e-3, Base = 3e-3, HullAbove = 3e-3, HullBelow = 4e-3;
    private const int Steps = 160;

    /// <summary>Letters of the places to read: leading edge, middle and trailing edge of the section where the weight hangs, then of the tip.</summary>
    public static IReadOnlyList<string> Letters { get; } = ["A", "B", "C", "D", "E", "F"];

    public static Drawing Draw(AssessmentResult result, Tongue tongue, double width, double height)
    {
        if (result is not { Design: { } design, Blade: { } blade, Solids: { } solids })
            throw new ArgumentException("Blade and base of the fin were not worked out.", nameof(result));
        BasePlan plan = solids.Plan;
        double span = blade.Span, depth = design.Prove.AtSpanPercent / 100 * span;
        Point2[] outline = Outline(blade), foot = [.. plan.Ring().Select(Lengthwise)];
        DrawnBox box = DrawnBox.Round([.. outline, .. foot]);
        Layout layout = Layout.Roomiest(width, height, box, across => new(blade, plan, depth, result.Bench?.Prediction, tongue.Words.Pictures, across));
        (BenchSide side, double factor) = (layout.Side, layout.Scale.Factor);
        Point2 On(Point2 lengthwise) => new(Left + factor * (lengthwise.X - box.From.X), Above + factor * (lengthwise.Y - box.From.Y));
        double hull = On(default).X, bottom = On(box.To).Y;

        Drawing drawing = new();
        Hold(drawing, [.. foot.Select(On)], hull);
        Point2[] drawn = [.. outline.Select(On)];
        drawing.Add(new DrawnArea(BladeLayer, PictureInk.Part, [drawn]));
        drawing.Add(new DrawnStroke(BladeLayer, PictureInk.Outline, drawn, Closed: true));

        Point2 At(double y, double share) => On(new(y, blade.Outline.LeadingEdge(y) + share * blade.Outline.Chord(y)));
        Point2[] places = [At(depth, 0), At(depth, 0.5), At(depth, 1), At(span, 0), At(span, 0.5), At(span, 1)];
        drawing.Add(new DrawnStroke("section", PictureInk.Dashed, [places[0], places[2]], Closed: false));
        Point2 weight = At(depth, ChordShare.Of(design.Prove.AtChord));
        drawing.Add(new DrawnStroke(WeightLayer, PictureInk.Outline, Rounds.Circle(weight, 2e-3), Closed: true));
        foreach (Point2 place in places)
        {
            IReadOnlyList<Point2> dot = Rounds.Circle(place, 0.7e-3);
            drawing.Add(new DrawnArea(ReadLayer, PictureInk.Bare, [dot]));
            drawing.Add(new DrawnStroke(ReadLayer, PictureInk.Fitting, dot, Closed: true));
        }

        Point2[] aside = [new(0, -2.6e-3), new(4.2e-3, 0), new(3e-3, 2.2e-3), new(4.5e-3, -4.5e-3), new(7e-3, 0), new(4.5e-3, 4.5e-3)];
        foreach ((int index, string letter) in Letters.Index())
            Letter(drawing, letter, places[index], aside[index], hasLeader: index > 2);

        Dimensions dimensions = new(drawing, tongue);
        Point2 root = new(hull, bottom);
        dimensions.Across(root, new(weight.X, Math.Max(weight.Y, places[2].Y)), bottom + DistanceBelow, tongue.Length(depth, 0));
        dimensions.Across(root, new(places[5].X, Math.Max(places[5].Y, places[4].Y)), bottom + SpanBelow, tongue.Length(span, 0));
        PictureWords words = tongue.Words.Pictures;
        side.Draw(drawing, dimensions, tongue, factor, layout.SideAt, hull, design.Prove.MassKg);
        drawing.Add(new DrawnStroke("hull", PictureInk.Dashed, [new(hull, Above - HullAbove), new(hull, bottom + HullBelow)], Closed: false));
        Say(drawing, $"{words.FromAbove}, {words.Scale(tongue.Ratio(layout.Scale.Factor))}", new(0, Base));
        Say(drawing, words.HullPlane, new(hull + 1e-3, Above - 2e-3));
        Labels labels = new(drawing, new(new(hull, Above - 4e-3), new(layout.PlanWidth, bottom + SpanBelow)));
        // Between weight and tip, where neither letters nor dimensions are in the way.
        double beyond = depth + 0.45 * (span - depth);
        labels.PutBeside(new(words.LeadingEdge), At(beyond, 0), 1e-3, Math.PI / 2);
        labels.PutBeside(new(words.TrailingEdge), At(beyond, 1), 1e-3, -Math.PI / 2);
        return drawing;
    }

    /// <summary>Where the two views lie: side by side or one below the other, whichever makes them larger.</summary>
    /// <param name="Side">The view from the side.</param>
    /// <param name="Scale">Scale of both.</param>
    /// <param name="PlanWidth">Width of the room of the view from above, metres.</param>
    /// <param name="SideAt">Where the room of the view from the side begins.</param>
    private sealed record Layout(BenchSide Side, RoundScale Scale, double PlanWidth, Point2 SideAt)
    {
        /// <summary>The layout with the larger scale.</summary>
        /// <param name="width">Width of the room, metres.</param>
        /// <param name="height">Height of the room, metres.</param>
        /// <param name="box">The fin from above, true size.</param>
        /// <param name="side">The view from the side in a room of a width.</param>
        public static Layout Roomiest(double width, double height, DrawnBox box, Func<double, BenchSide> side)
        {
            double half = (width - Between) / 2;
            BenchSide below = side(width), beside = side(half);
            double factorBelow = Math.Min((width - Left - Right) / box.Width, (height - Above - SideBelow - below.Fixed) / (box.Height + below.TrueHeight));
            double factorBeside = Math.Min((half - Left - Right) / box.Width, Math.Min((height - Above - SideBelow) / box.Height, (height - beside.Fixed) / beside.TrueHeight));
            if (factorBelow >= factorBeside)
            {
                RoundScale scale = RoundScale.Largest(factorBelow);
                return new(below, scale, width, new(0, Above + scale.Factor * box.Height + SideBelow));
            }

            RoundScale abreast = RoundScale.Largest(factorBeside);
            double planWidth = Left + abreast.Factor * box.Width + Right;
            return new(beside, abreast, planWidth, new(planWidth + Between, 0));
        }
    }

    /// <summary>From the side of the fin to the bench: the span to the right, aft down the paper.</summary>
    private static Point2 Lengthwise(Point2 side) => new(side.Y, side.X);

    private static Point2[] Outline(Blade blade)
    {
        // Closer together toward the tip, where the edges turn.
        double[] depths = [.. Enumerable.Range(0, Steps + 1).Select(i => blade.Span * Math.Sin(Math.PI / 2 * i / Steps))];
        return [.. depths.Select(y => new Point2(y, blade.Outline.LeadingEdge(y))), .. depths.Reverse().Select(y => new Point2(y, blade.Outline.TrailingEdge(y)))];
    }

    private static void Hold(Drawing drawing, Point2[] foot, double hull)
    {
        const double beyond = 3e-3;
        DrawnBox box = DrawnBox.Round(foot);
        IReadOnlyList<Point2> block = [new(box.From.X - beyond, box.From.Y - beyond), new(hull, box.From.Y - beyond), new(hull, box.To.Y + beyond), new(box.From.X - beyond, box.To.Y + beyond)];
        Hatching.Draw(drawing, "holder", PictureInk.Thin, [block, foot], Math.PI / 4, 1.6e-3);
        drawing.Add(new DrawnStroke("holder", PictureInk.Fitting, block, Closed: true));
        drawing.Add(new DrawnArea("base", PictureInk.Part, [foot]));
        drawing.Add(new DrawnStroke("base", PictureInk.Outline, foot, Closed: true));
    }

    private static void Letter(Drawing drawing, string letter, Point2 place, Point2 aside, bool hasLeader)
    {
        Point2 middle = place + aside;
        if (hasLeader)
            drawing.Add(new DrawnStroke("leaders", PictureInk.Thin, [place + 0.7e-3 / aside.Length * aside, place + (1 - 2e-3 / aside.Length) * aside], Closed: false));
        foreach (DrawnText text in new Label(letter, Size: PictureInk.Large, IsBold: true).Laid(middle))
            drawing.Add(text);
    }

    private static void Say(Drawing drawing, string text, Point2 at) =>
        drawing.Add(new DrawnText(Label.Layer, text, at, new(PictureInk.Small, Palette.Quiet)));
}
