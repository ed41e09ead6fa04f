using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Deletes readings, and what was learned from them.</summary>
internal sealed class BenchDeleteCommand : StoreCommand
{
    private readonly Argument<string> _number = Inputs.Needed("NUMBER", "Number of the readings; \"bench list\" shows it.");

    public BenchDeleteCommand()
        : base("delete", $"Delete readings, and the calibrations that came from them. For {StoreBin.Days} days they can be had back with \"bench restore\".", "finwright bench delete 3", changes: true) => AddAll(_number);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        long number = SessionNumber.Of(arguments.GetRequiredValue(_number));
        BenchSession session = store.Bench.Get(number);
        IReadOnlyList<Calibration> taught = store.Bench.DeleteWithTeachings(store, session);
        string build = store.Builds.Get(session.BuildId).Name;
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new BenchBinAnswer(number, build, IsDeleted: true, [.. taught.Select(own => own.Id)])));
        else
            streams.Out.WriteLine(Wrapping.Wrap($"Deleted readings {number} of {build}{(taught.Count == 0 ? "" : $", and {taught.Count} calibration{(taught.Count == 1 ? "" : "s")} that came from them")}. \"finwright bench restore {number}\" has the readings back for {StoreBin.Days} days.", streams.Width));
        return ExitCode.Good;
    }
}

/// <summary>Readings that were deleted or had back.</summary>
/// <param name="Number">Their number.</param>
/// <param name="Build">The build.</param>
/// <param name="IsDeleted">Whether they are deleted now.</param>
/// <param name="DeletedCalibrations">Calibrations that were deleted with them.</param>
internal sealed record BenchBinAnswer(long Number, string Build, bool IsDeleted, IReadOnlyList<long> DeletedCalibrations);
