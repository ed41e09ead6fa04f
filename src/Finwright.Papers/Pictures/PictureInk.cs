using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pictures;

/// <summary>Pens, tones and type of the pictures. Tones differ by lightness, so that they are told apart in grey.</summary>
internal static class PictureInk
{
    /// <summary>Size of names and numbers of ports, metres.</summary>
    public const double Large = 3.0e-3;

    /// <summary>Size of words, metres.</summary>
    public const double Small = 2.4e-3;

    /// <summary>Bare paper, where something is left out of a tone.</summary>
    public static Ink Bare { get; } = new(0xff, 0xff, 0xff);

    /// <summary>The fin and its parts.</summary>
    public static Ink Part { get; } = Bare.Under(Palette.Line, 0.14);

    /// <summary>Walls, where they are told from the core; what holds the fin.</summary>
    public static Ink Wall { get; } = Bare.Under(Palette.Line, 0.30);

    /// <summary>Water.</summary>
    public static Ink Water { get; } = Bare.Under(Palette.Water, 0.10);

    /// <summary>Outlines.</summary>
    public static Pen Outline { get; } = new(Palette.Line, 0.30e-3);

    /// <summary>What goes with the part: tubes, ports, the sheet.</summary>
    public static Pen Fitting { get; } = new(Palette.Line, 0.20e-3);

    /// <summary>Thin lines: leaders, hatching, the bed.</summary>
    public static Pen Thin { get; } = new(Palette.Quiet, 0.13e-3);

    /// <summary>Thin dashed lines: what is only thought.</summary>
    public static Pen Dashed { get; } = new(Palette.Quiet, 0.13e-3, [1.6e-3, 1.0e-3]);

    /// <summary>The surface of water.</summary>
    public static Pen Surface { get; } = new(Palette.Water, 0.25e-3);

    /// <summary>The edge of air that stays.</summary>
    public static Pen Air { get; } = new(Palette.Line, 0.25e-3, [0.9e-3, 0.6e-3]);

    /// <summary>The blade as it bends.</summary>
    public static Pen Bent { get; } = new(Palette.Line, 0.25e-3, [2.0e-3, 0.9e-3]);
}
