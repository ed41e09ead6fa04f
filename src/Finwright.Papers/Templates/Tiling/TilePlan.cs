using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>How a template is laid out over sheets: tiles in rows and columns that overlap their neighbours.</summary>
public sealed record TilePlan
{
    /// <summary>How far neighbours overlap, metres: room for a mark and for glue.</summary>
    public const double UsualOverlap = 10e-3;

    // A template that is larger than a tile by less than a hundredth of a micrometre fits it.
    private const double Hair = 1e-8;

    // The last tile of a row or column is no smaller, unless all are: a sliver is hard to lay true.
    private const double LeastLast = 40e-3;

    // Cuts are tried this far apart.
    private const double Step = 1e-3;

    private TilePlan(double width, double height, TileRoom room, bool isLandscape, double overlap, IReadOnlyList<DrawnBox> whole)
    {
        (Width, Height, IsLandscape, Overlap) = (width, height, isLandscape, overlap);
        (double From, double To)[] columns = Spread(width, room.Width, overlap, [.. whole.Select(box => (box.From.X, box.To.X))], out int acrossBroken);
        (double From, double To)[] rows = Spread(height, room.Height, overlap, [.. whole.Select(box => (box.From.Y, box.To.Y))], out int downBroken);
        (Columns, Rows, Broken) = (columns.Length, rows.Length, acrossBroken + downBroken);
        Tiles = [.. rows.SelectMany((down, row) => columns.Select((across, column) => new Tile(row, column, new(new(across.From, down.From), new(across.To, down.To)))))];
    }

    /// <summary>Width of the template, metres.</summary>
    public double Width { get; }

    /// <summary>Height of the template, metres.</summary>
    public double Height { get; }

    /// <summary>Whether the long side of the paper lies level.</summary>
    public bool IsLandscape { get; }

    /// <summary>How far neighbours overlap, metres.</summary>
    public double Overlap { get; }

    /// <summary>Number of rows.</summary>
    public int Rows { get; }

    /// <summary>Number of columns.</summary>
    public int Columns { get; }

    /// <summary>How many things that should stay whole are cut by the edge of a sheet, counted for each direction.</summary>
    public int Broken { get; }

    /// <summary>The tiles, row by row.</summary>
    public IReadOnlyList<Tile> Tiles { get; }

    private double JoinLength => (Columns - 1) * Height + (Rows - 1) * Width;

    /// <summary>Lays a template out on pages of one kind; null when they have no room for a tile.</summary>
    /// <param name="width">Width of the template, metres, positive.</param>
    /// <param name="height">Height of the template, metres, positive.</param>
    /// <param name="room">Room for a tile on a page.</param>
    /// <param name="isLandscape">Whether the long side of the paper lies level.</param>
    /// <param name="whole">What should stay whole, on the template, metres: joins run beside it as well as can be.</param>
    /// <param name="overlap">How far neighbours overlap, metres; at most half the least room.</param>
    public static TilePlan? On(double width, double height, TileRoom room, bool isLandscape, IReadOnlyList<DrawnBox>? whole = null, double overlap = UsualOverlap)
    {
        if (!(width > 0 && double.IsFinite(width)))
            throw new ArgumentOutOfRangeException(nameof(width), width, "A template has a width.");
        if (!(height > 0 && double.IsFinite(height)))
            throw new ArgumentOutOfRangeException(nameof(height), height, "A template has a height.");
        if (!(overlap >= 0 && overlap <= TileRoom.Least / 2))
            throw new ArgumentOutOfRangeException(nameof(overlap), overlap, $"Tiles overlap by 0 to {TileRoom.Least / 2} m.");
        return room.IsEnough ? new(width, height, room, isLandscape, overlap, whole ?? []) : null;
    }

    /// <summary>Of two plans the one with fewer sheets; else that which breaks less; else that with the shorter joins; the first when they are alike.</summary>
    /// <exception cref="ArgumentException">There is neither.</exception>
    public static TilePlan Better(TilePlan? first, TilePlan? second)
    {
        if (first is null || second is null)
            return first ?? second ?? throw new ArgumentException($"The paper has no room for a tile of {1e3 * TileRoom.Least:0} x {1e3 * TileRoom.Least:0} mm: take a larger paper.", nameof(first));
        return (second.Tiles.Count, second.Broken, second.JoinLength).CompareTo((first.Tiles.Count, first.Broken, first.JoinLength)) < 0 ? second : first;
    }

    /// <summary>The tile in a place; null when there is none.</summary>
    public Tile? At(int row, int column) => row >= 0 && row < Rows && column >= 0 && column < Columns ? Tiles[row * Columns + column] : null;

    /// <summary>As few as can be. All but the last are of one size: of those whose cuts break the fewest things the one that leaves the last most alike.</summary>
    private static (double From, double To)[] Spread(double length, double room, double overlap, (double From, double To)[] whole, out int broken)
    {
        int count = Math.Max(1, (int)Math.Ceiling((length - overlap - Hair) / (room - overlap)));
        double equal = (length + (count - 1) * overlap) / count;
        (broken, (double, double)[] best) = (0, Cut(equal));
        if (count == 1)
            return best;
        double largest = Math.Min(room, overlap + (length - Math.Min(LeastLast, equal)) / (count - 1));
        broken = int.MaxValue;
        for (int i = 0; equal + i * Step <= largest + Hair; i++)
        {
            (double From, double To)[] tiles = Cut(equal + i * Step);
            // Where tiles overlap, the next one lies on top: its edge is what cuts.
            int breaks = whole.Count(part => tiles.Any(tile => part.From < tile.From - Hair && part.To > tile.From + Hair));
            if (breaks < broken)
                (broken, best) = (breaks, tiles);
        }

        return best;

        (double From, double To)[] Cut(double size) =>
            [.. Enumerable.Range(0, count).Select(i => i * (size - overlap)).Select((from, i) => (from, i + 1 < count ? from + size : length))];
    }
}
