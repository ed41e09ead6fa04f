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
            Printed = Embed(given.Printed, folder, Path("printed"), findings),
            Resin = Embed(given.Resin, folder, Path("resin"), findings),
            Rod = Embed(given.Rod, folder, Path("rod"), findings),
            Bolt = Embed(given.Bolt, folder, Path("bolt"), findings),
            Sheet = Embed(given.Sheet, folder, Path("sheet"), findings),
        };
        return embedded == given ? design : design with { Materials = embedded };

        static string Path(string place) => $"$.materials.{place}.file";
    }

    /// <summary>Replaces a named material file by its text.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="folder">Folder beside which the file lies; null when there is none.</param>
    /// <param name="path">JSON path of its name.</param>
    /// <param name="findings">Receives an error when it cannot be read.</param>
    public static MaterialChoice Embed(MaterialChoice choice, string? folder, string path, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice.File is string file && BesideFile.Text("material", file, folder, path, findings) is string text ? choice with { File = null, Content = text } : choice;
    }
}
