namespace Finwright.Design.Reading;

/// <summary>Kind of a value in a JSON text.</summary>
internal enum NodeKind
{
    Object,
    List,
    Number,
    Text,
    Switch,
    Null,
}

/// <summary>
/// A value of a JSON text with the line it stands on. Our own small tree, because the lines must survive migration
/// and duplicate keys must be seen.
/// </summary>
internal sealed class Node(NodeKind kind, int line)
{
    public NodeKind Kind { get; } = kind;

    /// <summary>Line in the file, from 1.</summary>
    public int Line { get; } = line;

    /// <summary>A text, or a number as the file spells it.</summary>
    public string Text { get; init; } = "";

    /// <summary>A number; infinite when the file's number is too large for any computer number.</summary>
    public double Number { get; init; }

    /// <summary>A switch.</summary>
    public bool IsOn { get; init; }

    /// <summary>Fields of an object, in the file's order, duplicates included.</summary>
    public List<Member> Members { get; } = kind == NodeKind.Object ? [] : None<Member>.List;

    /// <summary>Items of a list.</summary>
    public List<Node> Items { get; } = kind == NodeKind.List ? [] : None<Node>.List;

    /// <summary>The first field of a name; null when there is none.</summary>
    public Node? Find(string key) => Members.Find(member => member.Key == key)?.Value;

    // Shared by every plain value, so that a long list of numbers stays small; never added to.
    private static class None<T>
    {
        public static readonly List<T> List = [];
    }
}

/// <summary>A field of an object.</summary>
internal sealed record Member(string Key, int Line, Node Value);
