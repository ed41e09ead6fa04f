using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Builds as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Builds">The builds, the latest first.</param>
internal sealed record BuildsAnswer(string MadeBy, IReadOnlyList<BuildAnswer> Builds);

/// <summary>What was done, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Did">In a sentence.</param>
/// <param name="Build">The build that it was about.</param>
internal sealed record BuildDoneAnswer(string MadeBy, string Did, BuildAnswer Build);

/// <summary>A build as JSON.</summary>
internal sealed record BuildAnswer
{
    public required string Name { get; init; }

    public required string Revision { get; init; }

    public required DateOnly? MadeOn { get; init; }

    public required string? Filament { get; init; }

    public required string? Resin { get; init; }

    public required double? PlasticG { get; init; }

    public required double? ResinMl { get; init; }

    public required double? MassG { get; init; }

    public required double? PrintHours { get; init; }

    public required double? RoomCelsius { get; init; }

    public required double? BathCelsius { get; init; }

    public required double? PeakCelsius { get; init; }

    public required double? Cost { get; init; }

    public required string Currency { get; init; }

    public required string Problems { get; init; }

    public required string Note { get; init; }

    public required IReadOnlyList<BuildPartAnswer> Parts { get; init; }

    public required IReadOnlyList<BuildPhoto> Photos { get; init; }

    public static BuildAnswer Of(WorkshopStore store, Build build) => new()
    {
        Name = build.Name,
        Revision = build.Revision,
        MadeOn = build.MadeOn,
        Filament = Label(store, build.FilamentId),
        Resin = Label(store, build.ResinId),
        PlasticG = build.PlasticGrams,
        ResinMl = build.ResinMl,
        MassG = build.MassGrams,
        PrintHours = build.PrintHours,
        RoomCelsius = build.RoomCelsius,
        BathCelsius = build.BathCelsius,
        PeakCelsius = build.PeakCelsius,
        Cost = build.Cost,
        Currency = build.Currency,
        Problems = build.Problems,
        Note = build.Note,
        Parts = [.. store.Builds.Parts(build.Id).Select(part => new BuildPartAnswer(part.Part, part.PrintedOn, Label(store, part.FilamentId), part.PlasticGrams, part.PrintHours, part.Note))],
        Photos = store.Builds.Photos(build.Id),
    };

    private static string? Label(WorkshopStore store, long? item) => item is long id ? store.Stock.Get(id).Label : null;
}

/// <summary>A part of a build as JSON.</summary>
internal sealed record BuildPartAnswer(string Part, DateOnly? PrintedOn, string? Filament, double? PlasticG, double? PrintHours, string Note);
