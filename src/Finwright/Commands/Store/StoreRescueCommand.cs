using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing.Rescue;

namespace Finwright.Commands.Store;

/// <summary>Copies what can still be read of a damaged store into a new one.</summary>
internal sealed class StoreRescueCommand : StorePathCommand
{
    private readonly Argument<string> _file = Inputs.Needed("NEWFILE", "The new store; must not exist.");

    public StoreRescueCommand()
        : base(
            "rescue",
            "Copy what can still be read of a damaged store into a new one, and say what is lost. The damaged store is only read; no other program may have it open.",
            "finwright store rescue rescued.finstore --store workshop.finstore") => AddAll(_file);

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the new store is empty.", "Name it, for example rescued.finstore.");
        RescueReport report = StoreRescue.Write(PathOf(arguments), file);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<RescueReport>("finwright-store-rescue", $"Finwright {ProgramVersion.Text}", report)));
        else
            StoreText.Write(streams, report);
        return report.Lost == 0 && report.Remarks.Count == 0 ? ExitCode.Good : ExitCode.Fails;
    }
}
