using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading the settings of a part that comes as a mesh.</summary>
internal static class SettingsFile
{
    private const string DesignEnding = ".fin.json";

    /// <summary>Reads settings: those of a part, or those of a design.</summary>
    /// <param name="file">The file; null for every default.</param>
    /// <exception cref="WrongInputException">It cannot be read.</exception>
    public static PartSettingsReading Read(string? file)
    {
        if (file is null)
            return new(new(), []);
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the settings file is empty.", "Name it, for example block.part.json.");
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the settings file in it.");
        if (file.EndsWith(DesignEnding, StringComparison.OrdinalIgnoreCase))
            return Of(DesignFile.Read(file));
        try
        {
            return PartSettingsReader.ReadFile(file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path; docs/part-settings.md shows how settings are written.");
        }
    }

    private static PartSettingsReading Of(DesignReading reading) => new(
        reading.Design is { } design ? new() { Print = design.Print, Pour = design.Pour, Printed = design.Materials.Printed, Prices = design.Prices } : null,
        reading.Findings)
    {
        Folder = reading.Folder,
    };
}
