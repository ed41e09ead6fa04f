using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Says in which fields two revisions differ.</summary>
internal sealed class ShelfDiffCommand : StoreCommand
{
    private readonly Argument<string> _first = Inputs.Needed("A", "A design on the shelf, or one of its revisions as NAME@2.");
    private readonly Argument<string?> _second = new("B") { Description = "Another one; if left out, the revision that A was made from stands against A.", HelpName = "B", Arity = ArgumentArity.ZeroOrOne };

    public ShelfDiffCommand()
        : base("diff", "Say in which fields two designs or revisions on the shelf differ. \"compare\" also says what follows from it.", "finwright shelf diff \"Fairway upright@1\" \"Fairway upright@3\"", changes: false) =>
        AddAll(_first, _second);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision first = store.Shelf.Get(Reference.Parse(arguments.GetRequiredValue(_first))), second;
        if (arguments.GetValue(_second) is string other)
            second = store.Shelf.Get(Reference.Parse(other));
        else if (first.Parent.Length > 0)
            (first, second) = (store.Shelf.Get(Reference.Parse(first.Parent)), first);
        else
            throw new WrongInputException($"{first.Label} was made from no other revision.", "Name the one that it is to be held against.");
        IReadOnlyList<DesignChange> changes = DesignDifference.Of(DesignOf(store, first), DesignOf(store, second));
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new ShelfDiffAnswer($"Finwright {ProgramVersion.Text}", RevisionAnswer.Of(first), RevisionAnswer.Of(second), changes)));
            return ExitCode.Good;
        }

        streams.Out.WriteLine($"{first.Label} -> {second.Label}");
        if (changes.Count == 0)
            streams.Out.WriteLine("  No field differs.");
        SideBySideText.WriteInputs(streams, changes);
        return ExitCode.Good;
    }

    private static FinDesign DesignOf(WorkshopStore store, Revision revision) =>
        store.Shelf.Read(revision.Id) is { HasErrors: false, Design: { } design }
            ? design
            : throw new WrongInputException($"{revision.Label} cannot be read as a design by this program.", "\"finwright shelf take\" writes it as it was kept; \"finwright check\" says what is wrong.");
}
