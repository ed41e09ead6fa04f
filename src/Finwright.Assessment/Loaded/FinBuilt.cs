using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.FromDesign;

namespace Finwright.Assessment.Loaded;

/// <summary>The fin as a structure, when it could be worked out.</summary>
public sealed record FinBuilt
{
    /// <summary>Why there is no structure, and what to do; null when there is.</summary>
    public string? Problem { get; init; }

    /// <summary>The structure; null when there is a <see cref="Problem"/>.</summary>
    public FinStructure? Structure { get; init; }

    /// <summary>Takes the structure from a design.</summary>
    internal static FinBuilt Of(FinDesign design, Blade blade)
    {
        List<Finding> findings = [];
        if (FinStructure.Of(design, blade, findings) is { } structure)
            return new() { Structure = structure };
        Finding why = findings.First(finding => finding.IsError);
        return new() { Problem = $"{why.Message} {why.Remedy}" };
    }
}
