namespace Finwright.Geometry.Files;

/// <summary>Writes a file whole or not at all.</summary>
public static class AtomicFile
{
    /// <summary>
    /// Writes to a temporary name in the same folder, flushes to disk and renames. A reader sees the old file or the new
    /// one, never a part of it; when anything fails, the old file stays and the temporary one is removed.
    /// </summary>
    /// <param name="path">Where the file goes; an existing file is replaced. The folder must exist.</param>
    /// <param name="write">Writes the content; called once, with a seekable stream that it need not close.</param>
    /// <exception cref="IOException">The file cannot be written; the message names it and says why.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentNullException.ThrowIfNull(write);
        string target = Path.GetFullPath(path);
        string folder = Path.GetDirectoryName(target) ?? throw new IOException($"{path} is a folder. Give a file name.");
        if (Directory.Exists(target) || Path.EndsInDirectorySeparator(target))
            throw new IOException($"{path} is a folder. Give a file name.");
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"{path} cannot be written: the folder {folder} does not exist.");
        string partial = Path.Combine(folder, $".{Path.GetRandomFileName()}.partial");
        try
        {
            using (FileStream stream = new(partial, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(partial, target, overwrite: true);
        }
        catch (Exception problem)
        {
            Remove(partial);
            if (problem is IOException or UnauthorizedAccessException)
                throw new IOException($"{path} cannot be written: {Reason(problem, partial)} Nothing was changed.", problem);
            throw;
        }
    }

    /// <summary>The system's own words without the temporary name, which means nothing to the reader.</summary>
    private static string Reason(Exception problem, string partial)
    {
        string reason = problem.Message.Replace($"'{partial}'", "the folder", StringComparison.Ordinal).Replace($" : the folder", "", StringComparison.Ordinal);
        return reason.EndsWith('.') ? reason : reason + ".";
    }

    private static void Remove(string partial)
    {
        try
        {
            File.Delete(partial);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first failure is the one worth telling; a folder that refuses deletion mostly refused creation too.
        }
    }
}
