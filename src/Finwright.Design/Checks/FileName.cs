namespace Finwright.Design.Checks;

/// <summary>Names of files that a design may refer to: beside the design file or below it, and nowhere else.</summary>
internal static class FileName
{
    /// <summary>What is wrong with a name, as the end of a sentence; null when nothing is.</summary>
    /// <remarks>Judged alike on every system, so that a design means the same everywhere.</remarks>
    public static string? Problem(string name)
    {
        string[] parts = name.Split('/', '\\');
        if (string.IsNullOrWhiteSpace(name))
            return "is no file name";
        if (parts[0].Length == 0 || name.Contains(':', StringComparison.Ordinal))
            return "is an absolute path; a design may only use files beside it";
        if (parts.Contains("..", StringComparer.Ordinal))
            return "leads out of the design's folder; a design may only use files beside it";
        if (parts.Any(part => part.Length == 0 || part != part.Trim()) || parts[^1] == "." || name.Any(c => char.IsControl(c) || c is '*' or '?' or '"' or '<' or '>' or '|' or '~'))
            return "is no file name that every system accepts";
        return null;
    }
}
