using System.Text.Json;
using System.Text.Json.Serialization;
using Finwright.Geometry.Files;
using Finwright.Page.Hosting;
using Finwright.Papers;

namespace Finwright.Page.Settings;

/// <summary>Light or dark.</summary>
public enum Theme
{
    /// <summary>As the system is set.</summary>
    System,

    /// <summary>Light.</summary>
    Light,

    /// <summary>Dark.</summary>
    Dark,
}

/// <summary>How the person who reads the page wants it.</summary>
public sealed record ReaderChoice
{
    /// <summary>Language.</summary>
    public PaperLanguage Language { get; init; } = PaperLanguage.English;

    /// <summary>Units.</summary>
    public PaperUnits Units { get; init; } = PaperUnits.Metric;

    /// <summary>Light or dark.</summary>
    public Theme Theme { get; init; }

    /// <summary>Whether print, pour and cure are worked out by themselves; else when they are asked for, which spares a battery.</summary>
    public bool WorksAhead { get; init; } = true;

    /// <summary>Whether the tour was taken or turned down.</summary>
    public bool TourSeen { get; init; }
}

/// <summary>The reader's choice, kept beside the store.</summary>
public sealed class ReaderSettings
{
    private static readonly JsonSerializerOptions Form = new() { WriteIndented = true, Converters = { new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false) } };

    private readonly string _file;

    /// <summary>Reads the choice; the usual one when none was made, or it cannot be read.</summary>
    public ReaderSettings(PageSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        _file = Path.Combine(settings.KeepingFolder, "reader.json");
        Choice = Read(_file) ?? new();
    }

    /// <summary>The choice.</summary>
    public ReaderChoice Choice { get; private set; }

    /// <summary>Words, units or colours are others now: pages that are open are asked for anew.</summary>
    public event Action? Changed;

    /// <summary>Makes another choice, and keeps it.</summary>
    /// <exception cref="IOException">It cannot be kept.</exception>
    public void Choose(ReaderChoice choice)
    {
        bool looksOther = choice with { TourSeen = Choice.TourSeen, WorksAhead = Choice.WorksAhead } != Choice;
        Choice = choice;
        Directory.CreateDirectory(Path.GetDirectoryName(_file)!);
        AtomicFile.Write(_file, stream => JsonSerializer.Serialize(stream, choice, Form));
        if (looksOther)
            Changed?.Invoke();
    }

    private static ReaderChoice? Read(string file)
    {
        try
        {
            return File.Exists(file) ? JsonSerializer.Deserialize<ReaderChoice>(File.ReadAllBytes(file), Form) : null;
        }
        catch (Exception problem) when (problem is JsonException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
