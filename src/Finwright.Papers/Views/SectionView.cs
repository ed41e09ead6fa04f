using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>A section hatched by material, with chord and thickness.</summary>
internal static class SectionView
{
    private const double Turn = Math.PI / 4, Spacing = 1e-3;

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="section">The section.</param>
    /// <param name="letter">Its letter.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="frame">Where its leading edge lies.</param>
    /// <param name="aside">How far the lines of dimensions lie from it, metres.</param>
    /// <param name="compact">Whether its sizes are told in words above it.</param>
    public static void Draw(Drawing drawing, SectionCut section, string letter, Tongue tongue, ViewFrame frame, double aside, bool compact)
    {
        IReadOnlyList<Point2> skin = frame.At(section.Skin);
        IReadOnlyList<Point2>[] core = [.. section.Core.Select(frame.At)], rods = [.. section.Rods.Select(frame.At)], bores = [.. section.Bores.Select(frame.At)];
        drawing.Add(new DrawnArea("walls", ViewPens.Wall, [skin, .. core]));
        Hatching.Draw(drawing, "core", ViewPens.Hatch, [.. core, .. rods, .. bores], Turn, Spacing);
        foreach (IReadOnlyList<Point2> rod in rods)
            drawing.Add(new DrawnArea("rods", ViewPens.Rod, [rod]));
        foreach (IReadOnlyList<Point2> round in (IReadOnlyList<Point2>[])[.. rods, .. bores])
            drawing.Add(new DrawnStroke("inside", ViewPens.Fine, round, Closed: true));
        drawing.Add(new DrawnStroke("skin", ViewPens.Fine, skin, Closed: true));

        Point2 high = skin.MinBy(p => p.Y), low = skin.MaxBy(p => p.Y), nose = skin.MinBy(p => p.X), tail = skin.MaxBy(p => p.X);
        string depth = tongue.BareLength(section.Depth), chord = tongue.BareLength(section.Chord), thickness = tongue.BareLength(section.Thickness);
        string label = compact ? tongue.Words.Views.SectionOfSize(letter, depth, chord, thickness) : tongue.Words.Views.SectionAt(letter, depth);
        if (!compact)
        {
            NumberBeside.Down(drawing, tongue, high, low, nose.X - aside, thickness);
            new Dimensions(drawing, tongue).Across(nose, tail, low.Y + aside, chord);
        }

        drawing.Add(new DrawnText(Dimensions.WordLayer, label, new(nose.X, high.Y - 1.6e-3), new(Dimensions.WordSize, ViewPens.Edge.Colour)));
    }
}
