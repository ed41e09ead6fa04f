using System.Globalization;
using System.Text.Json.Nodes;
using Finwright.Design;

namespace Finwright.Page.Editing;

/// <summary>Changes of a design by the place in its file, such as <c>$.shape.sections[1].at_percent</c>.</summary>
public static class DesignEdit
{
    /// <summary>Gives a field another value; a group or list that was left out can be put there whole.</summary>
    /// <param name="design">The design.</param>
    /// <param name="path">The field.</param>
    /// <param name="value">The value in the file's own unit; null leaves the field out.</param>
    /// <returns>The design as it reads then, with what is to be said against it.</returns>
    /// <exception cref="ArgumentException">The design has no such place.</exception>
    public static DesignReading Set(FinDesign design, string path, JsonNode? value) => Edit(design, path, (parent, step) =>
    {
        if (step.Index is int index)
            parent.AsArray()[index] = value;
        else
            parent.AsObject()[step.Key!] = value;
    });

    /// <summary>Puts a further item at the end of a list.</summary>
    /// <inheritdoc cref="Set"/>
    public static DesignReading Add(FinDesign design, string path, JsonNode? value) => Edit(design, path, (parent, step) => Child(parent, step, path).AsArray().Add(value));

    /// <summary>Takes an item out of a list, or a group or optional field away.</summary>
    /// <inheritdoc cref="Set"/>
    public static DesignReading Remove(FinDesign design, string path) => Edit(design, path, (parent, step) =>
    {
        if (step.Index is int index)
            parent.AsArray().RemoveAt(index);
        else
            parent.AsObject()[step.Key!] = null;
    });

    /// <summary>The value at a place of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="path">The place.</param>
    /// <returns>The value; null when it is left out, or the place is not there.</returns>
    public static JsonNode? Get(FinDesign design, string path)
    {
        JsonNode? at = Tree(design);
        foreach (Step step in Steps(path))
            at = step.Index is int index ? at is JsonArray list && index < list.Count ? list[index] : null : (at as JsonObject)?[step.Key!];
        return at;
    }

    private static DesignReading Edit(FinDesign design, string path, Action<JsonNode, Step> edit)
    {
        JsonNode root = Tree(design), at = root;
        Step[] steps = Steps(path);
        if (steps.Length == 0)
            throw new ArgumentException("The whole design is no single place.", nameof(path));
        foreach (Step step in steps[..^1])
            at = Child(at, step, path);
        edit(at, steps[^1]);
        return DesignReader.Read(root.ToJsonString());
    }

    private static JsonNode Tree(FinDesign design) => JsonNode.Parse(DesignWriter.Write(design))!;

    private static JsonNode Child(JsonNode parent, Step step, string path) =>
        (step.Index is int index ? parent.AsArray()[index] : parent.AsObject()[step.Key!]) ?? throw new ArgumentException($"The design has nothing at {path}.", nameof(path));

    private static Step[] Steps(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        List<Step> steps = [];
        for (int at = 1; at < path.Length;)
        {
            int end = path.IndexOfAny(['.', '['], at + 1);
            end = end < 0 ? path.Length : end;
            string word = path[(at + 1)..end];
            steps.Add(path[at] == '[' ? new(null, int.Parse(word.TrimEnd(']'), CultureInfo.InvariantCulture)) : new(word, null));
            at = end;
        }

        return [.. steps];
    }

    private readonly record struct Step(string? Key, int? Index);
}
