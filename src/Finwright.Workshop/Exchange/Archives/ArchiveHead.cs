using System.Text.Json;

namespace Finwright.Workshop.Exchange.Archives;

/// <summary>What an archive's list of contents says it is: read before anything else, so that a later layout is told as such.</summary>
internal static class ArchiveHead
{
    /// <summary>Refuses another kind, or another layout.</summary>
    /// <param name="utf8">The list of contents.</param>
    /// <param name="list">Its name.</param>
    /// <param name="kind">The kind that is needed.</param>
    /// <param name="layout">The layout that is known.</param>
    /// <exception cref="ExchangeException">It is another.</exception>
    public static void Check(byte[] utf8, string list, string kind, int layout)
    {
        ExchangeJson.Check(utf8, list);
        using JsonDocument document = JsonDocument.Parse(utf8);
        if (document.RootElement.ValueKind != JsonValueKind.Object
            || !document.RootElement.TryGetProperty("kind", out JsonElement said) || said.ValueKind != JsonValueKind.String || !said.ValueEquals(kind)
            || !document.RootElement.TryGetProperty("layout", out JsonElement number) || number.ValueKind != JsonValueKind.Number || !number.TryGetInt32(out int found))
            throw new ExchangeException($"\"{list}\" does not say that it is a {kind}.", "Choose a file that \"finwright export\" made.");
        if (found != layout)
            throw new ExchangeException($"The file has layout {found}; this program knows layout {layout}.", found > layout ? "Use the later program that made it." : "Have it exported again by this program.");
    }
}
