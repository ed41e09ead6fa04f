using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Readings as they are kept. Field names are these properties in lower case with underscores.</summary>
/// <param name="Number">Their number.</param>
/// <param name="Build">The build.</param>
/// <param name="TakenOn">The day.</param>
/// <param name="RootHold">How the root was held.</param>
/// <param name="Note">The maker's own words.</param>
/// <param name="TaughtCalibrations">Numbers of the calibrations that came from them.</param>
/// <param name="Readings">The readings.</param>
internal sealed record BenchSessionAnswer(long Number, string Build, DateOnly TakenOn, RootHold RootHold, string Note, IReadOnlyList<long> TaughtCalibrations, IReadOnlyList<BenchReadingAnswer> Readings)
{
    public static BenchSessionAnswer Of(WorkshopStore store, BenchSession session) => new(
        session.Id, store.Builds.Get(session.BuildId).Name, session.TakenOn, session.RootHold, session.Note,
        [.. store.Calibrations.List(session.BuildId).Where(own => own.Sessions.Contains(session.Id)).Select(own => own.Id)], [.. session.Readings.Select(BenchReadingAnswer.Of)]);
}

/// <summary>One reading.</summary>
internal sealed record BenchReadingAnswer(
    double MassKg, double AtMm, ChordPlace AtChord, double ReadAtMm, ChordPlace ReadChord, double? DeflectionMm, double? DeflectionDeviationMm, double? TwistDegrees, double? TwistDeviationDegrees, string Note)
{
    public static BenchReadingAnswer Of(BenchReadingLine line) => new(
        line.MassKg, line.AtMm, line.AtChord, line.ReadAtMm, line.ReadChord, line.DeflectionMm?.Value, line.DeflectionMm?.Deviation, line.TwistDegrees?.Value, line.TwistDegrees?.Deviation, line.Note);
}

/// <summary>Readings that are kept, as <c>bench list --json</c> gives them.</summary>
/// <param name="Sessions">One entry for each time readings were added.</param>
internal sealed record BenchListAnswer(IReadOnlyList<BenchSessionAnswer> Sessions)
{
    /// <summary>Says what the answer is.</summary>
    public string Kind { get; } = "finwright-bench-list";
}
