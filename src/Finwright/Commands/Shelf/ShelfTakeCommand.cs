using System.CommandLine;
using System.Text;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Writes a revision as a design file.</summary>
internal sealed class ShelfTakeCommand : StoreCommand
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf, or one of its revisions as NAME@2.");
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file to write.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "Replace the file if it exists.");

    public ShelfTakeCommand()
        : base("take", "Write a design from the shelf as a design file, to work on or to give away. It stays on the shelf.", "finwright shelf take \"Fairway upright@1\" my-copy.fin.json", changes: false) =>
        AddAll(_name, _file, _overwrite);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        Revision revision = store.Shelf.Get(Reference.Parse(arguments.GetRequiredValue(_name)));
        NewFile.Refuse(file, "my-copy.fin.json", arguments.GetValue(_overwrite));
        DesignReading reading = store.Shelf.Read(revision.Id);
        // A revision that this program finds wrong, because a rule is new, is written as it was kept.
        string text = reading is { HasErrors: false, Design: { } design } ? DesignWriter.Write(design, compact: true) : store.Shelf.Text(revision.Id);
        NewFile.Write(file, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        string did = $"Wrote {file}: {revision.Label}.";
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new ShelfDoneAnswer($"Finwright {ProgramVersion.Text}", did, RevisionAnswer.Of(revision))));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }
}
