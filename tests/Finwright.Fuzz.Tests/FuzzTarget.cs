using Finwright.Design;

namespace Finwright.Fuzz.Tests;

/// <summary>One kind of file that comes from outside.</summary>
/// <param name="Seeds">Good files of the kind.</param>
/// <param name="Read">Reads one as the program does, given which seed it was made from; answers null when it was taken, else why not.</param>
/// <param name="IsRefusal">Whether an exception is one that the reader promises.</param>
internal sealed record FuzzTarget(Func<IReadOnlyList<byte[]>> Seeds, Func<byte[], int, string?> Read, Func<Exception, bool> IsRefusal)
{
    /// <summary>Of so many files that others get, this kind gets one: it takes so much longer.</summary>
    public int OneIn { get; init; } = 1;

    /// <summary>Longer than this nothing may take: reading is over in seconds. Only work that shows how far it is, and can be stopped, may take longer.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>A reader that answers with findings, and throws nothing.</summary>
    public static FuzzTarget Told(Func<IReadOnlyList<byte[]>> seeds, Func<byte[], int, IEnumerable<Finding>> read) =>
        new(seeds, (file, seed) => read(file, seed).FirstOrDefault(finding => finding.IsError) is { } error ? $"{error.Message} {error.Remedy}" : null, _ => false);

    /// <inheritdoc cref="Told(Func{IReadOnlyList{byte[]}}, Func{byte[], int, IEnumerable{Finding}})"/>
    public static FuzzTarget Told(Func<IReadOnlyList<byte[]>> seeds, Func<byte[], IEnumerable<Finding>> read) => Told(seeds, (file, _) => read(file));

    /// <summary>A reader that takes a file, or throws what it promises.</summary>
    public static FuzzTarget Thrown(Func<IReadOnlyList<byte[]>> seeds, Action<byte[], int> read, Func<Exception, bool> isRefusal) => new(
        seeds,
        (file, seed) =>
        {
            read(file, seed);
            return null;
        },
        isRefusal);
}
