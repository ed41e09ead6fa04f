using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>The part of a template that one sheet of paper shows.</summary>
/// <param name="Row">Row, from 0 at the top.</param>
/// <param name="Column">Column, from 0 at the left.</param>
/// <param name="Box">What it shows, on the template, metres.</param>
public sealed record Tile(int Row, int Column, DrawnBox Box)
{
    private const int Letters = 26;

    /// <summary>Its name: a letter for the row, a number for the column.</summary>
    public string Name => NameOf(Row, Column);

    /// <summary>Name of the tile in a place.</summary>
    public static string NameOf(int row, int column) => FormattableString.Invariant($"{Letter(row)}{column + 1}");

    private static string Letter(int row) => (row < Letters ? "" : Letter(row / Letters - 1)) + (char)('A' + row % Letters);
}
