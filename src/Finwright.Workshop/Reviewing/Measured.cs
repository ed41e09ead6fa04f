using Finwright.Workshop.Builds;

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
    /// <summary>The measurements of a build.</summary>
    public static Measured Of(Build build, IReadOnlyList<BuildPart> parts) => new(
        build.PlasticGrams ?? Sum(parts, part => part.PlasticGrams), build.PrintHours ?? Sum(parts, part => part.PrintHours), build.ResinMl, build.MassGrams, build.PeakCelsius, build.Cost);

    private static double? Sum(IReadOnlyList<BuildPart> parts, Func<BuildPart, double?> of) =>
        parts.Count > 0 && parts.All(part => of(part) is not null) ? parts.Sum(part => of(part)!.Value) : null;
}
