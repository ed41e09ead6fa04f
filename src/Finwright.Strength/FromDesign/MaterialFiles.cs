using Finwright.Design;

namespace Finwright.Strength.FromDesign;

/// <summary>Takes the text of material files into the design, so that everything after depends on the design alone and not on what lies on the disk.</summary>
public static class MaterialFiles
{
    // The longest text that a design may hold.
    private const int MostCharacters = 20_000;

    /// <summary>Replaces each named material file by its text.</summary>
    /// <param name="design">The design; its file names are checked not to lead out of the folder.</param>
    /// <param name="folder">Folder of the design file; null when the design came from no file.</param>
    /// <param name="findings">Receives an error for each file that cannot be read.</param>
    public static FinDesign Embed(FinDesign design, string? folder, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        Design.Materials given = design.Materials;
        Design.Materials embedded = given with
        {
            Printed = Embed(given.Printed, "printed"),
            Resin = Embed(given.Resin, "resin"),
            Rod = Embed(given.Rod, "rod"),
            Bolt = Embed(given.Bolt, "bolt"),
            Sheet = Embed(given.Sheet, "sheet"),
        };
        return embedded == given ? design : design with { Materials = embedded };

        MaterialChoice Embed(MaterialChoice choice, string place) =>
            choice.File is string file && Text(file, folder, $"$.materials.{place}.file", findings) is string text ? choice with { File = null, Content = text } : choice;
    }

    private static string? Text(string file, string? folder, string path, ICollection<Finding> findings)
    {
        if (folder is null)
        {
            findings.Add(new("material-file-missing", Severity.Error, path, $"The material file \"{file}\" cannot be found, because the design was not read from a folder.", "Give the material in the design itself, as \"content\"."));
            return null;
        }

        try
        {
            using StreamReader reader = new(Path.Combine(folder, file));
            char[] buffer = new char[MostCharacters + 1];
            int length = reader.ReadBlock(buffer);
            if (length <= MostCharacters)
                return new(buffer, 0, length);
            findings.Add(new("material-file-unusable", Severity.Error, path, $"The material file \"{file}\" has more than {MostCharacters} characters; a material needs a few thousand.", "Check that it is a material file.") { Limit = $"{MostCharacters} characters" });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "there is no such file beside the design" : problem.Message.TrimEnd('.');
            findings.Add(new("material-file-missing", Severity.Error, path, $"The material file \"{file}\" cannot be read: {why}.", "Put the file beside the design file, or correct its name."));
        }

        return null;
    }
}
