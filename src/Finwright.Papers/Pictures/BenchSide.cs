using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;
using Finwright.Strength.Bench;

namespace Finwright.Papers.Pictures;

/// <summary>The fin on the bench from the side: how thick, how far it bends, where the weight hangs.</summary>
/// <param name="blade">The blade.</param>
/// <param name="plan">The base.</param>
/// <param name="depth">Distance of the weight from the hull, metres.</param>
/// <param name="prediction">What the weight should do; null when it is not known.</param>
/// <param name="words">What it says.</param>
/// <param name="width">Width of its room, metres.</param>
internal sealed class BenchSide(Blade blade, BasePlan plan, double depth, BenchPrediction? prediction, PictureWords words, double width)
{
    private const double WordBase = 3e-3, WordRoom = 2e-3, LetterRoom = 8e-3, HeldRoom = 4.2e-3, HalfHolder = 6e-3, Cord = 7e-3, HalfWeight = 4.5e-3, WeightHeight = 6e-3, Clear = 2e-3, CushionHeight = 2.6e-3, HalfCushion = 8e-3, Rim = 1e-3;
    private const int Steps = 80, ChordSteps = 60;

    // What stands above it, no wider than its room.
    private readonly IReadOnlyList<string> _head = Extent.Wrap(prediction is null ? words.FromSide : $"{words.FromSide}, {words.BentDashed}", PictureInk.Small, width);

    private readonly (double Depth, double Half)[] _halves = [.. Enumerable.Range(0, Steps + 1).Select(i => blade.Span * i / Steps).Select(y => (y, Half(blade, y)))];

    /// <summary>Height that words, weight and what lies below take whatever the scale, metres.</summary>
    public double Fixed => Head + LetterRoom + HalfHolder + Cord + WeightHeight + Clear + CushionHeight + HeldRoom + Rim;

    /// <summary>Height that the fin itself takes, bent, metres.</summary>
    public double TrueHeight => 2 * Thickest + (prediction?.Along.Max(section => Math.Max(0, section.MidChord)) ?? 0);

    private double Head => WordBase + (_head.Count - 1) * Notes.Line + WordRoom;

