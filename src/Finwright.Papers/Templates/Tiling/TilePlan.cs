using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>How a template is laid out over sheets: equal tiles in rows and columns that overlap their neighbours.</summary>
public sealed record TilePlan
{
    /// <summary>How far neighbours overlap, metres: room for a mark and for glue.</summary>
    public const double UsualOverlap = 10e-3;

    // A template that is larger than a tile by less than a hundredth of a micrometre fits it.
    private const double Hair = 1e-8;

    private TilePlan(double width, double height, TileRoom room, bool isLandscape, double overlap)
    {
        (Width, Height, IsLandscape, Overlap) = (width, height, isLandscape, overlap);
        (Columns, TileWidth) = Spread(width, room.Width, overlap);
        (Rows, TileHeight) = Spread(height, room.Height, overlap);
        Tiles = [.. Enumerable.Range(0, Rows).SelectMany(row => Enumerable.Range(0, Columns).Select(column => new Tile(row, column, Box(row, column))))];
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

    /// <summary>Width of each tile, metres.</summary>
    public double TileWidth { get; }

    /// <summary>Height of each tile, metres.</summary>
    public double TileHeight { get; }

    /// <summary>The tiles, row by row.</summary>
    public IReadOnlyList<Tile> Tiles { get; }

    /// <summary>Lays a template out, upright or landscape, whichever takes fewer sheets; upright when both take as many.</summary>
    /// <param name="width">Width of the template, metres, positive.</param>
    /// <param name="height">Height of the template, metres, positive.</param>
    /// <param name="upright">Room for a tile on an upright page.</param>
    /// <param name="landscape">Room for a tile on a landscape page.</param>
    /// <param name="overlap">How far neighbours overlap, metres; at most half the least room.</param>
    /// <exception cref="ArgumentException">Neither page has room enough.</exception>
    public static TilePlan Of(double width, double height, TileRoom upright, TileRoom landscape, double overlap = UsualOverlap)
    {
        if (!(width > 0 && double.IsFinite(width)))
            throw new ArgumentOutOfRangeException(nameof(width), width, "A template has a width.");
        if (!(height > 0 && double.IsFinite(height)))
            throw new ArgumentOutOfRangeException(nameof(height), height, "A template has a height.");
        if (!(overlap >= 0 && overlap <= TileRoom.Least / 2))
            throw new ArgumentOutOfRangeException(nameof(overlap), overlap, $"Tiles overlap by 0 to {TileRoom.Least / 2} m.");
        TilePlan[] plans =
        [
            .. new[] { (Room: upright, IsLandscape: false), (Room: landscape, IsLandscape: true) }
                .Where(page => page.Room.IsEnough)
                .Select(page => new TilePlan(width, height, page.Room, page.IsLandscape, overlap)),
        ];
        return plans.MinBy(plan => plan.Tiles.Count)
            ?? throw new ArgumentException($"The paper has no room for a tile of {1e3 * TileRoom.Least:0} x {1e3 * TileRoom.Least:0} mm: take a larger paper.", nameof(upright));
    }

    /// <summary>The tile in a place; null when there is none.</summary>
    public Tile? At(int row, int column) => row >= 0 && row < Rows && column >= 0 && column < Columns ? Tiles[row * Columns + column] : null;

    private DrawnBox Box(int row, int column)
    {
        Point2 from = new(column * (TileWidth - Overlap), row * (TileHeight - Overlap));
        return new(from, from + new Point2(TileWidth, TileHeight));
    }

    // As few as can be, all of one size: the last one is then no sliver.
    private static (int Count, double Size) Spread(double length, double room, double overlap)
    {
        int count = Math.Max(1, (int)Math.Ceiling((length - overlap - Hair) / (room - overlap)));
        return (count, (length + (count - 1) * overlap) / count);
    }
}
