using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Shows an outing with what its track says.</summary>
internal sealed class OutingShowCommand : StoreCommand
{
    private readonly Argument<long> _number = OutingNumber.Argument("The number of the outing.");
    private readonly Option<bool> _positions = Inputs.Switch("--positions-only", "Work speeds out from positions even where the receiver tells its own.");

    public OutingShowCommand()
        : base("show", "Show an outing: what was said of it, and what its track says.", "finwright outing show 1", changes: false) =>
        AddAll(_number, _positions);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Outing outing = store.Outings.Get(arguments.GetValue(_number));
        TrackAnswer? answer = null;
        TrackMeasures? measures = null;
        if (OutingTracks.Of(store, outing) is { } track)
        {
            measures = TrackMeasures.Of(track, arguments.GetValue(_positions));
            answer = TrackAnswer.Of(track, measures, measures.Findings);
        }

        OutingAnswer said = OutingAnswer.Of(store, outing);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new OutingInFullAnswer($"Finwright {ProgramVersion.Text}", said, answer)));
            return ExitCode.Good;
        }

        OutingText.WriteOne(streams, outing);
        if (answer is null || measures is null)
            return ExitCode.Good;
        streams.Out.WriteLine();
        TrackText.Write(streams, answer);
        FindingText.Write(streams.Out, measures.Findings, said.TrackFile ?? "track", streams.Width);
        return ExitCode.Good;
    }
}
