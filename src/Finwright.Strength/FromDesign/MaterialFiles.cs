using Finwright.Design;

namespace Finwright.Strength.FromDesign;

/// <summary>Takes the text of material files into the design, so that everything after depends on the design alone and not on what lies on the disk.</summary>
public static class MaterialFiles
{
    /// <summary>Replaces each named material file by its text.</summary>
    /// <param name="design">The design; its file names are checked not to lead out of the folder.</param>
    /// <param name="folder">Folder of the design file; null when the design came from no file.</param>
    /// <param name="findings">Receives an error for each file that cannot be read.</param>
    public static FinDesign Embed(FinDesign design, string? folder, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        Design.Materials given = design.Materials;
        Design.Materials embedded = given with
        {
            Printed = Embed(given.Printed, "printed"),
            Resin = Embed(given.Resin, "resin"),
            Rod = Embed(given.Rod, "rod"),
            Bolt = Embed(given.Bolt, "bolt"),
            Sheet = Embed(given.Sheet, "sheet"),
        };
        return embedded == given ? design : design with { Materials = embedded };

        MaterialChoice Embed(MaterialChoice choice, string place) =>
            choice.File is string file && BesideFile.Text("material", file, folder, $"$.materials.{place}.file", findings) is string text ? choice with { File = null, Content = text } : choice;
    }
}
