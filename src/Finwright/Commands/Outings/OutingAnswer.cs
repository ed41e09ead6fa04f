using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>Outings as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Outings">The outings, the latest first.</param>
internal sealed record OutingsAnswer(string MadeBy, IReadOnlyList<OutingAnswer> Outings);

/// <summary>What was done, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Did">In a sentence.</param>
/// <param name="Outing">The outing that it was about.</param>
internal sealed record OutingDoneAnswer(string MadeBy, string Did, OutingAnswer Outing);

/// <summary>An outing with what its track says, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Outing">The outing.</param>
/// <param name="Track">Its track; null when it has none.</param>
internal sealed record OutingInFullAnswer(string MadeBy, OutingAnswer Outing, TrackAnswer? Track);

/// <summary>An outing as JSON.</summary>
internal sealed record OutingAnswer
{
    public required long Number { get; init; }

    public required DateOnly SailedOn { get; init; }

    public required string? Build { get; init; }

    public required string Place { get; init; }

    public required double? WindLowKnots { get; init; }

    public required double? WindHighKnots { get; init; }

    public required string Sail { get; init; }

    public required double? SailM2 { get; init; }

    public required string Board { get; init; }

    public required string Rider { get; init; }

    public required int? Grip { get; init; }

    public required int? SpinOuts { get; init; }

    public required int? Speed { get; init; }

    public required int? Feel { get; init; }

    public required string Note { get; init; }

    public required string? TrackFile { get; init; }

    public static OutingAnswer Of(WorkshopStore store, Outing outing) => new()
    {
        Number = outing.Id,
        SailedOn = outing.SailedOn,
        Build = outing.Build.Length > 0 ? outing.Build : null,
        Place = outing.Place,
        WindLowKnots = outing.WindLowKnots,
        WindHighKnots = outing.WindHighKnots,
        Sail = outing.Sail,
        SailM2 = outing.SailM2,
        Board = outing.Board,
        Rider = outing.Rider,
        Grip = outing.Grip,
        SpinOuts = outing.SpinOuts,
        Speed = outing.Speed,
        Feel = outing.Feel,
        Note = outing.Note,
        TrackFile = outing.HasTrack ? store.Outings.Track(outing.Id)?.FileName : null,
    };
}
