namespace Finwright.Design;

/// <summary>How large a design file may be. Far beyond any fin, and small enough that a hostile file is refused at once.</summary>
public static class DesignLimits
{
    /// <summary>Largest file, bytes.</summary>
    public const int FileBytes = 4 * 1024 * 1024;

    /// <summary>Deepest nesting of braces and brackets; the format itself needs 6.</summary>
    public const int Depth = 32;

    /// <summary>Most values in one file; three for each point of an imported section.</summary>
    public const int Values = 400_000;

    /// <summary>Most points of an imported section.</summary>
    public const int SectionPoints = 20_000;

    /// <summary>Most items of any other list.</summary>
    public const int ListLength = 100;

    /// <summary>Most characters of a text.</summary>
    public const int TextLength = 120;

    /// <summary>Most characters of a note.</summary>
    public const int NoteLength = 8_000;

    /// <summary>Most findings reported for one file; the rest are only counted.</summary>
    public const int Findings = 500;
}
