using System.Text.Json;
using Json.Schema;

namespace Finwright.Design.Tests;

/// <summary>What an independent schema library says of a text by our schema.</summary>
internal static class SchemaOracle
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly JsonSchema Schema = JsonSchema.FromText(DesignSchema.Generate());

    public static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text, Lenient);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
