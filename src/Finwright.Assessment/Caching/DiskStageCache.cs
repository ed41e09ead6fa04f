using System.Diagnostics.CodeAnalysis;
using Finwright.Assessment.Stages;

namespace Finwright.Assessment.Caching;

/// <summary>Keeps results in files of a folder, so that the next run of the program finds them.</summary>
/// <remarks>
/// One file a result, named by its key and written under a temporary name first, so that several processes may share the folder: a reader
/// sees a whole file or none. Every file carries a digest; a damaged, truncated or foreign one is as good as absent and is replaced.
/// A folder that cannot be read or written costs time, never an answer. When the folder outgrows its limit, the files longest unused go.
/// </remarks>
public sealed class DiskStageCache : IStageCache
{
    /// <summary>Bytes kept unless said otherwise: curves of some two hundred fins.</summary>
    public const long DefaultCapacity = 64L << 20;

    private const string Extension = ".kept";
    private const string PartialExtension = ".partial";

    // A file larger than this is not ours.
    private const long LargestFile = 16L << 20;

    // Room left after clearing out, so that it is not done again at once.
    private const double ShareKept = 0.8;
    private const int WritesBetweenClearings = 64;
    private static readonly TimeSpan MarkedUsedEvery = TimeSpan.FromHours(12);
    private static readonly TimeSpan AbandonedAfter = TimeSpan.FromHours(1);

    private readonly string _folder;
    private readonly long _capacity;
    private readonly IReadOnlyList<ResultForm> _forms;
    private int _writes;
    private volatile bool _cannotWrite;

    /// <summary>Opens a folder; nothing is made or read yet.</summary>
    /// <param name="folder">Full path; made when first written to.</param>
    /// <param name="forms">The kinds of results to keep; others are declined.</param>
    /// <param name="capacity">Bytes kept at most, at least 1.</param>
    public DiskStageCache(string folder, IReadOnlyList<ResultForm> forms, long capacity = DefaultCapacity)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        ArgumentNullException.ThrowIfNull(forms);
        ArgumentOutOfRangeException.ThrowIfLessThan(capacity, 1);
        (_folder, _forms, _capacity) = (folder, forms, capacity);
    }

    /// <inheritdoc/>
    public bool TryGet<T>(StageKey key, [NotNullWhen(true)] out StageResult<T>? result)
        where T : class
    {
        result = null;
        if (FormOf<T>() is not { } form)
            return false;
        string path = PathOf(key);
        try
        {
            FileInfo file = new(path);
            if (!file.Exists || file.Length > LargestFile)
                return false;
            result = KeptFile.Read(key, form, File.ReadAllBytes(path));
            if (result is not null && DateTime.UtcNow - file.LastWriteTimeUtc > MarkedUsedEvery)
                MarkUsed(file);
        }
        catch (Exception problem) when (IsOfTheDisk(problem))
        {
            return false;
        }

        return result is not null;
    }

    /// <inheritdoc/>
    public void Keep<T>(StageKey key, StageResult<T> result)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(result);
        if (_cannotWrite || FormOf<T>() is not { } form || (result.Value is not null && !form.CanWrite(result.Value)))
            return;
        string partial = Path.Combine(_folder, Path.GetRandomFileName() + PartialExtension);
        try
        {
            Directory.CreateDirectory(_folder);
            File.WriteAllBytes(partial, KeptFile.Write(key, form, result));
            File.Move(partial, PathOf(key), overwrite: true);
        }
        catch (Exception problem) when (IsOfTheDisk(problem))
        {
            // A full disk or a folder that may not be written to will not get better during this run.
            _cannotWrite = true;
            Remove(partial);
            return;
        }

        if (Interlocked.Increment(ref _writes) % WritesBetweenClearings == 1)
            ClearOut();
    }

    private static bool IsOfTheDisk(Exception problem) =>
        problem is IOException or UnauthorizedAccessException or NotSupportedException or System.Security.SecurityException;

    private static void MarkUsed(FileInfo file)
    {
        try
        {
            file.LastWriteTimeUtc = DateTime.UtcNow;
        }
        catch (Exception problem) when (IsOfTheDisk(problem))
        {
            // It only goes a little earlier.
        }
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (IsOfTheDisk(problem))
        {
            // Another process has it open or was quicker; the next clearing finds it.
        }
    }

    private ResultForm<T>? FormOf<T>()
        where T : class => _forms.OfType<ResultForm<T>>().FirstOrDefault();

    private string PathOf(StageKey key) => Path.Combine(_folder, key.Hex + Extension);

    private void ClearOut()
    {
        try
        {
            FileInfo[] files = [.. new DirectoryInfo(_folder).EnumerateFiles()];
            foreach (FileInfo abandoned in files.Where(file => file.Extension == PartialExtension && DateTime.UtcNow - file.LastWriteTimeUtc > AbandonedAfter))
                Remove(abandoned.FullName);
            FileInfo[] kept = [.. files.Where(file => file.Extension == Extension)];
            long size = kept.Sum(file => file.Length);
            if (size <= _capacity)
                return;
            foreach (FileInfo file in kept.OrderBy(file => file.LastWriteTimeUtc).ThenBy(file => file.Name, StringComparer.Ordinal))
            {
                if (size <= ShareKept * _capacity)
                    return;
                size -= file.Length;
                Remove(file.FullName);
            }
        }
        catch (Exception problem) when (IsOfTheDisk(problem))
        {
            // Files come and go while another process clears; the next time is soon enough.
        }
    }
}
