using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>A listing of outings.</summary>
internal abstract class OutingListing : StoreCommand
{
    private readonly Option<string?> _build = Inputs.Text("--build", "name", "Only outings with this build.");

    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected OutingListing(string name, string description, string example)
        : base(name, description, example, changes: false) => AddAll(_build);

    /// <inheritdoc/>
    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        long? build = arguments.GetValue(_build) is string name ? store.Builds.Get(name).Id : null;
        IReadOnlyList<Outing> outings = store.Outings.List(build);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new OutingsAnswer($"Finwright {ProgramVersion.Text}", [.. outings.Select(outing => OutingAnswer.Of(store, outing))])));
        else if (outings.Count == 0)
            streams.Out.WriteLine(Wrapping.Wrap("No outing is kept yet. Next, after one: finwright outing add TRACK.gpx --build NAME.", streams.Width));
        else
            OutingText.WriteAll(streams, outings);
        return ExitCode.Good;
    }
}