    private double Thickest => Math.Max(_halves.Max(one => one.Half), Math.Max(plan.HullWidth, plan.DeepWidth) / 2);

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="dimensions">For arrows.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="factor">Scale.</param>
    /// <param name="at">Where its room begins.</param>
    /// <param name="left">From there to the hull plane, metres.</param>
    /// <param name="mass">Mass of the weight, kg.</param>
    public void Draw(Drawing drawing, Dimensions dimensions, Tongue tongue, double factor, Point2 at, double left, double mass)
    {
        double hull = at.X + left, middle = at.Y + Head + LetterRoom + Math.Max(HalfHolder - LetterRoom, 0) + factor * Thickest;
        double holderHalf = Math.Max(HalfHolder, factor * Thickest + 2e-3);
        Point2 On(double y, double down) => new(hull + factor * y, middle + factor * down);

        // The base tapers from hull to deep end.
        Point2[] foot = [On(0, -plan.HullWidth / 2), On(-plan.Depth, -plan.DeepWidth / 2), On(-plan.Depth, plan.DeepWidth / 2), On(0, plan.HullWidth / 2)];
        double rear = foot[1].X - 3e-3;
        IReadOnlyList<Point2> block = [new(rear, middle - holderHalf), new(hull, middle - holderHalf), new(hull, middle + holderHalf), new(rear, middle + holderHalf)];
        Hatching.Draw(drawing, "holder", PictureInk.Thin, [block, foot], Math.PI / 4, 1.6e-3);
        drawing.Add(new DrawnStroke("holder", PictureInk.Fitting, block, Closed: true));
        drawing.Add(new DrawnArea("base", PictureInk.Part, [foot]));
        drawing.Add(new DrawnStroke("base", PictureInk.Outline, foot, Closed: true));
        drawing.Add(new DrawnStroke("hull", PictureInk.Dashed, [new(hull, middle - holderHalf - 2.5e-3), new(hull, middle + holderHalf + 2.5e-3)], Closed: false));
        Point2[] body = [.. _halves.Select(one => On(one.Depth, -one.Half)), .. _halves.Reverse().Select(one => On(one.Depth, one.Half))];
        drawing.Add(new DrawnArea("blade-side", PictureInk.Part, [body]));
        drawing.Add(new DrawnStroke("blade-side", PictureInk.Outline, body, Closed: true));
        if (prediction is { Along.Count: > 1 })
            drawing.Add(new DrawnStroke("bent", PictureInk.Bent, [.. prediction.Along.Select(section => On(section.Depth, section.MidChord))], Closed: false));

        Read(drawing, dimensions, string.Join(' ', BenchPicture.Letters.Take(3)), On(depth, -Half(blade, depth)));
        Read(drawing, dimensions, string.Join(' ', BenchPicture.Letters.Skip(3)), On(blade.Span, 0));
        Point2 hook = On(depth, Half(blade, depth));
        double weightTop = middle + factor * Thickest + Cord, weightEnd = weightTop + WeightHeight, cushion = weightEnd + Clear, floor = cushion + CushionHeight;
        drawing.Add(new DrawnStroke(BenchPicture.WeightLayer, PictureInk.Fitting, [hook, new(hook.X, weightTop)], Closed: false));
        IReadOnlyList<Point2> weight = [new(hook.X - HalfWeight, weightTop), new(hook.X + HalfWeight, weightTop), new(hook.X + HalfWeight, weightEnd), new(hook.X - HalfWeight, weightEnd)];
        drawing.Add(new DrawnArea("mass", PictureInk.Wall, [weight]));
        drawing.Add(new DrawnStroke("mass", PictureInk.Outline, weight, Closed: true));
        IReadOnlyList<Point2> soft = [new(hook.X - HalfCushion, cushion), new(hook.X + HalfCushion, cushion), new(hook.X + HalfCushion, floor), new(hook.X - HalfCushion, floor)];
        Hatching.Draw(drawing, "cushion", PictureInk.Thin, [soft], -Math.PI / 4, 1.0e-3);
        drawing.Add(new DrawnStroke("cushion", PictureInk.Fitting, soft, Closed: true));
        Beside(tongue.Mass(mass), HalfWeight, weightTop + WeightHeight / 2 + 1e-3, PictureInk.Large, isBold: true);
        Beside(words.Cushion, HalfCushion, floor - 0.5e-3, PictureInk.Small);
        foreach ((int index, string line) in _head.Index())
            Say(line, new(at.X, at.Y + WordBase + index * Notes.Line), PictureInk.Small);
        // What holds the base is told below everything, where there is room for its words.
        double held = floor + HeldRoom;
        drawing.Add(new DrawnStroke("leaders", PictureInk.Thin, [new(rear + 1.5e-3, middle + holderHalf), new(rear + 1.5e-3, held - PictureInk.Small)], Closed: false));
        Say(words.HeldInBox, new(at.X, held), PictureInk.Small);

        // To the right of weight and cushion, or where the room ends there, to the left.
        void Beside(string text, double half, double y, double size, bool isBold = false)
        {
            double off = half + 1.5e-3;
            bool isRight = hook.X + off + Extent.Length(text, size, isBold) <= at.X + width;
            Say(text, new(hook.X + (isRight ? off : -off), y), size, isBold, isRight ? TextAnchor.Start : TextAnchor.End);
        }

        void Say(string text, Point2 place, double size, bool isBold = false, TextAnchor anchor = TextAnchor.Start) =>
            drawing.Add(new DrawnText(Label.Layer, text, place, new(size, isBold ? Palette.Line : Palette.Quiet, anchor, isBold)));
    }

    // Letters over an arrow to the place where a ruler stands.
    private static void Read(Drawing drawing, Dimensions dimensions, string letters, Point2 at)
    {
        Point2 tip = at - new Point2(0, 0.5e-3), tail = tip - new Point2(0, 4e-3);
        drawing.Add(new DrawnStroke("read-side", PictureInk.Thin, [tail, tip], Closed: false));
        dimensions.Arrow(tip, new(0, 1));
        drawing.Add(new DrawnText(Label.Layer, letters, tail - new Point2(0, 0.8e-3), new(PictureInk.Small, Palette.Line, TextAnchor.Middle, Bold: true)));
    }

    private static double Half(Blade blade, double y)
    {
        double leading = blade.Outline.LeadingEdge(y), chord = blade.Outline.Chord(y);
        return Enumerable.Range(1, ChordSteps - 1).Max(i => blade.HalfThickness(leading + chord * i / ChordSteps, y));
    }
}
