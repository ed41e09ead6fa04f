using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Finwright.Assessment.Packing;

/// <summary>How every answer is written as JSON: lower case with underscores, two blanks of indent, line feeds, enumerations as in the design file.</summary>
public static class AnswerJson
{
    private static readonly JsonSerializerOptions Options = Named(JsonNamingPolicy.SnakeCaseLower), Tabular = Named(JsonNamingPolicy.CamelCase);

    private static JsonSerializerOptions Named(JsonNamingPolicy names) => new()
    {
        PropertyNamingPolicy = names,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        // Read by programs and people, never put into a web page unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes an answer.</summary>
    /// <param name="answer">A record; property names carry their units.</param>
    /// <returns>The text, ending with a line feed.</returns>
    public static string Write<T>(T answer) => JsonSerializer.Serialize(answer, Options) + "\n";

    /// <summary>Writes an answer that stands beside tables and scripts, with names in camel case as they use them.</summary>
    /// <param name="answer">A record; property names carry their units.</param>
    /// <returns>The text, ending with a line feed.</returns>
    public static string WriteTabular<T>(T answer) => JsonSerializer.Serialize(answer, Tabular) + "\n";
}
