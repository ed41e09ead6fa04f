using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pictures;

/// <summary>Places labels where they cross nothing and stay within a room.</summary>
/// <param name="drawing">Where they go; what is drawn already is kept clear.</param>
/// <param name="room">The room.</param>
internal sealed class Labels(Drawing drawing, DrawnBox room)
{
    // Free rim round words, and steps of the search, metres.
    private const double Rim = 0.5e-3, Step = 1.2e-3;
    private const int Ways = 24, Steps = 24, Columns = 21;

    /// <summary>Puts a label inside rings, level or else reading upward, as near to their middle as it can be.</summary>
    /// <returns>Whether there was room.</returns>
    public bool PutInside(Label label, IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        DrawnBox box = DrawnBox.Round(rings.SelectMany(ring => ring));
        Point2 middle = 0.5 * (box.From + box.To);
        foreach (double turn in (ReadOnlySpan<double>)[0, Math.PI / 2])
        {
            IEnumerable<Point2> places =
                from row in Enumerable.Range(0, Columns)
                from column in Enumerable.Range(0, Columns)
                let place = new Point2(box.From.X + (column + 0.5) / Columns * box.Width, box.From.Y + (row + 0.5) / Columns * box.Height)
                orderby (place - middle).Length
                select place;
            foreach (Point2 place in places)
                if (Silhouette.Holds(rings, place) && TryPut(label.Laid(place, turn), corner => Silhouette.Holds(rings, corner)))
                    return true;
        }

        return false;
    }

    /// <summary>Puts a label beside a place, with a thin line to it when it stands off.</summary>
    /// <param name="label">The label.</param>
    /// <param name="place">What it belongs to.</param>
    /// <param name="nearest">Least distance of its edge from the place, metres.</param>
    /// <param name="wanted">Direction in which it should stand, turned counter-clockwise from the right, radians.</param>
    /// <param name="isFree">Whether words may stand at a place; null for anywhere.</param>
    /// <param name="leader">Distance from which on there is a line, metres.</param>
    public void PutBeside(Label label, Point2 place, double nearest, double wanted, Func<Point2, bool>? isFree = null, double leader = 4e-3)
    {
        for (int step = 0; step < Steps; step++)
        {
            for (int way = 0; way < Ways; way++)
            {
                double turn = wanted + (way % 2 == 0 ? way / 2 : -(way + 1) / 2) * Math.Tau / Ways, reach = nearest + step * Step;
                (double sin, double cos) = Math.SinCos(turn);
                Point2 middle = place + new Point2(cos * (reach + label.Length / 2), -sin * (reach + label.Height / 2));
                DrawnStroke? line = reach >= leader ? Leader(label, middle, place) : null;
                if (line is not null && !IsClearOfWords(line) || !TryPut(label.Laid(middle), isFree))
                    continue;
                if (line is not null)
                    drawing.Add(line);
                return;
            }
        }

        // Nothing is free: within the room all the same.
        Point2 half = new(label.Length / 2 + Rim, label.Height / 2 + Rim);
        Point2 squeezed = new(Math.Clamp(place.X, room.From.X + half.X, Math.Max(room.From.X + half.X, room.To.X - half.X)), Math.Clamp(place.Y - nearest, room.From.Y + half.Y, Math.Max(room.From.Y + half.Y, room.To.Y - half.Y)));
        foreach (DrawnText text in label.Laid(squeezed))
            drawing.Add(text);
    }

    private bool TryPut(IReadOnlyList<DrawnText> texts, Func<Point2, bool>? isFree)
    {
        foreach (DrawnText text in texts)
        {
            IReadOnlyList<Point2> corners = Extent.Corners(text);
            if (!corners.All(IsInRoom) || isFree is not null && !corners.All(isFree) || !FreeRoom.IsClear(drawing, text, Rim))
                return false;
        }

        foreach (DrawnText text in texts)
            drawing.Add(text);
        return true;
    }

    private bool IsInRoom(Point2 p) => p.X >= room.From.X && p.Y >= room.From.Y && p.X <= room.To.X && p.Y <= room.To.Y;

    private bool IsClearOfWords(DrawnStroke line)
    {
        Drawing alone = new();
        alone.Add(line);
        return drawing.Items.OfType<DrawnText>().All(text => FreeRoom.IsClear(alone, text, 0));
    }

    // From the edge of the words that is nearest to the place; null when there is no way to go.
    private static DrawnStroke? Leader(Label label, Point2 middle, Point2 place)
    {
        Point2 half = new(label.Length / 2 + Rim, label.Height / 2 + Rim);
        Point2 from = new(Math.Clamp(place.X, middle.X - half.X, middle.X + half.X), Math.Clamp(place.Y, middle.Y - half.Y, middle.Y + half.Y));
        return (place - from).Length > Rim ? new("leaders", PictureInk.Thin, [from, place], Closed: false) : null;
    }
}
