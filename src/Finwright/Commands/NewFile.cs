using Finwright.Geometry.Files;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Writing a file that a command was asked for.</summary>
internal static class NewFile
{
    /// <summary>Refuses a name that cannot be written to, before any work is done.</summary>
    /// <param name="file">The file, as the person named it.</param>
    /// <param name="example">A name that would do.</param>
    /// <param name="overwrite">Whether an existing file may be replaced.</param>
    /// <exception cref="WrongInputException">The name is empty, or the file exists and may not be replaced.</exception>
    public static void Refuse(string file, string example, bool overwrite)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the new file is empty.", $"Give it a name, for example {example}.");
        if (!overwrite && Path.Exists(file))
            throw new WrongInputException($"\"{file}\" exists already.", "Choose another name, or allow it with --overwrite.");
    }

    /// <summary>Writes the file whole or not at all.</summary>
    /// <exception cref="WrongInputException">It cannot be written.</exception>
    public static void Write(string file, Action<Stream> write)
    {
        try
        {
            AtomicFile.Write(file, write);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new WrongInputException(problem.Message, "Choose a file in a folder that you may write to.");
        }
    }
}
