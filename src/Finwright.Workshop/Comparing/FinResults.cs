using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Finwright.Assessment;

namespace Finwright.Workshop.Comparing;

/// <summary>Every result of a design as lines, so that two designs can be held side by side, and so that results can be kept and read again.</summary>
public sealed record FinResults
{
    /// <summary>Version of this layout; raised when a key changes its meaning or goes.</summary>
    public const int CurrentLayout = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false) },
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Version of the layout.</summary>
    public int Layout { get; init; } = CurrentLayout;

    /// <summary>Name of the fin; null when the design could not be read.</summary>
    public required string? Name { get; init; }

    /// <summary>SHA-256 of the design's content; empty when the design is wrong.</summary>
    public required string DesignSha256 { get; init; }

    /// <summary>Why something is missing, and what to do; null when nothing is.</summary>
    public string? Problem { get; init; }

    /// <summary>What was worked out; a group that was not cannot be compared.</summary>
    public required IReadOnlyList<ResultGroup> Groups { get; init; }

    /// <summary>The lines, in the order of the job.</summary>
    public required IReadOnlyList<ResultLine> Lines { get; init; }

    /// <summary>A line by its key; null when there is none.</summary>
    [JsonIgnore]
    public ResultLine? this[string key] => Lines.FirstOrDefault(line => string.Equals(line.Key, key, StringComparison.Ordinal));

    /// <summary>Every result of a design, as far as it was worked out.</summary>
    /// <param name="result">What was worked out.</param>
    public static FinResults Of(AssessmentResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        ResultLines lines = new();
        lines.AddAll(result);
        string? problem = result.Findings.FirstOrDefault(finding => finding.IsError) is { } error ? $"{error.Message} {error.Remedy}" : null;
        return new() { Name = result.Design?.Name, DesignSha256 = result.DesignHash, Problem = problem, Groups = lines.Groups, Lines = lines.Lines };
    }

    /// <summary>These results with some groups of others in their place.</summary>
    /// <param name="others">The others.</param>
    /// <param name="groups">The groups that are taken from them.</param>
    public FinResults With(FinResults others, params IReadOnlyList<ResultGroup> groups)
    {
        ArgumentNullException.ThrowIfNull(others);
        ArgumentNullException.ThrowIfNull(groups);
        return this with
        {
            Groups = [.. Groups.Where(group => !groups.Contains(group)).Concat(others.Groups.Where(groups.Contains)).Order()],
            // A stable sort: lines of a group keep their order.
            Lines = [.. Lines.Where(line => !groups.Contains(line.Group)).Concat(others.Lines.Where(line => groups.Contains(line.Group))).OrderBy(line => line.Group)],
        };
    }

    /// <summary>Only some groups of these results.</summary>
    /// <param name="groups">Which.</param>
    public FinResults Only(params IReadOnlyList<ResultGroup> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        return this with { Groups = [.. Groups.Where(groups.Contains)], Lines = [.. Lines.Where(line => groups.Contains(line.Group))] };
    }

    /// <summary>The results as JSON, on one line.</summary>
    public string Write() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The results; null when the text is none, or of another layout: work them out anew.</returns>
    public static FinResults? Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            FinResults? results = JsonSerializer.Deserialize<FinResults>(json, Options);
            return results is { Layout: CurrentLayout } && results.Groups.All(Enum.IsDefined) && results.Lines.All(line => line is not null && Enum.IsDefined(line.Group)) ? results : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
