using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Finwright.Assessment.Packing;

/// <summary>
/// Writes files into a folder so that it is never half there: everything is first written to a hidden folder, and only moved
/// into place when it is complete.
/// </summary>
/// <remarks>
/// A new folder appears by one rename. In a folder that exists, the list is taken away first and put back last, each file
/// moving by a rename: a folder without a list is recognisably unfinished. Files that are not on an earlier list are never deleted.
/// </remarks>
/// <param name="listName">File that marks a finished folder and lists its files.</param>
/// <param name="listKind">Value of its field <c>kind</c>.</param>
/// <param name="what">What the folder holds, for people: "pack".</param>
public sealed class PackFolder(string listName, string listKind, string what)
{
    private const string WorkName = ".finwright-unfinished-";
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(5);

    /// <summary>Folders of whole packs.</summary>
    public static PackFolder OfPacks { get; } = new("summary.json", "finwright-pack", "pack");

    /// <summary>Folders of papers alone.</summary>
    public static PackFolder OfPapers { get; } = new("papers.json", "finwright-papers", "set of papers");

    /// <summary>File that marks a finished folder and lists its files.</summary>
    public string ListName => listName;

    /// <summary>Value of its field <c>kind</c>.</summary>
    public string ListKind => listKind;

    /// <summary>Says whether files may go into a folder, before the long work begins.</summary>
    /// <param name="folder">The folder; need not exist.</param>
    /// <param name="overwrite">Whether the folder may hold other files, which may be replaced where names are the same.</param>
    /// <exception cref="PackFolderException">It may not.</exception>
    public void Check(string folder, bool overwrite)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        InTurn(folder, () => RemoveWorkFolder(Prepare(folder, overwrite)));
    }

    /// <summary>Writes the files.</summary>
    /// <param name="folder">The folder; made when missing.</param>
    /// <param name="files">The files, the list among them.</param>
    /// <param name="overwrite">Whether the folder may hold other files, which may be replaced where names are the same.</param>
    /// <param name="cancellation">Stops the writing; the folder stays as it was.</param>
    /// <exception cref="PackFolderException">The folder cannot be used or written.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public void Write(string folder, IReadOnlyList<PackFile> files, bool overwrite, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (!files.Any(file => file.Path == listName))
            throw new ArgumentException($"A {what} needs a {listName}.", nameof(files));
        ArgumentException.ThrowIfNullOrEmpty(folder);
        InTurn(folder, () =>
        {
            string work = Prepare(folder, overwrite);
            try
            {
                foreach (PackFile file in files)
                {
                    cancellation.ThrowIfCancellationRequested();
                    string path = Path.Combine(work, file.Path);
                    Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                    using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write);
                    stream.Write(file.Content.Span);
                    stream.Flush(flushToDisk: true);
                }

                cancellation.ThrowIfCancellationRequested();
                if (Directory.Exists(folder))
                    MoveInto(folder, work, files);
                else
                    MoveWhole(work, Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
            }
            finally
            {
                RemoveWorkFolder(work);
            }
        });
    }

    private static void MoveWhole(string work, string folder)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(folder)!);
        Directory.Move(work, folder);
    }

    private void MoveInto(string folder, string work, IReadOnlyList<PackFile> files)
    {
        IReadOnlyList<string> earlier = EarlierFiles(folder) ?? [];
        File.Delete(Path.Combine(folder, listName));
        foreach (string stale in earlier.Except(files.Select(file => file.Path), StringComparer.Ordinal))
            File.Delete(Path.Combine(folder, stale));
        foreach (PackFile file in files.OrderBy(file => file.Path == listName))
        {
            string target = Path.Combine(folder, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Move(Path.Combine(work, file.Path), target, overwrite: true);
        }
    }

    /// <summary>The files on an earlier list; null when there is none.</summary>
    private List<string>? EarlierFiles(string folder)
    {
        string path = Path.Combine(folder, listName);
        if (!File.Exists(path))
            return null;
        try
        {
            using JsonDocument summary = JsonDocument.Parse(File.ReadAllBytes(path));
            if (summary.RootElement.GetProperty("kind").GetString() != listKind)
                return null;
            List<string> files = [];
            foreach (JsonElement file in summary.RootElement.GetProperty("files").EnumerateArray())
                if (file.GetProperty("file").GetString() is string name && IsOurs(name))
                    files.Add(name);
            return files;
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or KeyNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Only names that such files can have may be deleted: a list from elsewhere must not point out of the folder.</summary>
    private static bool IsOurs(string name)
    {
        string[] parts = name.Split('/');
        bool isInPlace = parts.Length == 1 || (parts.Length == 2 && parts[0] is "parts" or "templates");
        string file = parts[^1];
        return isInPlace && !file.StartsWith('.') && !file.Contains('\\', StringComparison.Ordinal) && !Path.IsPathRooted(file)
            && Path.GetExtension(file) is ".3mf" or ".stl" or ".step" or ".svg" or ".png" or ".pdf" or ".json" or ".txt";
    }

    // The folder or, when it is still to be made, the nearest one above that exists: work there is on the same disk as the
    // target, so that a move is a rename.
    private static string Nearest(string folder)
    {
        string nearest = Path.GetFullPath(folder);
        while (!Directory.Exists(nearest))
        {
            if (File.Exists(nearest))
                throw new PackFolderException($"\"{folder}\" cannot be made: \"{nearest}\" is a file.", "Name another folder with --out.");
            nearest = Path.GetDirectoryName(nearest) ?? throw new DirectoryNotFoundException("The disk does not exist.");
        }

        return nearest;
    }

    /// <summary>Refuses a folder of other files, else makes an empty hidden folder beside the target, on the same disk.</summary>
    private string Prepare(string folder, bool overwrite)
    {
        if (!overwrite && Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any(entry => !Path.GetFileName(entry).StartsWith(WorkName, StringComparison.Ordinal)) && EarlierFiles(folder) is null)
            throw new PackFolderException($"\"{folder}\" holds files that are not an earlier {what}.", "Name an empty or new folder with --out, or allow it with --overwrite; other files are kept.");
        string work = WorkFolder(folder);
        RemoveWorkFolder(work);
        Directory.CreateDirectory(work);
        return work;
    }

    /// <summary>Where a pack for a folder is put together; named after the folder, so that folders side by side do not share it.</summary>
    internal static string WorkFolder(string folder) => Path.Combine(Nearest(folder), WorkName + Key(folder));

    private static string Key(string folder) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)))))[..16];

    /// <summary>
    /// Does something while no other process or thread of this user works on the same folder. Waits a few seconds for another's
    /// turn to end: writing takes less than one. The system ends the turn of a process that died.
    /// </summary>
    private void InTurn(string folder, Action action) => Guarded(folder, () =>
    {
        using Mutex turn = new(initiallyOwned: false, "finwright-pack-" + Key(folder));
        if (!Take(turn))
            throw new PackFolderException($"Another {what} is being written to \"{folder}\" at this moment.", "Wait until it is done, and try again.");
        try
        {
            action();
        }
        finally
        {
            turn.ReleaseMutex();
        }
    });

    private static bool Take(Mutex turn)
    {
        try
        {
            return turn.WaitOne(LongestWait);
        }
        catch (AbandonedMutexException)
        {
            // Its owner died; what it left is removed before work begins.
            return true;
        }
    }

    private static void RemoveWorkFolder(string work)
    {
        if (Directory.Exists(work))
            Directory.Delete(work, recursive: true);
    }

    private static void Guarded(string folder, Action action)
    {
        try
        {
            action();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new PackFolderException($"The folder \"{folder}\" cannot be written: {problem.Message}", "Name a folder with --out that you may write to, with some free space.", problem);
        }
    }
}
