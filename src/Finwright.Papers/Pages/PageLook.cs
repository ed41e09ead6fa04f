using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>Type, inks and spaces of every page. Ink on white paper: everything reads without colour too.</summary>
internal static class PageLook
{
    /// <summary>A point of type, metres.</summary>
    public const double Point = 0.0254 / 72;

    /// <summary>Free at every edge of the paper, metres.</summary>
    public const double Margin = 12e-3;

    /// <summary>Below this no paper is laid out: A5, metres.</summary>
    public const double LeastWidth = 0.148, LeastHeight = 0.210;

    /// <summary>What head and foot take within the margins, metres.</summary>
    public const double HeadHeight = 24 * Point, FootHeight = 18 * Point;

    /// <summary>Longest line of running text: about 95 letters, metres.</summary>
    public const double TextWidth = 158e-3;

    /// <summary>Spaces go by multiples of this: four points, metres.</summary>
    public const double Space = 4 * Point;

    /// <summary>Where text starts beside a box to tick or a number, metres.</summary>
    public const double Indent = 7e-3;

    /// <summary>Size of a mark beside a line, and where the line's text starts, metres.</summary>
    public const double Sign = 3e-3, SignIndent = 4.8e-3;

    /// <summary>Edge of a box to tick, metres.</summary>
    public const double TickBox = 4e-3;

    /// <summary>Ink of what is tight, and of a caution.</summary>
    public static Ink Tight { get; } = new(0x94, 0x62, 0x00);

    /// <summary>Ink of what fails.</summary>
    public static Ink Fails { get; } = new(0xa3, 0x26, 0x2a);

    /// <summary>Ink of numbers of chapters.</summary>
    public static Ink Accent => Palette.Water;

    /// <summary>Running text.</summary>
    public static TextLook Text { get; } = new(9.5 * Point, Palette.Line);

    /// <summary>What stands below a title.</summary>
    public static TextLook Sub { get; } = Text with { Colour = Palette.Quiet };

    /// <summary>What is said more quietly.</summary>
    public static TextLook Quiet { get; } = new(8 * Point, Palette.Quiet);

    /// <summary>Cautions, and entries of tables.</summary>
    public static TextLook Small { get; } = new(8.5 * Point, Palette.Line);

    /// <summary>Heads within a chapter.</summary>
    public static TextLook Head { get; } = new(10.5 * Point, Palette.Line, Bold: true);

    /// <summary>Name of a chapter.</summary>
    public static TextLook Chapter { get; } = new(13 * Point, Palette.Line, Bold: true);

    /// <summary>The title.</summary>
    public static TextLook Title { get; } = new(20 * Point, Palette.Line, Bold: true);

    /// <summary>Thin lines between things.</summary>
    public static Pen Rule { get; } = new(Palette.Rule, 0.6 * Point);

    /// <summary>Lines round what is written in.</summary>
    public static Pen Frame { get; } = new(Palette.Quiet, 0.6 * Point);

    /// <summary>Lines of marks and boxes to tick.</summary>
    public static Pen Ink { get; } = new(Palette.Line, 0.9 * Point);

    /// <summary>Height of a line of a type, metres: small type has more air, large type less.</summary>
    public static double LineOf(TextLook look) => look.Size * (look.Size < 12 * Point ? 1.4 : 1.25);
}
