using Finwright.Design.Checks;
using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>What came of reading part settings.</summary>
/// <param name="Settings">The settings; null when the text is unreadable. Use them only when there are no errors.</param>
/// <param name="Findings">Everything found, in the order of the file.</param>
public sealed record PartSettingsReading(PartSettings? Settings, IReadOnlyList<Finding> Findings)
{
    internal Node? Root { get; init; }

    /// <summary>Folder beside which resin and material files lie; null when it is not known.</summary>
    public string? Folder { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(finding => finding.IsError);

    /// <summary>Gives findings of later steps the lines of this file.</summary>
    /// <param name="findings">Findings with paths.</param>
    public IReadOnlyList<Finding> Locate(IEnumerable<Finding> findings) => Lines.Locate(Root, findings);
}

/// <summary>Reads part settings with the strictness of design files: everything that does not fit comes back as findings.</summary>
public static class PartSettingsReader
{
    /// <summary>Reads settings from a file.</summary>
    /// <param name="path">Path of a <c>*.part.json</c> file.</param>
    /// <exception cref="IOException">The file is missing or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or is a folder.</exception>
    public static PartSettingsReading ReadFile(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        using FileStream file = File.OpenRead(path);
        byte[] start = new byte[DesignLimits.FileBytes + 1];
        int length = file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return Read(start.AsSpan(0, length), Path.GetDirectoryName(Path.GetFullPath(path)));
    }

    /// <summary>Checks settings that came from no file.</summary>
    /// <param name="settings">The settings.</param>
    public static PartSettingsReading Check(PartSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return new(settings, [.. RangeChecks.Of(settings), .. PourChecks.Of(settings.Pour)]);
    }

    /// <summary>Reads settings from the bytes of a file.</summary>
    /// <param name="bytes">UTF-8, with or without byte order mark.</param>
    /// <param name="folder">Folder of the file; null when there is none.</param>
    public static PartSettingsReading Read(ReadOnlySpan<byte> bytes, string? folder = null)
    {
        if (DesignReader.Tree(bytes, out Finding? refusal) is not { } root)
            return new(null, [refusal!]) { Folder = folder };
        if (root.Kind != NodeKind.Object)
            return new(null, [new("wrong-root", Severity.Error, JsonPath.Root, "Part settings are one group in braces { }; this file holds something else.", "Start from the example in docs/part-settings.md.") { Line = 1 }]) { Folder = folder };

        List<Finding> findings = [];
        DesignBuilder builder = new(findings);
        PartSettings settings = builder.Build<PartSettings>(root);
        List<Finding> ranges = [.. RangeChecks.Of(settings).Where(finding => !JsonPath.IsWithinAny(finding.Path, builder.Unusable))];
        findings.AddRange(ranges);
        if (!ranges.Exists(finding => finding.Code is "null-not-allowed"))
            findings.AddRange(PourChecks.Of(settings.Pour).Where(finding => !JsonPath.IsWithinAny(finding.Path, builder.Unusable)));
        PartSettingsReading reading = new(builder.IsIncomplete ? null : settings, []) { Root = root, Folder = folder };
        return reading with { Findings = DesignReader.Listed(findings, builder.NotListed, reading.Locate) };
    }
}
