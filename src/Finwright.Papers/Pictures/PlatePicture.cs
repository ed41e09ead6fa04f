using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Pictures;

/// <summary>A plate as it lies on the bed, seen from above.</summary>
internal static class PlatePicture
{
    /// <summary>Layer of the bed's edge.</summary>
    public const string BedLayer = "bed";

    /// <summary>Layer of the room that is used.</summary>
    public const string RoomLayer = "usable-room";

    /// <summary>Layer of the parts' outlines.</summary>
    public const string PartLayer = "parts";

    private const double Left = 8.5e-3, Right = 1e-3, Above = 1e-3, Below = 11e-3, DepthAside = 4e-3, WidthBelow = 9e-3, WordsBelow = 3.6e-3, Inset = 0.6e-3;
    private static readonly Drawings.Pen Front = new(Palette.Line, 0.5e-3);

    public static Drawing Draw(AssessmentResult result, int number, Tongue tongue, double width, double height)
    {
        if (result is not { Design: { } design, Parts: { } parts })
            throw new ArgumentException("The parts of the fin were not worked out.", nameof(result));
        Plate plate = parts.Plates.FirstOrDefault(one => one.Number == number) ?? throw new ArgumentOutOfRangeException(nameof(number), number, $"The fin has {parts.Plates.Count} plates.");
        PrintRoom room = RoomFromDesign.Of(design.Print);
        double bedX = 1e-3 * design.Print.BedXMm, bedY = 1e-3 * design.Print.BedYMm;
        RoundScale scale = RoundScale.Largest(Math.Min((width - Left - Right) / bedX, (height - Above - Below) / bedY));
        double factor = scale.Factor, bottom = Above + factor * bedY;
        // The bed's rear lies up on the paper.
        Point2 On(Point3 p) => new(Left + factor * p.X, bottom - factor * p.Y);
        Drawing drawing = new();
        drawing.Add(new DrawnStroke(BedLayer, PictureInk.Thin, Box(On(default), On(new(bedX, bedY, 0))), Closed: true));
        drawing.Add(new DrawnStroke(RoomLayer, PictureInk.Dashed, Box(On(new(room.Edge, room.Edge, 0)), On(new(room.Edge + room.Width, room.Edge + room.Depth, 0))), Closed: true));
        drawing.Add(new DrawnStroke("front", Front, [On(default), On(new(bedX, 0, 0))], Closed: false));

        List<(PlatedPart Plated, IReadOnlyList<IReadOnlyList<Point2>> Rings)> laid = [.. plate.Parts.Select(plated => (plated, Silhouette.Of(plated.Part.Mesh, p => On(plated.Placement.Apply(p)))))];
        foreach ((_, IReadOnlyList<IReadOnlyList<Point2>> rings) in laid)
        {
            drawing.Add(new DrawnArea(PartLayer, PictureInk.Part, rings));
            foreach (IReadOnlyList<Point2> ring in rings)
                drawing.Add(new DrawnStroke(PartLayer, PictureInk.Outline, ring, Closed: true));
        }

        Point2 upperLeft = On(new(0, bedY, 0)), lowerRight = On(new(bedX, 0, 0));
        Labels labels = new(drawing, new(upperLeft + new Point2(Inset, Inset), lowerRight - new Point2(Inset, Inset)));
        List<(Label Label, IReadOnlyList<IReadOnlyList<Point2>> Rings)> outside = [];
        foreach ((PlatedPart plated, IReadOnlyList<IReadOnlyList<Point2>> rings) in laid)
        {
            Label label = new(tongue.Words.Names.Part(plated.Part.Name), tongue.Words.Pictures.High(tongue.Length(plated.Part.Size.Z)), PictureInk.Large, IsBold: true);
            if (!labels.PutInside(label, rings))
                outside.Add((label, rings));
        }

        // Those inside first: what stands beside a part must not take the room inside another.
        foreach ((Label label, IReadOnlyList<IReadOnlyList<Point2>> rings) in outside)
        {
            DrawnBox box = DrawnBox.Round(rings.SelectMany(ring => ring));
            Point2 middle = 0.5 * (box.From + box.To);
            bool isAcross = box.Width > box.Height;
            labels.PutBeside(label, middle, 1e-3 + Math.Min(box.Width, box.Height) / 2, isAcross ? Math.PI / 2 : 0, place => !laid.Exists(one => Silhouette.Holds(one.Rings, place)));
        }

        Dimensions dimensions = new(drawing, tongue);
        dimensions.Across(new(upperLeft.X, bottom), new(lowerRight.X, bottom), bottom + WidthBelow, tongue.Length(bedX, 0));
        dimensions.Down(upperLeft, new(upperLeft.X, bottom), upperLeft.X - DepthAside, tongue.Length(bedY, 0));
        Say(tongue.Words.Pictures.FrontOfBed, upperLeft.X + 1e-3, TextAnchor.Start);
        Say(tongue.Words.Pictures.Scale(tongue.Ratio(scale.Factor)), lowerRight.X - 1e-3, TextAnchor.End);
        return drawing;

        void Say(string words, double x, TextAnchor anchor) =>
            drawing.Add(new DrawnText(Label.Layer, words, new(x, bottom + WordsBelow), new(PictureInk.Small, Palette.Quiet, anchor)));
    }

    private static IReadOnlyList<Point2> Box(Point2 a, Point2 b) => [a, new(b.X, a.Y), b, new(a.X, b.Y)];
}
