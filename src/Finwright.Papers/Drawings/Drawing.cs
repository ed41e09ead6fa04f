using Finwright.Geometry;
using Finwright.Geometry.Pictures;

namespace Finwright.Papers.Drawings;

/// <summary>A pen.</summary>
/// <param name="Colour">Its ink.</param>
/// <param name="Width">Width of its line, metres.</param>
/// <param name="Dashes">Lengths of dash and gap in turn, metres; null for a whole line.</param>
public sealed record Pen(Ink Colour, double Width, IReadOnlyList<double>? Dashes = null);

/// <summary>Which part of a text lies at its place.</summary>
public enum TextAnchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}

/// <summary>How a text looks.</summary>
/// <param name="Size">Size of its type, metres; capitals are about 0.73 of it high.</param>
/// <param name="Colour">Its ink.</param>
/// <param name="Anchor">Which part of it lies at its place, on the base line.</param>
/// <param name="Bold">Whether it is bold.</param>
/// <param name="UpwardTurn">How far it is turned counter-clockwise, radians.</param>
public sealed record TextLook(double Size, Ink Colour, TextAnchor Anchor = TextAnchor.Start, bool Bold = false, double UpwardTurn = 0);

/// <summary>One thing that is drawn.</summary>
/// <param name="Layer">What it is for, in lower-case letters, digits and "-": what belongs together is cut, engraved or hidden together.</param>
public abstract record DrawnItem(string Layer);

/// <summary>A line through points.</summary>
public sealed record DrawnStroke(string Layer, Pen Pen, IReadOnlyList<Point2> Points, bool Closed) : DrawnItem(Layer);

/// <summary>An area inside rings; where rings overlap, what lies inside an even number of them stays free.</summary>
public sealed record DrawnArea(string Layer, Ink Colour, IReadOnlyList<IReadOnlyList<Point2>> Rings) : DrawnItem(Layer);

/// <summary>A word.</summary>
public sealed record DrawnText(string Layer, string Text, Point2 At, TextLook Look) : DrawnItem(Layer);

/// <summary>A drawing as data, in the size in which it lies on the paper: metres, x to the right, y down. Drawn the same way into every file.</summary>
public sealed class Drawing
{
    private readonly List<DrawnItem> _items = [];

    /// <summary>Everything drawn, the lowest first.</summary>
    public IReadOnlyList<DrawnItem> Items => _items;

    /// <summary>Names of the layers, in the order in which they were first drawn on.</summary>
    public IEnumerable<string> Layers => _items.Select(item => item.Layer).Distinct(StringComparer.Ordinal);

    /// <summary>The box round lines and areas, without words; nothing at the origin when there are none.</summary>
    public DrawnBox GeometryBounds => DrawnBox.Round(_items.Where(item => item is not DrawnText).SelectMany(Extent.Of));

    /// <summary>The box round everything, words by an estimate of their length; nothing at the origin when there is nothing.</summary>
    public DrawnBox Bounds => DrawnBox.Round(_items.SelectMany(Extent.Of));

    /// <summary>Adds an item.</summary>
    /// <param name="item">The item.</param>
    /// <exception cref="ArgumentException">Its layer's name is malformed, a line or ring has too few points, or a number is not finite or out of its range.</exception>
    public void Add(DrawnItem item)
    {
        DrawnItemCheck.Check(item);
        _items.Add(item);
    }

    /// <summary>Adds everything of another drawing.</summary>
    /// <param name="other">The other drawing.</param>
    /// <param name="at">Where its origin comes to lie.</param>
    public void Add(Drawing other, Point2 at)
    {
        ArgumentNullException.ThrowIfNull(other);
        _items.AddRange([.. other._items.Select(item => Moved(item, at))]);
    }

    /// <summary>The same drawing elsewhere.</summary>
    /// <param name="by">How far it is moved.</param>
    public Drawing Moved(Point2 by)
    {
        Drawing moved = new();
        moved.Add(this, by);
        return moved;
    }

    private static DrawnItem Moved(DrawnItem item, Point2 by) => item switch
    {
        DrawnStroke stroke => stroke with { Points = [.. stroke.Points.Select(p => p + by)] },
        DrawnArea area => area with { Rings = [.. area.Rings.Select(ring => (IReadOnlyList<Point2>)[.. ring.Select(p => p + by)])] },
        DrawnText text => text with { At = text.At + by },
        _ => throw new ArgumentException($"A {item.GetType().Name} cannot be moved.", nameof(item)),
    };
}
