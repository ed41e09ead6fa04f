using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Terminal;

namespace Finwright.Commands.Bench;

/// <summary>Reading a file of readings that a command is given.</summary>
internal static class ReadingsFile
{
    /// <summary>Reads the file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="done">What was not done when it is wrong, for example "kept".</param>
    /// <param name="streams">Takes what is wrong with it.</param>
    /// <exception cref="WrongInputException">It cannot be read, or something in it is wrong.</exception>
    public static IReadOnlyList<BenchReadingLine> Read(string file, string done, TextStreams streams)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the file of readings is empty.", "Name it, for example my-fin.readings.csv.");
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the file of readings in it.");
        BenchReadingsContent content;
        try
        {
            using FileStream stream = File.OpenRead(file);
            content = BenchReadings.Read(stream);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path; examples/sandbar-delta.readings.csv shows how readings are written.");
        }

        Refuse(content.Findings, file, done, streams);
        return content.Lines;
    }

    /// <summary>Refuses readings with which something is wrong.</summary>
    /// <param name="findings">What was found; nothing is refused when it is empty.</param>
    /// <param name="file">The file.</param>
    /// <param name="done">What was not done, for example "kept".</param>
    /// <param name="streams">Takes the findings.</param>
    /// <exception cref="WrongInputException">Something was found.</exception>
    public static void Refuse(IReadOnlyList<Finding> findings, string file, string done, TextStreams streams)
    {
        if (findings.Count == 0)
            return;
        FindingText.Write(streams.Error, findings, file, streams.Width);
        streams.Error.WriteLine();
        throw new WrongInputException($"{FindingText.Count(findings)} in the readings; nothing was {done}.", $"Correct {Path.GetFileName(file)} as said above.");
    }
}
