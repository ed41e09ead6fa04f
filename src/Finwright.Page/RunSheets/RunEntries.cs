using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Finwright.Workshop.RunSheets;

namespace Finwright.Page.RunSheets;

/// <summary>What may be entered on a run sheet: ticks, clocks and notes of its steps, and readings of its thermometers.</summary>
public static partial class RunEntries
{
    /// <summary>Value of a tick that is set.</summary>
    public const string Ticked = "yes";

    /// <summary>So many things may be sent at once.</summary>
    public const int MostAtOnce = 500;

    // The end of the year 9999, ms since 1970.
    private const long LastMoment = 253_402_300_799_000;

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web);

    /// <summary>Reads what a phone sends: all of it, or nothing when a sheet may not hold any one thing of it.</summary>
    /// <param name="plan">The sheet's steps.</param>
    /// <param name="utf8">A list of entries in JSON: key, value, and when each was set, ms since 1970.</param>
    /// <returns>The entries; null when they are refused.</returns>
    public static IReadOnlyList<RunEntry>? Read(RunPlan plan, ReadOnlySpan<byte> utf8)
    {
        ArgumentNullException.ThrowIfNull(plan);
        SentEntry[]? sent;
        try
        {
            sent = JsonSerializer.Deserialize<SentEntry[]>(utf8, Form);
        }
        catch (JsonException)
        {
            return null;
        }

        return sent is { Length: <= MostAtOnce } && Array.TrueForAll(sent, entry => entry is { Key: not null, Value: not null, At: > 0 and < LastMoment } && Allows(plan, entry.Key, entry.Value))
            ? [.. sent.Select(entry => new RunEntry(entry.Key, entry.Value, DateTimeOffset.FromUnixTimeMilliseconds(entry.At)))]
            : null;
    }

    /// <summary>Whether a sheet may hold an entry.</summary>
    /// <param name="plan">The sheet's steps.</param>
    /// <param name="key">What it belongs to: "s3:tick", "s3:timer", "s3:note" or "reading:" and eight to 32 hexadecimal digits.</param>
    /// <param name="value">Its value; empty takes it back.</param>
    public static bool Allows(RunPlan plan, string key, string value)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(value);
        if (value.Length > RunSheetTable.LongestValue || value.Contains('\0', StringComparison.Ordinal))
            return false;
        if (ReadingKey().IsMatch(key))
            return value.Length == 0 || RunSheetTable.ReadingOf(value) is { } reading && plan.Steps().Any(step => step.Thermometer?.Part == reading.Part);
        Match match = StepKey().Match(key);
        if (!match.Success || plan.Steps().FirstOrDefault(step => step.Id == match.Groups["step"].Value) is not { } step)
            return false;
        return match.Groups["what"].Value switch
        {
            "tick" => value is "" or Ticked,
            "timer" => step.Timer is not null && (value.Length == 0 || DateTimeOffset.TryParse(value, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out _)),
            _ => true,
        };
    }

    /// <summary>When a step's clock was started; null when it does not run.</summary>
    /// <param name="entries">What was entered.</param>
    /// <param name="step">The step.</param>
    public static DateTimeOffset? Started(IEnumerable<RunEntry> entries, string step) =>
        entries.FirstOrDefault(entry => entry.Key == step + ":timer") is { Value.Length: > 0 } entry && DateTimeOffset.TryParse(entry.Value, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out DateTimeOffset at) ? at : null;

    [GeneratedRegex("^(?<step>s[0-9]{1,4}):(?<what>tick|timer|note)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex StepKey();

    [GeneratedRegex("^reading:[0-9a-f]{8,32}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ReadingKey();
}
