using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Finwright.Workshop.Exchange;

/// <summary>How JSON is written into archives and read from them: lower case with underscores, strict, no deeper than is needed.</summary>
internal static class ExchangeJson
{
    /// <summary>Deepest nesting that is read.</summary>
    public const int Depth = 64;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false) },
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        MaxDepth = Depth,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        AllowDuplicateProperties = false,
    };

    /// <summary>A record as JSON in UTF-8, ending with a line feed.</summary>
    public static byte[] Write<T>(T value) => [.. JsonSerializer.SerializeToUtf8Bytes(value, Options), (byte)'\n'];

    /// <summary>Reads a record.</summary>
    /// <param name="utf8">The JSON.</param>
    /// <param name="name">Where it stands, for messages.</param>
    /// <exception cref="ExchangeException">It is no such record.</exception>
    public static T Read<T>(ReadOnlySpan<byte> utf8, string name)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(utf8, Options) ?? throw Refused(name, "it is empty", null);
        }
        catch (JsonException problem)
        {
            throw Refused(name, problem.Path is { Length: > 0 } path ? $"it makes no sense at {path}" : "it is no JSON of the kind that is needed", problem);
        }
    }

    /// <summary>Refuses what is no JSON, or is nested too deep.</summary>
    public static void Check(ReadOnlySpan<byte> utf8, string name)
    {
        Utf8JsonReader reader = new(utf8, new() { MaxDepth = Depth });
        try
        {
            while (reader.Read())
            {
            }
        }
        catch (JsonException problem)
        {
            throw Refused(name, "it is no JSON, or nested too deep", problem);
        }
    }

    private static ExchangeException Refused(string name, string why, Exception? inner) => new($"\"{name}\" cannot be read: {why}.", "Have it exported again. Nothing was taken in.", inner);
}
