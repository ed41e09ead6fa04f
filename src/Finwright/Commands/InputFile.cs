using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading a small file that a command is given.</summary>
internal static class InputFile
{
    // Readers refuse what is larger by themselves; this only keeps a wrong name from filling the memory.
    private const int Most = 4 * 1024 * 1024;

    /// <summary>The file's bytes, at most a little more than any reader takes.</summary>
    /// <param name="file">The file.</param>
    /// <param name="what">What it should be, in words.</param>
    /// <param name="remedy">What to do when it cannot be read.</param>
    /// <exception cref="WrongInputException">It cannot be read.</exception>
    public static byte[] Bytes(string file, string what, string remedy)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException($"The name of the {what} is empty.", remedy);
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", $"Name the {what} in it.");
        try
        {
            using FileStream stream = File.OpenRead(file);
            byte[] start = new byte[Math.Min(Most, Math.Max(0, stream.Length))];
            int length = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
            return start[..length];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", remedy);
        }
    }
}
