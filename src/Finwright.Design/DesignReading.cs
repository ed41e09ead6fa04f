using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>What came of reading a design file.</summary>
/// <param name="Design">The design; null when the text is unreadable or something that must be given is missing. Use it only when there are no errors.</param>
/// <param name="Findings">Everything found, in the order of the file; findings without a line come last.</param>
public sealed record DesignReading(FinDesign? Design, IReadOnlyList<Finding> Findings)
{
    internal Node? Root { get; init; }

    /// <summary>Folder beside which the design's section files lie; null when it is not known.</summary>
    public string? Folder { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(finding => finding.IsError);

    /// <summary>The line on which a value stands.</summary>
    /// <param name="jsonPath">Path, for example <c>$.shape.sections[1].at_percent</c>.</param>
    /// <returns>Line from 1; null when the file does not give the value.</returns>
    public int? LineOf(string jsonPath)
    {
        ArgumentNullException.ThrowIfNull(jsonPath);
        return Lines.Of(Root, jsonPath);
    }

    /// <summary>Gives findings of later stages the lines of this file: that of the value, or of the group in which it is missing.</summary>
    /// <param name="findings">Findings with paths.</param>
    public IReadOnlyList<Finding> Locate(IEnumerable<Finding> findings) => Lines.Locate(Root, findings);
}
