using Finwright.Assessment;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The fin drawn from its sides.</summary>
public static class FinViews
{
    private const double Aside = 7e-3, WordSize = 2.8e-3;

    /// <summary>The fin from the side with base, parts, rods and nuts, span and root chord, in the largest round scale that fits a room; the scale stands below it.</summary>
    /// <param name="result">A fin that can be made.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres.</param>
    /// <param name="height">Height of the room, metres.</param>
    /// <returns>The drawing; its box begins at the origin.</returns>
    /// <exception cref="ArgumentException">The fin has errors or was not worked out to its parts, or the room is too small for any scale.</exception>
    public static Drawing Cover(AssessmentResult result, Tongue tongue, double width, double height)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(tongue);
        TemplateFin fin = TemplateFin.Of(result);
        foreach (double scale in ViewScale.All)
        {
            Drawing drawing = Cover(fin, tongue, scale);
            DrawnBox box = drawing.Bounds;
            if (box.Width <= width && box.Height <= height)
                return drawing.Moved(-1 * box.From);
        }

        throw new ArgumentException($"A room of {width} x {height} m is too small to draw the fin in.", nameof(width));
    }

    private static Drawing Cover(TemplateFin fin, Tongue tongue, double scale)
    {
        Drawing drawing = new();
        ViewFrame frame = new(scale, default);
        SideOfFin.Draw(drawing, fin, frame);
        SideDimensions.Main(drawing, fin, tongue, frame, Aside);
        DrawnBox box = drawing.Bounds;
        drawing.Add(new DrawnText("notes", tongue.Ratio(scale), new((box.From.X + box.To.X) / 2, box.To.Y + 2 * WordSize), new(WordSize, Palette.Quiet, TextAnchor.Middle)));
        return drawing;
    }
}
