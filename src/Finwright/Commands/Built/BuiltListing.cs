using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>A listing of builds.</summary>
internal abstract class BuiltListing : StoreCommand
{
    private readonly Option<string?> _design = Inputs.Text("--design", "name", "Only builds of this design.");

    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected BuiltListing(string name, string description, string example)
        : base(name, description, example, changes: false) => AddAll(_design);

    /// <inheritdoc/>
    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        long? design = arguments.GetValue(_design) is string name ? store.Shelf.Get(new Reference(name, null)).DesignId : null;
        IReadOnlyList<Build> builds = store.Builds.List(design);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new BuildsAnswer($"Finwright {ProgramVersion.Text}", [.. builds.Select(build => BuildAnswer.Of(store, build))])));
        }
        else if (builds.Count == 0)
        {
            streams.Out.WriteLine(Wrapping.Wrap("No fin has been built yet. Next, when one is: finwright built add NAME, with the design's name on the shelf.", streams.Width));
        }
        else
        {
            TextColumns columns = new("build", "of", "made", " plastic", " resin", " mass", "problems, note");
            foreach (Build build in builds)
            {
                columns.Add(
                    build.Name, build.Revision, ShelfText.Day(build.MadeOn), ShelfText.Number(build.PlasticGrams, "0", "g"), ShelfText.Number(build.ResinMl, "0", "ml"), ShelfText.Number(build.MassGrams, "0", "g"),
                    ShelfText.Joined(ShelfText.FirstLine(build.Problems), ShelfText.FirstLine(build.Note)));
            }

            columns.Write(streams);
        }

        return ExitCode.Good;
    }
}
