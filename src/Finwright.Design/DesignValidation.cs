using System.Collections.Frozen;
using Finwright.Design.Checks;
using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>Everything that can be said against a design without working out its geometry.</summary>
public static class DesignValidation
{
    /// <summary>Checks ranges, and the rules that tie fields together.</summary>
    /// <param name="design">A design from a file or built in code.</param>
    /// <returns>All findings, in the order of the format; empty when there are none.</returns>
    public static IReadOnlyList<Finding> Check(FinDesign design) => Check(design, FrozenSet<string>.Empty);

    /// <summary>Checks a design of which some values could not be read; what hangs on those is left out.</summary>
    /// <param name="design">The design, with defaults and stand-ins for the values that could not be read.</param>
    /// <param name="unusable">Paths of those values.</param>
    internal static List<Finding> Check(FinDesign design, IReadOnlySet<string> unusable)
    {
        ArgumentNullException.ThrowIfNull(design);
        List<Finding> findings = [.. RangeChecks.Of(design).Where(finding => !JsonPath.IsWithinAny(finding.Path, unusable))];

        // The rules look at several fields at once and need them all to be there.
        if (findings.Exists(finding => finding.Code is "null-not-allowed"))
            return findings;

        var broken = unusable.Select(JsonPath.Parent).ToHashSet(StringComparer.Ordinal);
        IEnumerable<Finding> rules =
        [
            .. BriefChecks.Of(design),
            .. OutlineChecks.Of(design.Shape.Outline),
            .. SectionChecks.Of(design.Shape),
            .. BladeChecks.Of(design.Shape),
            .. BaseChecks.Of(design),
            .. HardwareChecks.Of(design.Hardware),
            .. PartsChecks.Of(design),
            .. PrintChecks.Of(design),
            .. MaterialChecks.Of(design.Materials),
            .. PourChecks.Of(design.Pour),
        ];
        findings.AddRange(rules.Where(finding =>
            !broken.Contains(JsonPath.Parent(finding.Path)) && !JsonPath.IsWithinAny(finding.Path, unusable)));
        return findings;
    }
}
