using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>Where each material comes from.</summary>
internal static class MaterialChecks
{
    private const string Group = "$.materials";

    public static IEnumerable<Finding> Of(Materials materials)
    {
        (string Key, MaterialChoice Choice)[] places =
        [
            ("printed", materials.Printed), ("resin", materials.Resin), ("rod", materials.Rod), ("bolt", materials.Bolt), ("sheet", materials.Sheet),
        ];
        foreach ((string key, MaterialChoice choice) in places)
        {
            string path = $"{Group}.{key}";
            int sources = (choice.Material is null ? 0 : 1) + (choice.File is null ? 0 : 1) + (choice.Content is null ? 0 : 1);
            if (sources > 1)
                yield return new("material-given-twice", Severity.Error, path, "The material is given more than once.", "Keep one of \"material\", \"file\" and \"content\".");
            else if (choice.File is string file && FileName.Problem(file) is string problem)
                yield return new("file-outside-folder", Severity.Error, $"{path}.file", $"\"{JsonPath.Shown(file)}\" {problem}.", "Put the file beside the design file and write its name alone.") { Value = JsonPath.Shown(file) };
            if (key != "printed" && (choice.ModulusAcrossGpa is not null || choice.StrengthAcrossMpa is not null))
                yield return new("not-used", Severity.Note, path, "Only a print has values across its layers; here they are not used.", "Take them out.");
        }
    }
}
