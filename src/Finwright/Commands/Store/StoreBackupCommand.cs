using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Copies the store into a new file.</summary>
internal sealed class StoreBackupCommand : StoreCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The copy; must not exist. It is a store itself: --store opens it.");

    public StoreBackupCommand()
        : base("backup", "Copy the store whole into a new file, also while other programs use it.", "finwright store backup workshop-2027-05-01.finstore", changes: false) => AddAll(_file);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the copy is empty.", "Name it, for example workshop-2027-05-01.finstore.");
        // What is not there yet is no backup, even though it could be copied as nothing.
        if (store.Refusal is { Problem: StoreProblem.Wrong } refusal)
            throw refusal;
        StoreBackup.Write(store, file);
        BackupAnswer answer = new(store.Path, Path.GetFullPath(file), new FileInfo(file).Length);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<BackupAnswer>("finwright-store-backup", $"Finwright {ProgramVersion.Text}", answer)));
        else
            streams.Out.WriteLine($"Wrote {file}: {StoreText.Size(answer.Bytes)}.");
        return ExitCode.Good;
    }

    /// <summary>What was copied.</summary>
    /// <param name="Store">The store.</param>
    /// <param name="File">The copy.</param>
    /// <param name="Bytes">How long it is.</param>
    private sealed record BackupAnswer(string Store, string File, long Bytes);
}
