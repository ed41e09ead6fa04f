using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;

namespace Finwright.Design.Tests;

/// <summary>Well-formed changes of a JSON text: one to three values replaced, taken out, renamed or added, anywhere.</summary>
internal static class JsonChange
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly string[] Values =
    [
        "null", "true", "false", "0", "1", "-1", "2", "2.5", "3.0", "1e6", "-300", "0.45", "17", "100", "\"\"", "\"M6\"", "\"m6\"", "\"free\"", "\"naca-0010\"",
        "\"thick\"", "\"12\"", "[]", "{}", "[1]", "[0.1, 0.2]", "[[0.1, 0.2]]", "[{}]", "\"" + new string('x', 130) + "\"",
    ];

    public static Gen<string> Gen(string text) =>
        CsCheck.Gen.Select(CsCheck.Gen.Int[0, 3], CsCheck.Gen.Int[0, 100_000], CsCheck.Gen.Int[0, Values.Length - 1])
            .List[1, 3]
            .Select(changes => Apply(text, changes));

    private static string Apply(string text, IReadOnlyList<(int Kind, int Place, int Value)> changes)
    {
        JsonNode root = JsonNode.Parse(text, documentOptions: Lenient)!;
        foreach ((int kind, int place, int value) in changes)
        {
            List<JsonNode> containers = [.. Containers(root)];
            Change(containers[place % containers.Count], kind, place / containers.Count, Values[value]);
        }

        return root.ToJsonString();
    }

    private static void Change(JsonNode container, int kind, int place, string value)
    {
        if (container is JsonArray list)
        {
            if (kind == 1 || list.Count == 0)
                list.Add(JsonNode.Parse(value));
            else if (kind == 2)
                list.RemoveAt(place % list.Count);
            else
                list[place % list.Count] = JsonNode.Parse(value);
            return;
        }

        JsonObject section = container.AsObject();
        string key = section.Count == 0 ? "name" : section.ElementAt(place % section.Count).Key;
        if (kind == 1)
            section[key + "s"] = JsonNode.Parse(value);
        else if (kind == 2)
            section.Remove(key);
        else
            section[key] = JsonNode.Parse(value);
    }

    private static IEnumerable<JsonNode> Containers(JsonNode? node)
    {
        if (node is not (JsonObject or JsonArray))
            yield break;
        yield return node;
        IEnumerable<JsonNode?> inner = node is JsonObject section ? section.Select(pair => pair.Value) : node.AsArray();
        foreach (JsonNode container in inner.SelectMany(Containers))
            yield return container;
    }
}
