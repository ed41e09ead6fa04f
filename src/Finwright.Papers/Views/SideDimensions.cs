using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>Dimensions of the fin from the side.</summary>
internal static class SideDimensions
{
    /// <summary>Share of the span at which the chord near the tip is told: at the tip itself a round one has none.</summary>
    public const double NearTip = 0.9;

    private const double Beside = 1e-3;

    /// <summary>Span and root chord.</summary>
    /// <param name="drawing">The fin from the side, drawn.</param>
    /// <param name="fin">The fin.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="frame">Where it lies.</param>
    /// <param name="aside">How far the lines of dimensions lie from the fin, metres.</param>
    public static void Main(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside)
    {
        Dimensions dimensions = new(drawing, tongue);
        Geometry.Outlines.Outline outline = fin.Blade.Outline;
        DrawnBox box = drawing.Bounds;
        double span = fin.Blade.Span, rear = Math.Max(outline.TrailingEdge(0), fin.Solids.Plan.RearX);
        double tip = (outline.LeadingEdge(span) + outline.TrailingEdge(span)) / 2;
        dimensions.Down(frame.At(rear, 0), frame.At(tip, span), box.To.X + aside, tongue.Length(span));
        dimensions.Across(frame.At(outline.LeadingEdge(0), 0), frame.At(outline.TrailingEdge(0), 0), box.From.Y - aside, tongue.Length(outline.Chord(0)));
    }

    /// <summary>Chord near the tip, below the fin, and rake, where its number stands clear.</summary>
    public static void Tip(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside)
    {
        Dimensions dimensions = new(drawing, tongue);
        Geometry.Outlines.Outline outline = fin.Blade.Outline;
        double span = fin.Blade.Span, y = NearTip * span, bottom = frame.At(0, span).Y;
        dimensions.Across(
            frame.At(outline.LeadingEdge(y), y), frame.At(outline.TrailingEdge(y), y), bottom + aside,
            tongue.Words.Views.ChordAt(tongue.Percent(NearTip), tongue.Length(outline.Chord(y))));
        Rake(drawing, fin, tongue, frame);
    }

    /// <summary>The hull beside the base.</summary>
    /// <param name="drawing">The fin from the side, drawn.</param>
    /// <param name="fin">The fin.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="frame">Where it lies.</param>
    /// <param name="body">The box round the fin alone.</param>
    public static void Hull(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, DrawnBox body)
    {
        double y = frame.At(0, 0).Y, size = Dimensions.WordSize;
        string word = tongue.Words.Views.Hull;
        double left = body.From.X - Beside - Extent.Length(word, size) - 2e-3, front = frame.At(Math.Min(fin.Blade.Outline.LeadingEdge(0), fin.Solids.Plan.FrontX), 0).X;
        drawing.Add(new DrawnStroke("hull", ViewPens.Thin, [new(left, y), new(front, y)], Closed: false));
        drawing.Add(new DrawnText(Dimensions.WordLayer, word, new(left, y - Beside), new(size, ViewPens.Thin.Colour)));
    }

    // Straight down from the root's quarter chord, and to the tip's quarter chord. Of the places along them the first is taken at which no words touch anything.
    private static void Rake(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame)
    {
        const int places = 14;
        double rake = fin.Planform.Rake, length = frame.Scale * fin.Blade.Span;
        Point2 apex = frame.At(0, 0);
        Drawing? first = null;
        for (int i = 0; i < places; i++)
        {
            Drawing trial = new();
            trial.Add(drawing, default);
            Dimensions dimensions = new(trial, tongue);
            dimensions.Angle(apex, -Math.PI / 2, rake - Math.PI / 2, length * (0.92 - 0.05 * i));
            first ??= trial;
            if (!trial.Items.OfType<DrawnText>().All(words => FreeRoom.IsClear(trial, words, 0.2e-3)))
                continue;
            Take(trial);
            return;
        }

        Take(first!);

        void Take(Drawing trial)
        {
            foreach (DrawnItem item in trial.Items.Skip(drawing.Items.Count).ToArray())
                drawing.Add(item);
        }
    }
}
