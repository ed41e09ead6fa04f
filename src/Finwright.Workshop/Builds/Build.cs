namespace Finwright.Workshop.Builds;

/// <summary>A fin that was made: of which revision, of what, and what was measured while making it.</summary>
public sealed record Build
{
    /// <summary>Its number; 0 before it is kept.</summary>
    public long Id { get; init; }

    /// <summary>Number of the revision that it was made of.</summary>
    public required long RevisionId { get; init; }

    /// <summary>That revision as a person names it; filled in by the store.</summary>
    public string Revision { get; init; } = "";

    /// <summary>Its name; no other build has it.</summary>
    public required string Name { get; init; }

    /// <summary>When it was finished; null while it is not.</summary>
    public DateOnly? MadeOn { get; init; }

    /// <summary>Number of the filament in stock; null when it is not known.</summary>
    public long? FilamentId { get; init; }

    /// <summary>Number of the resin in stock; null when it is not known.</summary>
    public long? ResinId { get; init; }

    /// <summary>Plastic used, grams.</summary>
    public double? PlasticGrams { get; init; }

    /// <summary>Resin poured in, millilitres.</summary>
    public double? ResinMl { get; init; }

    /// <summary>Mass of the finished fin, grams.</summary>
    public double? MassGrams { get; init; }

    /// <summary>Time on the printer, hours.</summary>
    public double? PrintHours { get; init; }

    /// <summary>Air while it cured, °C.</summary>
    public double? RoomCelsius { get; init; }

    /// <summary>Water bath while it cured, °C.</summary>
    public double? BathCelsius { get; init; }

    /// <summary>Hottest reading while it cured, °C.</summary>
    public double? PeakCelsius { get; init; }

    /// <summary>What it cost.</summary>
    public double? Cost { get; init; }

    /// <summary>In which currency.</summary>
    public string Currency { get; init; } = "";

    /// <summary>What went wrong.</summary>
    public string Problems { get; init; } = "";

    /// <summary>The maker's own words.</summary>
    public string Note { get; init; } = "";
}

/// <summary>One printed part of a build.</summary>
/// <param name="Part">Name of the part, as in the design's plan of parts.</param>
/// <param name="PrintedOn">When.</param>
/// <param name="FilamentId">Number of the filament in stock; null for that of the build.</param>
/// <param name="PlasticGrams">Plastic used, grams.</param>
/// <param name="PrintHours">Time on the printer, hours.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record BuildPart(string Part, DateOnly? PrintedOn, long? FilamentId, double? PlasticGrams, double? PrintHours, string Note);

/// <summary>A photo of a build: where it lies, never the photo itself.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Caption">What it shows.</param>
public sealed record BuildPhoto(string Path, string Caption);
