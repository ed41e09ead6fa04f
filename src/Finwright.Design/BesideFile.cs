namespace Finwright.Design;

/// <summary>Takes the text of files that lie beside a design into it, so that everything after depends on the design alone and not on what lies on the disk.</summary>
public static class BesideFile
{
    // The longest text that a design may hold.
    private const int MostCharacters = 20_000;

    /// <summary>Reads a file.</summary>
    /// <param name="what">What it is, in a word: "material", "resin".</param>
    /// <param name="file">Its name; checked before not to lead out of the folder.</param>
    /// <param name="folder">Folder of the design file; null when the design came from no file.</param>
    /// <param name="path">JSON path of the name.</param>
    /// <param name="findings">Receives an error when it cannot be read.</param>
    /// <returns>The text; null with a finding.</returns>
    public static string? Text(string what, string file, string? folder, string path, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        if (folder is null)
        {
            findings.Add(new($"{what}-file-missing", Severity.Error, path, $"The {what} file \"{file}\" cannot be found, because the design was not read from a folder.", $"Give the {what} in the design itself, as \"content\"."));
            return null;
        }

        try
        {
            using StreamReader reader = new(Path.Combine(folder, file));
            char[] buffer = new char[MostCharacters + 1];
            int length = reader.ReadBlock(buffer);
            if (length <= MostCharacters)
                return new(buffer, 0, length);
            findings.Add(new($"{what}-file-unusable", Severity.Error, path, $"The {what} file \"{file}\" has more than {MostCharacters} characters; a {what} needs a few thousand.", $"Check that it is a {what} file.") { Limit = $"{MostCharacters} characters" });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "there is no such file beside the design" : problem.Message.TrimEnd('.');
            findings.Add(new($"{what}-file-missing", Severity.Error, path, $"The {what} file \"{file}\" cannot be read: {why}.", "Put the file beside the design file, or correct its name."));
        }

        return null;
    }
}
