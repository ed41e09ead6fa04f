using System.Text;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Making.Resins;

namespace Finwright.Making.FromDesign;

/// <summary>From the design's choice to a resin system.</summary>
public static class ResinFromDesign
{
    /// <summary>The resin when none is named.</summary>
    public const string Usual = "laminating-slow";

    private const string Group = "$.pour.system";

    /// <summary>Takes the text of a named resin file into the pour.</summary>
    /// <param name="pour">The pour; the file's name is checked not to lead out of the folder.</param>
    /// <param name="folder">Folder of the design file; null when the design came from no file.</param>
    /// <param name="findings">Receives an error when the file cannot be read.</param>
    public static Pour Embed(Pour pour, string? folder, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return pour.System.File is string file && BesideFile.Text("resin", file, folder, $"{Group}.file", findings) is string text
            ? pour with { System = pour.System with { File = null, Content = text } }
            : pour;
    }

    /// <summary>Finds the resin.</summary>
    /// <param name="choice">The design's choice; its file already taken in.</param>
    /// <param name="findings">Receives an error when it is not known or not usable, and cautions about it.</param>
    /// <returns>The resin; null with an error.</returns>
    public static ResinSystem? Of(ResinChoice choice, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(findings);
        if (choice.Content is string content)
        {
            ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(content));
            foreach (Finding finding in reading.Findings)
                findings.Add(finding with { Path = $"{Group}.content", Line = null, Message = $"In the resin file, {Where(finding)}: {finding.Message}" });
            return reading.Resin;
        }

        string name = choice.Name ?? Usual;
        ResinSystem? found = ResinLibrary.Find(name);
        if (found is null)
            findings.Add(new("unknown-resin", Severity.Error, $"{Group}.name", $"There is no resin \"{name}\".", $"Resins: {string.Join(", ", ResinLibrary.All.Select(resin => resin.Name))}. For one of your own, give its file as \"file\"."));
        return found;
    }

    private static string Where(Finding finding) => finding.Line is int line ? $"line {line}" : finding.Path.TrimStart('$', '.') is { Length: > 0 } field ? field : "as a whole";
}
