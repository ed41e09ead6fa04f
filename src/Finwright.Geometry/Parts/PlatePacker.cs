namespace Finwright.Geometry.Parts;

/// <summary>Where a rectangle went.</summary>
/// <param name="Plate">Number of the plate, from 0.</param>
/// <param name="X">Left edge, metres.</param>
/// <param name="Y">Front edge, metres.</param>
/// <param name="Turned">Whether it was given a quarter turn.</param>
public readonly record struct PackedPlace(int Plate, double X, double Y, bool Turned);

/// <summary>Packs rectangles onto as few plates as practical.</summary>
/// <remarks>
/// Keeps every largest empty rectangle of a plate; puts the next part where it lies lowest, then furthest left, as it is or with a quarter turn.
/// Four orders of the parts are tried and the one with fewest plates, then the least used depth of the last plate, is kept. Not always the best
/// possible packing, which is a hard problem; always the same one.
/// </remarks>
public static class PlatePacker
{
    private readonly record struct Free(double X, double Y, double Width, double Depth);

    /// <summary>Relative slack for rounding: a part of exactly the plate's size goes on it. A nanometre on a bed of a metre.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Packs the rectangles.</summary>
    /// <param name="sizes">Width and depth of each, metres, positive.</param>
    /// <param name="width">Width of a plate's usable area, metres.</param>
    /// <param name="depth">Depth of a plate's usable area, metres.</param>
    /// <param name="gap">Least gap between two rectangles, metres.</param>
    /// <returns>The place of each, in order of <paramref name="sizes"/>, in the usable area's axes; null for one that is larger than a plate.</returns>
    public static IReadOnlyList<PackedPlace?> Pack(IReadOnlyList<Point2> sizes, double width, double depth, double gap)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(depth);
        ArgumentOutOfRangeException.ThrowIfNegative(gap);
        foreach (Point2 size in sizes)
            if (!(size.X > 0 && size.Y > 0 && double.IsFinite(size.X + size.Y)))
                throw new ArgumentException($"A part of {size.X} by {size.Y} m cannot be packed.", nameof(sizes));

        ReadOnlySpan<Func<Point2, double>> orders = [s => s.X * s.Y, s => Math.Max(s.X, s.Y), s => s.Y, s => s.X];
        PackedPlace?[]? best = null;
        (int Plates, double Depth) bestUse = (int.MaxValue, 0);
        foreach (Func<Point2, double> key in orders)
        {
            int[] order = [.. Enumerable.Range(0, sizes.Count).OrderByDescending(i => key(sizes[i]))];
            PackedPlace?[] places = PackInOrder(sizes, order, width, depth, gap);
            (int Plates, double Depth) use = Use(sizes, places);
            if (use.CompareTo(bestUse) < 0)
                (best, bestUse) = (places, use);
        }

        return best!;
    }

    private static PackedPlace?[] PackInOrder(IReadOnlyList<Point2> sizes, int[] order, double width, double depth, double gap)
    {
        // Every part carries its gap at its right and rear, and so does the plate.
        Free whole = new(0, 0, width + gap, depth + gap);
        List<List<Free>> plates = [];
        PackedPlace?[] places = new PackedPlace?[sizes.Count];
        foreach (int i in order)
        {
            Point2 size = new(sizes[i].X + gap, sizes[i].Y + gap);
            for (int plate = 0; places[i] is null; plate++)
            {
                bool fresh = plate == plates.Count;
                if (fresh)
                    plates.Add([whole]);
                if (Lowest(plates[plate], size) is { } place)
                {
                    places[i] = place with { Plate = plate };
                    Occupy(plates[plate], place.Turned ? new(place.X, place.Y, size.Y, size.X) : new(place.X, place.Y, size.X, size.Y));
                }
                else if (fresh)
                {
                    plates.RemoveAt(plate);
                    break;
                }
            }
        }

        return places;
    }

    private static PackedPlace? Lowest(List<Free> rooms, Point2 size)
    {
        PackedPlace? best = null;
        (double, double, double) bestKey = default;
        foreach (Free room in rooms)
        {
            for (int turn = 0; turn < 2; turn++)
            {
                (double w, double d) = turn == 0 ? (size.X, size.Y) : (size.Y, size.X);
                if (w > room.Width * (1 + Rounding) || d > room.Depth * (1 + Rounding))
                    continue;
                (double, double, double) key = (room.Y + d, room.X, turn);
                if (best is null || key.CompareTo(bestKey) < 0)
                    (best, bestKey) = (new(0, room.X, room.Y, turn == 1), key);
            }
        }

        return best;
    }

    private static void Occupy(List<Free> rooms, Free taken)
    {
        List<Free> split = [];
        foreach (Free room in rooms)
        {
            double right = taken.X + taken.Width, rear = taken.Y + taken.Depth;
            double roomRight = room.X + room.Width, roomRear = room.Y + room.Depth;
            if (taken.X >= roomRight || right <= room.X || taken.Y >= roomRear || rear <= room.Y)
            {
                split.Add(room);
                continue;
            }

            if (taken.X > room.X)
                split.Add(room with { Width = taken.X - room.X });
            if (right < roomRight)
                split.Add(room with { X = right, Width = roomRight - right });
            if (taken.Y > room.Y)
                split.Add(room with { Depth = taken.Y - room.Y });
            if (rear < roomRear)
                split.Add(room with { Y = rear, Depth = roomRear - rear });
        }

        rooms.Clear();
        // Rooms inside other rooms add nothing; of equal ones the first stays.
        for (int i = 0; i < split.Count; i++)
            if (!split.Where((other, j) => j != i && Holds(other, split[i]) && (j < i || !Holds(split[i], other))).Any())
                rooms.Add(split[i]);
    }

    private static bool Holds(Free outer, Free inner) =>
        inner.X >= outer.X && inner.Y >= outer.Y && inner.X + inner.Width <= outer.X + outer.Width && inner.Y + inner.Depth <= outer.Y + outer.Depth;

    private static (int Plates, double Depth) Use(IReadOnlyList<Point2> sizes, PackedPlace?[] places)
    {
        int last = places.Max(p => p?.Plate) ?? -1;
        double used = 0;
        for (int i = 0; i < places.Length; i++)
            if (places[i] is { } place && place.Plate == last)
                used = Math.Max(used, place.Y + (place.Turned ? sizes[i].X : sizes[i].Y));
        return (last + 1, used);
    }
}
