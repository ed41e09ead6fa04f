using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>Cavities that say one form, and have names of their own.</summary>
internal static class HardwareChecks
{
    public static IEnumerable<Finding> Of(Hardware hardware)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < hardware.Cavities.Count; i++)
        {
            Cavity cavity = hardware.Cavities[i];
            string path = $"$.hardware.cavities[{i}]";
            if (cavity.Kind == CavityKind.Cylinder && cavity.HeightMm is not null)
                yield return new("cylinder-with-height", Severity.Error, $"{path}.height_mm", "A cylinder lies across the fin and has a diameter only; a height says a box.", "Take the height out, or set \"kind\" to \"box\".");
            if (!names.Add(cavity.Name))
                yield return new("repeated-name", Severity.Caution, $"{path}.name", $"Two cavities are called \"{JsonPath.Shown(cavity.Name)}\"; the papers could not tell them apart.", "Give each a name of its own.");
        }
    }
}
