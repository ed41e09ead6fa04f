using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>Compares two builds by the runs of their tracks.</summary>
internal sealed class OutingCompareCommand : StoreCommand
{
    private readonly Argument<string> _first = Inputs.Needed("BUILD", "The first build.");
    private readonly Argument<string> _second = Inputs.Needed("OTHER", "The build to compare it with.");
    private readonly Option<bool> _positions = Inputs.Switch("--positions-only", "Work speeds out from positions even where the receiver tells its own.");

    public OutingCompareCommand()
        : base("compare", "Was one fin faster? Runs of two builds with the same sail in the same wind, day by day, with the range that the runs leave.", "finwright outing compare \"Fairway grey\" \"Fairway black\"", changes: false) =>
        AddAll(_first, _second, _positions);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build first = store.Builds.Get(arguments.GetRequiredValue(_first)), second = store.Builds.Get(arguments.GetRequiredValue(_second));
        if (first.Id == second.Id)
            throw new WrongInputException($"{ShelfText.Typed(first.Name)} is compared with itself.", "Name two builds.");
        CompareAnswer answer = CompareAnswer.Of(OutingComparison.Of(store, first, second, arguments.GetValue(_positions), cancellation), first.Name, second.Name);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(answer));
            return ExitCode.Good;
        }

        CompareText.Write(streams, answer);
        return ExitCode.Good;
    }
}
