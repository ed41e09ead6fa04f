using System.Text;
using System.Text.Json;

namespace Finwright.Design.Reading;

/// <summary>
/// Reads a JSON text (RFC 8259, with comments and trailing commas) into nodes with line numbers, within <see cref="DesignLimits"/>.
/// The first thing that makes the text unreadable ends it, with one finding.
/// </summary>
internal sealed class JsonTree
{
    private readonly byte[] _utf8;
    private int _values;
    private int _line = 1;
    private int _lineCountedTo;
    private Finding? _refusal;

    private JsonTree(byte[] utf8) => _utf8 = utf8;

    /// <summary>Reads a text.</summary>
    /// <param name="utf8">The text, without byte order mark.</param>
    /// <param name="refusal">Why it cannot be read; null when it can.</param>
    /// <returns>The root; null when it cannot be read.</returns>
    public static Node? Read(byte[] utf8, out Finding? refusal)
    {
        var tree = new JsonTree(utf8);
        Node? root = tree.Root();
        refusal = tree._refusal;
        return refusal is null ? root : null;
    }

    private Node? Root()
    {
        // One level more than we accept, so that our own check speaks first.
        var reader = new Utf8JsonReader(_utf8, new JsonReaderOptions
        {
            CommentHandling = JsonCommentHandling.Skip,
            AllowTrailingCommas = true,
            MaxDepth = DesignLimits.Depth + 1,
        });
        try
        {
            reader.Read();
            Node? root = Value(ref reader);
            if (root is not null)
                reader.Read(); // anything after the end throws
            return root;
        }
        catch (JsonException broken)
        {
            _refusal = SyntaxFinding.At(_utf8, (int)(broken.LineNumber ?? 0), (int)(broken.BytePositionInLine ?? 0));
            return null;
        }
    }

    private Node? Value(ref Utf8JsonReader reader)
    {
        int line = LineAt((int)reader.TokenStartIndex);
        if (++_values > DesignLimits.Values)
            return Refuse("too-many-values", line, $"The file holds more than {DesignLimits.Values} values; no fin needs so many.", "Shorten the lists.", $"{DesignLimits.Values} values");

        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return reader.CurrentDepth >= DesignLimits.Depth ? TooDeep(line) : Members(ref reader, new Node(NodeKind.Object, line));
            case JsonTokenType.StartArray:
                return reader.CurrentDepth >= DesignLimits.Depth ? TooDeep(line) : Items(ref reader, new Node(NodeKind.List, line));
            case JsonTokenType.String:
                return TextOf(ref reader, line) is string text ? new Node(NodeKind.Text, line) { Text = text } : null;
            case JsonTokenType.Number:
                // A number beyond the range of double comes back infinite, which the next step reports at its path.
                double number = reader.GetDouble();
                return new Node(NodeKind.Number, line) { Number = number, Text = Encoding.ASCII.GetString(reader.ValueSpan[..Math.Min(reader.ValueSpan.Length, 40)]) };
            case JsonTokenType.True or JsonTokenType.False:
                return new Node(NodeKind.Switch, line) { IsOn = reader.TokenType == JsonTokenType.True };
            default:
                return new Node(NodeKind.Null, line);
        }
    }

    private Node? Members(ref Utf8JsonReader reader, Node node)
    {
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            int line = LineAt((int)reader.TokenStartIndex);
            if (TextOf(ref reader, line) is not string key)
                return null;
            reader.Read();
            if (Value(ref reader) is not Node value)
                return null;
            node.Members.Add(new Member(key, line, value));
        }

        return node;
    }

    private Node? Items(ref Utf8JsonReader reader, Node node)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (Value(ref reader) is not Node item)
                return null;
            node.Items.Add(item);
        }

        return node;
    }

    private string? TextOf(ref Utf8JsonReader reader, int line)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // The library's way of saying that an escape names half a character.
            Refuse("broken-text", line, $"Line {line}: a \\u escape names half a character.", "Write the character itself, or both halves of the escape.", null);
            return null;
        }
    }

    private Node? TooDeep(int line) =>
        Refuse("too-deep", line, $"Line {line}: braces and brackets are nested more than {DesignLimits.Depth} deep; a design needs 6.", "Take the extra braces and brackets out.", $"{DesignLimits.Depth} levels");

    private Node? Refuse(string code, int line, string message, string remedy, string? limit)
    {
        _refusal = new Finding(code, Severity.Error, JsonPath.Root, message, remedy) { Line = line, Limit = limit };
        return null;
    }

    private int LineAt(int offset)
    {
        _line += _utf8.AsSpan(_lineCountedTo, offset - _lineCountedTo).Count((byte)'\n');
        _lineCountedTo = offset;
        return _line;
    }
}
