using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Has deleted readings back.</summary>
internal sealed class BenchRestoreCommand : StoreCommand
{
    private readonly Argument<string> _number = Inputs.Needed("NUMBER", "Number of the readings.");

    public BenchRestoreCommand()
        : base("restore", $"Have readings back that were deleted in the last {StoreBin.Days} days.", "finwright bench restore 3", changes: true) => AddAll(_number);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        long number = SessionNumber.Of(arguments.GetRequiredValue(_number));
        store.Bench.Restore(number);
        string build = store.Builds.Get(store.Bench.Get(number).BuildId).Name;
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new BenchBinAnswer(number, build, IsDeleted: false, [])));
        else
            streams.Out.WriteLine(Wrapping.Wrap($"Readings {number} of {build} are back. \"finwright bench learn\" learns from them anew.", streams.Width));
        return ExitCode.Good;
    }
}
