namespace Finwright.Design.Reading;

/// <summary>Finds the lines of a file on which values stand.</summary>
internal static class Lines
{
    /// <summary>The line on which a value stands; null when the file does not give it.</summary>
    public static int? Of(Node? root, string jsonPath) => root is null ? null : JsonPath.Find(root, jsonPath)?.Line;

    /// <summary>Gives findings without a line that of their value, or of the group in which it is missing.</summary>
    public static IReadOnlyList<Finding> Locate(Node? root, IEnumerable<Finding> findings) =>
        [.. findings.Select(finding => finding.Line is null ? finding with { Line = Nearest(root, finding.Path) } : finding)];

    private static int? Nearest(Node? root, string path)
    {
        // The root itself begins on the first line, which would tell nobody anything.
        for (; path != JsonPath.Root; path = JsonPath.Parent(path))
        {
            if (Of(root, path) is int line)
                return line;
        }

        return null;
    }
}
