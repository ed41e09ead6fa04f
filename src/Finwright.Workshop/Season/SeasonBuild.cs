using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Season;

/// <summary>An invented build: near what is predicted of its design, and not quite it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Revision">Number of its revision.</param>
/// <param name="MadeOn">When it was finished.</param>
/// <param name="Filament">Of which filament.</param>
/// <param name="Resin">Of which resin.</param>
/// <param name="ReadOn">When it hung on the bench.</param>
internal sealed record SeasonBuild(string Name, int Revision, DateOnly MadeOn, ItemLabel Filament, ItemLabel Resin, DateOnly ReadOn)
{
    /// <summary>Plastic, grams.</summary>
    public required double PlasticG { get; init; }

    /// <summary>Resin, millilitres.</summary>
    public required double ResinMl { get; init; }

    /// <summary>Mass of the finished fin, grams.</summary>
    public required double MassG { get; init; }

    /// <summary>On the printer, hours.</summary>
    public required double PrintHours { get; init; }

    /// <summary>Air while it cured, °C.</summary>
    public required double RoomCelsius { get; init; }

    /// <summary>Water bath while it cured, °C.</summary>
    public required double BathCelsius { get; init; }

    /// <summary>Hottest reading while it cured, °C.</summary>
    public required double PeakCelsius { get; init; }

    /// <summary>What it cost, euros.</summary>
    public required double Cost { get; init; }

    /// <summary>What went wrong.</summary>
    public string Problems { get; init; } = "";

    /// <summary>The maker's words.</summary>
    public string Note { get; init; } = "";

    /// <summary>When it was sailed.</summary>
    public IReadOnlyList<SeasonOuting> Outings { get; init; } = [];

    /// <summary>Name of its file of readings.</summary>
    public string Readings => $"{Name.ToLowerInvariant().Replace(' ', '-')}.readings.csv";

    /// <summary>The build as a bundle has it.</summary>
    public BundledBuild Bundled() => new(
        Revision,
        Name,
        MadeOn,
        Filament,
        Resin,
        PlasticG,
        ResinMl,
        MassG,
        PrintHours,
        RoomCelsius,
        BathCelsius,
        PeakCelsius,
        Cost,
        "EUR",
        Problems,
        Note,
        [],
        [],
        [],
        [new(ReadOn, RootHold.Clamped, "Invented readings: no fin was measured.", [.. ReadLines().Select(BundleParts.Reading)])],
        [.. Outings.Select(own => own.Bundled())]);

    private IReadOnlyList<BenchReadingLine> ReadLines()
    {
        using Stream stream = typeof(SeasonBuild).Assembly.GetManifestResourceStream("season/" + Readings) ?? throw new InvalidOperationException($"{Readings} is not in the program.");
        return BenchReadings.Read(stream).Lines;
    }
}

/// <summary>An invented time on the water.</summary>
/// <param name="Start">When it began.</param>
/// <param name="Place">Where.</param>
/// <param name="WindLow">Wind in the lulls, knots.</param>
/// <param name="WindHigh">Wind in the gusts, knots.</param>
/// <param name="SailM2">The sail, m².</param>
/// <param name="Board">The board.</param>
internal sealed record SeasonOuting(DateTimeOffset Start, string Place, double WindLow, double WindHigh, double SailM2, string Board)
{
    /// <summary>How it gripped, 1 to 5.</summary>
    public int Grip { get; init; } = 4;

    /// <summary>How often it let go.</summary>
    public int SpinOuts { get; init; }

    /// <summary>How fast it felt, 1 to 5.</summary>
    public int Speed { get; init; } = 3;

    /// <summary>How it felt, 1 to 5.</summary>
    public int Feel { get; init; } = 4;

    /// <summary>The sailor's words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Its track; null for none.</summary>
    public SeasonTrack? Track { get; init; }

    /// <summary>The outing as a bundle has it.</summary>
    public BundledOuting Bundled() => new(
        DateOnly.FromDateTime(Start.UtcDateTime), Place, WindLow, WindHigh, "slalom sail", SailM2, Board, "Jorid", Grip, SpinOuts, Speed, Feel, Note, Track is null ? null : Packed(Track));

    private static BundledTrack Packed(SeasonTrack track)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"invented-{track.Start:yyyy-MM-dd-HHmm}.gpx");
        // There never was such a file; its hash is one of its name, so that no other track is taken for it.
        return new(name, Sha256.Of(Encoding.UTF8.GetBytes(name)), "") { Points = TrackForm.Write(track.Make()) };
    }
}
