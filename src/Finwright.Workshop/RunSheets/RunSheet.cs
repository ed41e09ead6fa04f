namespace Finwright.Workshop.RunSheets;

/// <summary>What a run sheet leads through.</summary>
public enum RunKind
{
    /// <summary>The day of the print.</summary>
    Print,

    /// <summary>The day of the pour, and the cure after it.</summary>
    Pour,
}

/// <summary>A run sheet: the steps of a day at the bench.</summary>
public sealed record RunSheet
{
    /// <summary>Its number; 0 before it is kept.</summary>
    public long Id { get; init; }

    /// <summary>Number of the design.</summary>
    public required long DesignId { get; init; }

    /// <summary>Number of the build that it belongs to; null for none.</summary>
    public long? BuildId { get; init; }

    /// <summary>What it leads through.</summary>
    public required RunKind Kind { get; init; }

    /// <summary>How it is called.</summary>
    public required string Title { get; init; }

    /// <summary>When it was laid out; filled in by the store.</summary>
    public DateTimeOffset MadeAt { get; init; }

    /// <summary>Program and version that laid it out.</summary>
    public required string MadeBy { get; init; }

    /// <summary>The steps, in JSON; empty in lists.</summary>
    public string Plan { get; init; } = "";
}

/// <summary>One thing that was ticked, timed, read or noted on a run sheet.</summary>
/// <param name="Key">What it belongs to.</param>
/// <param name="Value">The value; empty when it was taken back.</param>
/// <param name="At">When it was set: of two values of one key the later counts.</param>
public sealed record RunEntry(string Key, string Value, DateTimeOffset At);

/// <summary>A temperature that was read while a part cured.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kelvin">What the thermometer showed, K.</param>
/// <param name="At">When.</param>
public sealed record RunReading(string Part, double Kelvin, DateTimeOffset At);
