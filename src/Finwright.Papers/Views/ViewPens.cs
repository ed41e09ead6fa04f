using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Views;

/// <summary>Pens and tones of views. In grey they are told apart by width, dashes and lightness.</summary>
internal static class ViewPens
{
    private static readonly Ink White = new(255, 255, 255);

    /// <summary>Edges.</summary>
    public static Pen Edge { get; } = new(Palette.Line, 0.3e-3);

    /// <summary>Edges of what is less than a part: flange, rods.</summary>
    public static Pen Fine { get; } = new(Palette.Line, 0.18e-3);

    /// <summary>What lies inside.</summary>
    public static Pen Hidden { get; } = new(Palette.Line, 0.15e-3, [1.4e-3, 0.8e-3]);

    /// <summary>Axes.</summary>
    public static Pen Axis { get; } = new(Palette.Quiet, 0.13e-3, [4e-3, 0.8e-3, 0.6e-3, 0.8e-3]);

    /// <summary>Where the blade is cut into parts.</summary>
    public static Pen Cut { get; } = new(Palette.Line, 0.3e-3, [4.5e-3, 1e-3, 0.8e-3, 1e-3]);

    /// <summary>The strip.</summary>
    public static Pen Strip { get; } = new(Palette.Water, 0.2e-3, [2.4e-3, 0.8e-3]);

    /// <summary>Hatching.</summary>
    public static Pen Hatch { get; } = new(Palette.Quiet, 0.1e-3);

    /// <summary>The hull and other thin lines of reference.</summary>
    public static Pen Thin { get; } = new(Palette.Quiet, 0.13e-3);

    /// <summary>Pieces of the blade in turn, from the root down.</summary>
    public static IReadOnlyList<Ink> Blade { get; } = [White.Under(Palette.Water, 0.10), White.Under(Palette.Water, 0.22)];

    /// <summary>The base.</summary>
    public static Ink Base { get; } = White.Under(Palette.Quiet, 0.18);

    /// <summary>Strip.</summary>
    public static Ink Sheet { get; } = White.Under(Palette.Rule, 0.5);

    /// <summary>Carbon and steel rods.</summary>
    public static Ink Rod { get; } = White.Under(Palette.Line, 0.55);

    /// <summary>Printed walls in a section.</summary>
    public static Ink Wall { get; } = White.Under(Palette.Line, 0.85);

    /// <summary>Paper.</summary>
    public static Ink Paper => White;
}
