using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Lists readings that are kept.</summary>
internal sealed class BenchListCommand : StoreCommand
{
    private readonly Argument<string?> _build = new("BUILD") { Description = "Readings of this build only.", HelpName = "BUILD", Arity = ArgumentArity.ZeroOrOne };

    public BenchListCommand()
        : base("list", "List the readings of the bench that are kept, with their numbers.", "finwright bench list", changes: false) => AddAll(_build);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        long? build = arguments.GetValue(_build) is string name ? ComparedInput.BuildOf(store, name).Id : null;
        // Readings of a deleted build went with it.
        HashSet<long> builds = [.. store.Builds.List().Select(own => own.Id)];
        BenchListAnswer answer = new([.. store.Bench.List(build).Where(session => builds.Contains(session.BuildId)).Select(session => BenchSessionAnswer.Of(store, session))]);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(answer));
        else
            BenchSessionText.WriteList(streams, answer);
        return ExitCode.Good;
    }
}
