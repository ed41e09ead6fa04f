using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Commands;

/// <summary>Materials as <c>finwright materials --json</c> gives them.</summary>
/// <param name="MadeBy">Name and version of the program.</param>
/// <param name="Materials">The materials.</param>
internal sealed record MaterialsAnswer(string MadeBy, IReadOnlyList<MaterialAnswer> Materials)
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; } = "finwright-materials";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; } = 1;
}

/// <summary>One material.</summary>
/// <param name="Name">The name by which a design calls it.</param>
/// <param name="Title">Name for people.</param>
/// <param name="MaterialKind">The word of its kind.</param>
/// <param name="Place">Where a design names it.</param>
/// <param name="UsedFor">What it is for, in words.</param>
/// <param name="Remark">What to know when using it.</param>
/// <param name="Numbers">Its numbers.</param>
internal sealed record MaterialAnswer(string Name, string Title, string MaterialKind, string Place, string UsedFor, string Remark, IReadOnlyList<MaterialNumber> Numbers)
{
    /// <summary>Takes a material of the library.</summary>
    public static MaterialAnswer Of(Material material)
    {
        (string place, string use) = material switch
        {
            PrintedPlastic => ("materials.printed", "the print"),
            CastResin => ("materials.resin", "the resin in the pores"),
            Rod => ("materials.rod", "carbon rods"),
            Metal => ("materials.bolt", "bolts and threaded rods"),
            Sheet => ("materials.sheet", "the flexible strip"),
            _ => throw new ArgumentException($"{material.Name} is of a kind without a place in a design.", nameof(material)),
        };
        return new(material.Name, material.Title, MaterialNumber.KindOf(material), place, use, material.Remark, MaterialNumber.Of(material));
    }
}
