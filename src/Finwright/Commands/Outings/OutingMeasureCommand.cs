using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Measures a track without keeping it.</summary>
internal sealed class OutingMeasureCommand : ProgramCommand
{
    private readonly Argument<string> _track = Inputs.Needed("TRACK", "The track (GPX).");
    private readonly Option<bool> _positions = Inputs.Switch("--positions-only", "Work speeds out from positions even where the receiver tells its own.");
    private readonly Option<bool> _json = Inputs.Json();

    public OutingMeasureCommand()
        : base("measure", "Read a track and say what it holds: runs, best speeds with their usual error, speed by course, and what was left out and why. Nothing is kept.", "finwright outing measure my-afternoon.gpx")
    {
        Add(_track);
        Add(_positions);
        Add(_json);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_track);
        TrackReading reading = TrackInput.Read(file, cancellation);
        if (reading.Track is not { } track)
            throw TrackInput.Refused(file, reading);
        TrackMeasures measures = TrackMeasures.Of(track, arguments.GetValue(_positions));
        IReadOnlyList<Finding> findings = [.. reading.Findings, .. measures.Findings];
        TrackAnswer answer = TrackAnswer.Of(track, measures, findings);
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.Write(answer));
            return ExitCode.Good;
        }

        TrackText.Write(streams, answer);
        FindingText.Write(streams.Out, findings, file, streams.Width);
        return ExitCode.Good;
    }
}
