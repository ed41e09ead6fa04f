using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates;

/// <summary>The pens of templates. In grey they are told apart by width and dashes.</summary>
internal static class TemplatePens
{
    /// <summary>An edge to cut along or to check.</summary>
    public static Pen Edge { get; } = new(Palette.Line, 0.25e-3);

    /// <summary>An outline that is only there to lay the paper by.</summary>
    public static Pen Part { get; } = new(Palette.Water, 0.25e-3);

    /// <summary>What lies inside.</summary>
    public static Pen Hidden { get; } = new(Palette.Line, 0.18e-3, [1.6e-3, 1e-3]);

    /// <summary>The outer edge of the strip.</summary>
    public static Pen Strip { get; } = new(Palette.Water, 0.25e-3, [4e-3, 1.2e-3]);

    /// <summary>Middles and lines that nothing is cut along.</summary>
    public static Pen Middle { get; } = new(Palette.Quiet, 0.15e-3, [6e-3, 1.2e-3, 0.6e-3, 1.2e-3]);

    /// <summary>Where the blade is cut into parts.</summary>
    public static Pen Cut { get; } = new(Palette.Line, 0.35e-3, [7e-3, 1.5e-3, 1e-3, 1.5e-3]);

    /// <summary>Thin lines of reference.</summary>
    public static Pen Thin { get; } = new(Palette.Quiet, 0.13e-3);
}
