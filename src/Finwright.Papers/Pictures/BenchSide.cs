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
internal sealed class BenchSide(Blade blade, BasePlan plan, double depth, BenchPrediction? prediction)
{
    private const double WordRoom = 5e-3, LetterRoom = 8e-3, HalfHolder = 6e-3, Cord = 7e-3, HalfWeight = 4.5e-3, WeightHeight = 6e-3, Clear = 2e-3, CushionHeight = 2.6e-3, HalfCushion = 8e-3, Rim = 1e-3;
    private const int Steps = 80, ChordSteps = 60;

    /// <summary>Height that words, weight and what lies below take whatever the scale, metres.</summary>
    public const double Fixed = WordRoom + LetterRoom + HalfHolder + Cord + WeightHeight + Clear + CushionHeight + Rim;

    private readonly (double Depth, double Half)[] _halves = [.. Enumerable.Range(0, Steps + 1).Select(i => blade.Span * i / Steps).Select(y => (y, Half(blade, y)))];

    /// <summary>Height that the fin itself takes, bent, metres.</summary>
    public double TrueHeight => 2 * Thickest + (prediction?.Along.Max(section => Math.Max(0, section.MidChord)) ?? 0);

    private double Thickest => Math.Max(_halves.Max(one => one.Half), Math.Max(plan.HullWidth, plan.DeepWidth) / 2);

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="dimensions">For arrows.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="factor">Scale.</param>
    /// <param name="hull">Where the hull plane lies across the paper, metres.</param>
    /// <param name="top">Where it begins, metres down.</param>
    /// <param name="mass">Mass of the weight, kg.</param>
    /// <returns>Lower end of what holds the base, metres down.</returns>
    public double Draw(Drawing drawing, Dimensions dimensions, Tongue tongue, double factor, double hull, double top, double mass)
    {
        PictureWords words = tongue.Words.Pictures;
        double middle = top + WordRoom + LetterRoom + Math.Max(HalfHolder - LetterRoom, 0) + factor * Thickest;
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
        Say(tongue.Mass(mass), new(hook.X + HalfWeight + 1.5e-3, weightTop + WeightHeight / 2 + 1e-3), PictureInk.Large, isBold: true);
        Say(words.Cushion, new(hook.X + HalfCushion + 1.5e-3, floor - 0.5e-3), PictureInk.Small);
        Say(prediction is null ? words.FromSide : $"{words.FromSide}, {words.BentDashed}", new(0, top + 3e-3), PictureInk.Small);
        double room = hook.X - HalfCushion - 2e-3;
        foreach ((int index, string line) in Extent.Wrap(words.HeldInBox, PictureInk.Small, room).Index())
            Say(line, new(0, middle + holderHalf + 3.4e-3 + index * Notes.Line), PictureInk.Small);
        return middle + holderHalf;

        void Say(string text, Point2 at, double size, bool isBold = false) =>
            drawing.Add(new DrawnText(Label.Layer, text, at, new(size, isBold ? Palette.Line : Palette.Quiet, Bold: isBold)));
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
