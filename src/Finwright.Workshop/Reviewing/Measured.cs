using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Reviewing;

/// <summary>What was measured of a build; what was kept part by part is added up where every part has it.</summary>
/// <param name="PlasticGrams">Plastic, g; null when it was not measured.</param>
/// <param name="PrintHours">Time on the printer, h.</param>
/// <param name="ResinMl">Resin poured, ml.</param>
/// <param name="MassGrams">The finished fin, g.</param>
/// <param name="PeakCelsius">Hottest reading while it cured, °C.</param>
/// <param name="Cost">What it cost.</param>
internal sealed record Measured(double? PlasticGrams, double? PrintHours, double? ResinMl, double? MassGrams, double? PeakCelsius, double? Cost)
{
    private const string Print = "print.", Plastic = ".plastic";

    /// <summary>The measurements of a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="parts">Its parts, as far as they were kept.</param>
    /// <param name="predicted">Results of its design: they name its parts.</param>
    public static Measured Of(Build build, IReadOnlyList<BuildPart> parts, FinResults predicted)
    {
        string[] names = [.. predicted.Lines.Select(line => line.Key).Where(key => key.StartsWith(Print, StringComparison.Ordinal) && key.EndsWith(Plastic, StringComparison.Ordinal) && key.Length > Print.Length + Plastic.Length).Select(key => key[Print.Length..^Plastic.Length])];
        BuildPart[] own = [.. parts.Where(part => names.Contains(part.Part, StringComparer.OrdinalIgnoreCase))];
        bool isWhole = names.Length > 0 && own.Length == names.Length;
        double? Sum(Func<BuildPart, double?> of) => isWhole && Array.TrueForAll(own, part => of(part) is not null) ? own.Sum(part => of(part)!.Value) : null;
        return new(build.PlasticGrams ?? Sum(part => part.PlasticGrams), build.PrintHours ?? Sum(part => part.PrintHours), build.ResinMl, build.MassGrams, build.PeakCelsius, build.Cost);
    }
}
