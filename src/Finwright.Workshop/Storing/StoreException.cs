using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>Why the store could not do what was asked.</summary>
public enum StoreProblem
{
    /// <summary>What was asked makes no sense: a name twice, a thing that is not there.</summary>
    Wrong,

    /// <summary>Another program writes to the store and did not end in time.</summary>
    Busy,

    /// <summary>The store, or its folder, may only be read.</summary>
    ReadOnly,

    /// <summary>The disk is full.</summary>
    Full,

    /// <summary>The store's bytes make no sense.</summary>
    Damaged,

    /// <summary>The file is no store, or one of a later program.</summary>
    Foreign,

    /// <summary>The disk does not answer, or the file cannot be opened.</summary>
    Unreachable,
}

/// <summary>The store could not do what was asked. Nothing of it was done.</summary>
#pragma warning disable CA1032 // Only ever thrown with its kind, what is wrong and what to do.
public sealed class StoreException : Exception
#pragma warning restore CA1032
{
    // SQLite, "Result and Error Codes".
    private const int Error = 1, Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13, CannotOpen = 14, Constraint = 19, NotADatabase = 26;
    private const int WriteFailed = InputOutput | (3 << 8), MarkersFailed = InputOutput | (19 << 8), ForeignKeyFailed = Constraint | (3 << 8);

    /// <summary>A problem of our own.</summary>
    /// <param name="problem">What kind.</param>
    /// <param name="message">What is wrong, where and why.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="inner">What the system or the database said; null for nothing.</param>
    public StoreException(StoreProblem problem, string message, string remedy, Exception? inner = null)
        : base(message, inner) => (Problem, Remedy) = (problem, remedy);

    /// <summary>What kind of problem.</summary>
    public StoreProblem Problem { get; }

    /// <summary>What to do, in a sentence.</summary>
    public string Remedy { get; }

    /// <summary>A problem of the database in our words.</summary>
    /// <param name="problem">What the database said.</param>
    /// <param name="path">The store.</param>
    internal static StoreException Of(SqliteException problem, string path) => problem.SqliteErrorCode switch
    {
        Busy or Locked => new(StoreProblem.Busy, $"Another program is writing to {path} and has not ended.", "Let it end, or close it, and try again. Nothing was changed.", problem),
        ReadOnly => new(StoreProblem.ReadOnly, $"{path} may only be read: the file or its folder is write-protected.", "Allow writing there, or name another place with --store. Nothing was changed.", problem),
        Full => new(StoreProblem.Full, $"The disk that holds {path} is full.", "Make room and try again. Nothing was changed.", problem),
        // A quota that is used up, or a limit on the size of files, comes as a write that failed.
        InputOutput when problem.SqliteExtendedErrorCode is WriteFailed or MarkersFailed =>
            new(StoreProblem.Full, $"The disk that holds {path} takes no more: it is full, a quota is used up, or it fails.", "Make room, check the disk, and try again. Nothing was changed.", problem),
        // Questions and changes are fixed texts: when one does not fit the tables, the tables are not what they were made as.
        Corrupt or NotADatabase or Error => Damage(path, problem),
        Constraint when problem.SqliteExtendedErrorCode == ForeignKeyFailed =>
            new(StoreProblem.Wrong, "It names something that is not in the store.", "Name what is there. Nothing was changed.", problem),
        Constraint => new(StoreProblem.Wrong, $"A value does not fit: {Reason(problem)}.", "Correct it. Nothing was changed.", problem),
        CannotOpen => new(StoreProblem.Unreachable, $"{path} cannot be opened, or no file may be written beside it.", "Check that the folder exists and may be written to, or name another place with --store.", problem),
        InputOutput => new(StoreProblem.Unreachable, $"The disk that holds {path} does not answer as it should.", "Check the disk, and try again. Nothing was changed.", problem),
        _ => new(StoreProblem.Wrong, $"{path}: {Reason(problem)}.", "Nothing was changed.", problem),
    };

    /// <summary>A store whose bytes make no sense.</summary>
    internal static StoreException Damage(string path, Exception inner) =>
        new(StoreProblem.Damaged, $"{path} is damaged.", "Copy what can be read into a new store with \"finwright store rescue\", or put back a copy made with \"finwright store backup\".", inner);

    /// <summary>A damaged store of which only what can be saved is shown.</summary>
    internal static StoreException Saved(Rescue.RescueReport report) => new(
        StoreProblem.Damaged,
        $"{report.Damaged} is damaged: what can be read of it is shown, {report.Kept} rows{(report.Lost > 0 ? $"; {report.Lost} or more are lost" : "")}.",
        "Copy what can be read into a new store with \"finwright store rescue\", or put back a copy made with \"finwright store backup\".");

    /// <summary>What the database said, without the number before it.</summary>
    private static string Reason(SqliteException problem)
    {
        (int first, int last) = (problem.Message.IndexOf('\'', StringComparison.Ordinal), problem.Message.LastIndexOf('\''));
        return last > first ? problem.Message[(first + 1)..last] : problem.Message.TrimEnd('.');
    }
}
