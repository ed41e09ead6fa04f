using Finwright.Design.Reading;
using Finwright.Making.Files;
using Finwright.Making.FromDesign;
using Finwright.Making.Resins;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Finding the resin that a command is given, by name or in a file.</summary>
internal static class ResinInput
{
    /// <summary>The resin when none is named.</summary>
    public const string Usual = ResinFromDesign.Usual;

    /// <summary>Finds a resin.</summary>
    /// <param name="nameOrFile">Name of a resin of the library, or a resin file; null for the usual one.</param>
    /// <param name="streams">Where findings about a file go.</param>
    /// <exception cref="WrongInputException">There is none, or the file cannot be used.</exception>
    public static ResinSystem Find(string? nameOrFile, TextStreams streams)
    {
        string wanted = nameOrFile ?? Usual;
        if (ResinLibrary.Find(wanted) is { } known)
            return known;
        bool isFile = wanted.EndsWith(".json", StringComparison.OrdinalIgnoreCase) || wanted.Contains('/', StringComparison.Ordinal) || wanted.Contains('\\', StringComparison.Ordinal) || File.Exists(wanted);
        if (!isFile)
        {
            string[] names = [.. ResinLibrary.All.Select(resin => resin.Name)];
            string near = NearestName.Among(wanted, names) is string nearest ? $" Perhaps \"{nearest}\" is meant." : "";
            throw new WrongInputException($"There is no resin \"{wanted}\".{near}", $"Resins: {string.Join(", ", names)}; or name a resin file (*{ResinFile.Ending}).");
        }

        ResinReading reading = ResinFile.Read(InputFile.Bytes(wanted, "resin file", "Check the path; \"finwright resins laminating-slow --copy my-resin.resin.json\" writes one to start from."));
        if (reading.Findings.Count > 0)
        {
            FindingText.Write(streams.Error, reading.Findings, wanted, streams.Width);
            streams.Error.WriteLine();
        }

        return reading.Resin ?? throw new WrongInputException($"{FindingText.Count(reading.Findings)} in the resin file; nothing was worked out.", $"Correct {Path.GetFileName(wanted)} as said above.");
    }
}
