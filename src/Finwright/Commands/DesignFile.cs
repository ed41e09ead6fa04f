using Finwright.Assessment;
using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading the design file that a command is given.</summary>
internal static class DesignFile
{
    /// <summary>Reads a design file.</summary>
    /// <exception cref="WrongInputException">There is no such file, or it may not be read.</exception>
    public static DesignReading Read(string file)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the design file is empty.", "Name the design file, for example my-fin.fin.json.");
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the design file in it.");
        try
        {
            return DesignReader.ReadFile(file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path; \"finwright new my-fin.fin.json\" writes a first design.");
        }
    }

    /// <summary>What a result means for the shell.</summary>
    public static ExitCode ExitCodeOf(AssessmentResult result) =>
        result.InputIsWrong ? ExitCode.WrongInput : result.HasErrors ? ExitCode.Fails : ExitCode.Good;
}
