using System.Text;
using System.Text.Unicode;
using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>
/// Reads design files. Bad content never throws: it comes back as findings, all at once, each with its place in the file and a remedy.
/// </summary>
public static class DesignReader
{
    /// <summary>Reads a design from a file.</summary>
    /// <param name="path">Path of a <c>*.fin.json</c> file.</param>
    /// <exception cref="IOException">The file is missing or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or is a folder.</exception>
    public static DesignReading ReadFile(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        using FileStream file = File.OpenRead(path);
        byte[] start = new byte[DesignLimits.FileBytes + 1];
        int length = file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return Read(start.AsSpan(0, length), Path.GetDirectoryName(Path.GetFullPath(path)));
    }

    /// <summary>Reads a design from text.</summary>
    /// <param name="text">The content of a design file.</param>
    /// <param name="folder">Folder beside which the design's section files lie; null when there is none.</param>
    public static DesignReading Read(string text, string? folder = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > DesignLimits.FileBytes ? Refused(TooLarge(), folder) : Read(Encoding.UTF8.GetBytes(text), folder);
    }

    /// <summary>Reads a design from the bytes of a file.</summary>
    /// <param name="bytes">The content of a design file: UTF-8, with or without byte order mark.</param>
    /// <param name="folder">Folder beside which the design's section files lie; null when there is none.</param>
    public static DesignReading Read(ReadOnlySpan<byte> bytes, string? folder = null)
    {
        return Tree(bytes, out Finding? refusal) is { } root ? Read(root, folder) : Refused(refusal!, folder);
    }

    /// <summary>The tree of a file; null, with the reason, when the bytes are not one group of JSON in UTF-8.</summary>
    internal static Node? Tree(ReadOnlySpan<byte> bytes, out Finding? refusal)
    {
        refusal = null;
        ReadOnlySpan<byte> text = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        if (bytes.Length > DesignLimits.FileBytes)
            refusal = TooLarge();
        else if (!Utf8.IsValid(bytes))
            refusal = Broken("not-utf8", "The file is not plain text in UTF-8.", "Save it again as UTF-8 text; make sure that it is a design file.");
        else if (text.Trim(" \t\r\n"u8).IsEmpty)
            refusal = Broken("empty-file", "The file is empty.", "Start from an example, or take the last good copy.");
        else if (text.Contains((byte)0))
            refusal = Broken("not-utf8", "The file holds zero bytes, so it is not plain text in UTF-8.", "Save it again as UTF-8 text; make sure that it is a design file.");
        return refusal is null ? JsonTree.Read(text.ToArray(), out refusal) : null;
    }

    private static DesignReading Read(Node root, string? folder)
    {
        if (root.Kind != NodeKind.Object)
            return Refused(Broken("wrong-root", "A design file is one group in braces { }; this file holds something else.", "Start from an example."), folder) with { Root = root };

        var findings = new List<Finding>();
        Node? current = DesignMigration.BringUpToDate(root, findings);
        if (current is null)
            return new DesignReading(null, findings) { Root = root, Folder = folder };

        var builder = new DesignBuilder(findings);
        FinDesign design = builder.Build<FinDesign>(current);
        findings.AddRange(DesignValidation.Check(design, builder.Unusable));
        var reading = new DesignReading(builder.IsIncomplete ? null : design, []) { Root = current, Folder = folder };
        return reading with { Findings = Listed(findings, builder.NotListed, reading.Locate) };
    }

    /// <summary>Findings in the order of the file, not more of them than a person can read.</summary>
    internal static IReadOnlyList<Finding> Listed(List<Finding> findings, int notListed, Func<IEnumerable<Finding>, IReadOnlyList<Finding>> locate)
    {
        notListed += Math.Max(0, findings.Count - DesignLimits.Findings);
        List<Finding> listed = [.. locate(findings.Take(DesignLimits.Findings)).OrderBy(finding => finding.Line ?? int.MaxValue)];
        if (notListed > 0)
            listed.Add(MoreFindings(notListed));
        return listed;
    }

    private static Finding MoreFindings(int count) =>
        new("more-findings", Severity.Error, JsonPath.Root, $"There are {count} more findings that are not listed.", "Mend the listed ones first.")
        {
            Value = $"{DesignLimits.Findings + count} findings",
            Limit = $"{DesignLimits.Findings} findings",
        };

    private static DesignReading Refused(Finding finding, string? folder) => new(null, [finding]) { Folder = folder };

    private static Finding Broken(string code, string message, string remedy) =>
        new(code, Severity.Error, JsonPath.Root, message, remedy) { Line = 1 };

    private static Finding TooLarge() =>
        Broken("file-too-large", $"The file is larger than {DesignLimits.FileBytes / (1024 * 1024)} MB; a design needs a few kB.", "Make sure that it is a design file; shorten imported sections.") with
        {
            Limit = $"{DesignLimits.FileBytes / (1024 * 1024)} MB",
        };
}
