using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using Finwright.Design;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Looks JSON paths up in a design, so that findings can be held to name real fields.</summary>
internal static partial class DesignPath
{
    /// <summary>Whether the path names a field or an item of the design.</summary>
    public static bool Exists(FinDesign design, string path)
    {
        if (!path.StartsWith("$.", StringComparison.Ordinal))
            return false;
        object? here = design;
        string[] steps = path[2..].Split('.');
        for (int i = 0; i < steps.Length; i++)
        {
            Match step = Step().Match(steps[i]);
            PropertyInfo? property = here?.GetType().GetProperties().SingleOrDefault(p => Key(p.Name) == step.Groups["key"].Value);
            if (!step.Success || property is null)
                return false;
            here = property.GetValue(here);
            if (step.Groups["index"].Success)
            {
                int index = int.Parse(step.Groups["index"].Value, System.Globalization.CultureInfo.InvariantCulture);
                if (here is not IList list || index >= list.Count)
                    return false;
                here = list[index];
            }
        }

        return true;
    }

    // PascalCase to the design file's snake_case: AtDepthMm is at_depth_mm.
    private static string Key(string name) => Hump().Replace(name, "_$0").ToLowerInvariant();

    [GeneratedRegex(@"^(?<key>[a-z_0-9]+)(\[(?<index>\d+)\])?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Step();

    [GeneratedRegex("(?<!^)[A-Z]", RegexOptions.None, 1000)]
    private static partial Regex Hump();
}
