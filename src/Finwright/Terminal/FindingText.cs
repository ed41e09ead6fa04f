using Finwright.Assessment.Packing;
using Finwright.Design;

namespace Finwright.Terminal;

/// <summary>Findings as plain text: severity in words, the place, the message, what to do.</summary>
internal static class FindingText
{
    private const int Indent = 9;

    /// <summary>Writes findings, each with a blank line before it.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="findings">The findings, in the order to show.</param>
    /// <param name="file">The design file, as the person named it.</param>
    /// <param name="width">Columns to wrap to.</param>
    public static void Write(TextWriter writer, IEnumerable<Finding> findings, string file, int width)
    {
        foreach (Finding finding in findings)
        {
            string place = finding.Line is int line ? $"{file}:{line}" : file;
            writer.WriteLine();
            writer.WriteLine($"{Word(finding.Severity),-Indent}{place}  {finding.Path}");
            WriteBlock(writer, finding.Message, width);
            WriteBlock(writer, $"What to do: {finding.Remedy}", width);
        }
    }

    /// <summary>How many of each kind there are, for example "1 error, 2 cautions".</summary>
    public static string Count(IReadOnlyList<Finding> findings)
    {
        List<string> parts = [];
        foreach (Severity severity in (Severity[])[Severity.Error, Severity.Caution, Severity.Note])
        {
            int count = findings.Count(finding => finding.Severity == severity);
            if (count > 0)
                parts.Add($"{count} {Word(severity)}{(count == 1 ? "" : "s")}");
        }

        return parts.Count == 0 ? "nothing to remark" : string.Join(", ", parts);
    }

    private static void WriteBlock(TextWriter writer, string text, int width) =>
        writer.WriteLine(new string(' ', Indent) + Wrapping.Wrap(text, width, Indent, Indent));

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Caution => "caution",
        Severity.Note => "note",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Unknown severity."),
    };
}
