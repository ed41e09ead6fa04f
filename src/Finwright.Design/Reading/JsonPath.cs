using System.Globalization;

namespace Finwright.Design.Reading;

/// <summary>Paths such as <c>$.shape.sections[1].at_percent</c>.</summary>
internal static class JsonPath
{
    /// <summary>The whole document.</summary>
    public const string Root = "$";

    /// <summary>Longest part of a stranger's field name that is repeated in a path or message.</summary>
    private const int ShownLength = 40;

    /// <summary>Path of a field; names that are not plain words stand in quotes.</summary>
    public static string Field(string parent, string key) =>
        IsPlain(key) ? $"{parent}.{key}" : $"{parent}['{Shown(key)}']";

    /// <summary>Path of an item of a list.</summary>
    public static string Item(string parent, int index) => $"{parent}[{index}]";

    /// <summary>Path of the group that holds a field or the list that holds an item.</summary>
    public static string Parent(string path)
    {
        int end = path.LastIndexOfAny(['.', '[']);
        return end < 0 ? Root : path[..end];
    }

    /// <summary>Whether a path is one of some others or lies inside one of them.</summary>
    public static bool IsWithinAny(string path, IReadOnlySet<string> others)
    {
        for (; path != Root; path = Parent(path))
        {
            if (others.Contains(path))
                return true;
        }

        return false;
    }

    /// <summary>A stranger's text, cut and cleaned for a message.</summary>
    public static string Shown(string text)
    {
        string cut = text.Length <= ShownLength ? text : string.Concat(text.AsSpan(0, ShownLength), "…");
        return string.Concat(cut.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '\uFFFD' : c));
    }

    /// <summary>The value at a path; null when the document has none there.</summary>
    public static Node? Find(Node root, string path)
    {
        Node? node = root;
        int at = Root.Length;
        if (!path.StartsWith(Root, StringComparison.Ordinal))
            return null;

        while (node is not null && at < path.Length)
        {
            bool isItem = path[at] == '[';
            int end = path.AsSpan(at + 1).IndexOfAny('.', '[') is int next and >= 0 ? at + 1 + next : path.Length;
            node = isItem ? ItemAt(node, path.AsSpan(at + 1, end - at - 1)) : node.Find(path[(at + 1)..end]);
            at = end;
        }

        return node;
    }

    private static Node? ItemAt(Node node, ReadOnlySpan<char> text) =>
        text.EndsWith("]") && int.TryParse(text[..^1], NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < node.Items.Count
            ? node.Items[index]
            : null;

    private static bool IsPlain(string key) =>
        key.Length is > 0 and <= ShownLength && key.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-');
}
