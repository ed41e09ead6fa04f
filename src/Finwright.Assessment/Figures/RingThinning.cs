using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Leaves out points of a ring that lie as good as on the line between those that stay, so that files stay small.</summary>
/// <remarks>D. Douglas and T. Peucker's way (1973), from memory: the point farthest from the line is kept while it is farther than a limit; both halves likewise.</remarks>
internal static class RingThinning
{
    /// <summary>The ring with fewer points; never fewer than three of three or more.</summary>
    /// <param name="ring">The ring, last point not repeated.</param>
    /// <param name="limit">How far a point left out may lie beside the line, positive.</param>
    public static IReadOnlyList<DataPoint> Of(IReadOnlyList<DataPoint> ring, double limit)
    {
        if (ring.Count <= 4)
            return ring;
        bool[] isKept = new bool[ring.Count + 1];
        // A ring has no ends: it is cut at its first point and at the one farthest from it.
        int far = Farthest(ring, 0, ring.Count, 0).Index;
        isKept[0] = isKept[far] = true;
        Stack<(int From, int To)> open = new([(0, far), (far, ring.Count)]);
        while (open.TryPop(out (int From, int To) part))
        {
            (int index, double distance) = Farthest(ring, part.From, part.To, part.To % ring.Count);
            if (index < 0 || distance <= limit)
                continue;
            isKept[index] = true;
            open.Push((part.From, index));
            open.Push((index, part.To));
        }

        DataPoint[] kept = [.. ring.Where((_, index) => isKept[index])];
        return kept.Length < 3 ? ring : kept;
    }

    /// <summary>Of the points between two, the farthest from the line through their ends; −1 when there is none.</summary>
    private static (int Index, double Distance) Farthest(IReadOnlyList<DataPoint> ring, int from, int to, int end)
    {
        (DataPoint a, DataPoint b) = (ring[from], ring[end]);
        double dx = b.X - a.X, dy = b.Y - a.Y, length = Math.Sqrt(dx * dx + dy * dy), most = -1;
        int farthest = -1;
        for (int i = from + 1; i < to; i++)
        {
            (double x, double y) = (ring[i].X - a.X, ring[i].Y - a.Y);
            double along = length > 0 ? Math.Clamp((x * dx + y * dy) / (length * length), 0, 1) : 0;
            double distance = Math.Sqrt((x - along * dx) * (x - along * dx) + (y - along * dy) * (y - along * dy));
            if (distance > most)
                (farthest, most) = (i, distance);
        }

        return (farthest, most);
    }
}
