using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>A listing of the shelf.</summary>
internal abstract class ShelfListing : StoreCommand
{
    private readonly Option<string?> _search = Inputs.Text("--search", "words", "Only designs whose name, tags or latest note hold these words.");

    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected ShelfListing(string name, string description, string example)
        : base(name, description, example, changes: false) => AddAll(_search);

    /// <inheritdoc/>
    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string search = arguments.GetValue(_search) ?? "";
        IReadOnlyList<ShelvedDesign> designs = store.Shelf.List(search);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new ShelfAnswer($"Finwright {ProgramVersion.Text}", store.Path, [.. designs.Select(ShelvedAnswer.Of)])));
        }
        else if (designs.Count == 0)
        {
            streams.Out.WriteLine(Wrapping.Wrap(search.Length > 0 ? $"No design on the shelf holds \"{search}\"." : "The shelf is empty. Next: finwright shelf add my-fin.fin.json", streams.Width));
        }
        else
        {
            TextColumns columns = new("design", " revision", " builds", "kept", "tags, note");
            foreach (ShelvedDesign design in designs)
                columns.Add(design.Name, $"{design.Latest.Number}", $"{design.Builds}", ShelfText.Day(design.Latest.MadeAt), ShelfText.Joined(string.Join(", ", design.Tags), ShelfText.FirstLine(design.Latest.Note)));
            columns.Write(streams);
        }

        return ExitCode.Good;
    }
}
