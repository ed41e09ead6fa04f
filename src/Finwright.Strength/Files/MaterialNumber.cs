using Finwright.Design.DataFiles;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>One number of a material as its file holds it.</summary>
/// <param name="Field">Name with the unit.</param>
/// <param name="Value">In that unit.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Certainty">The word for how sure it is.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record MaterialNumber(string Field, double Value, double Low, double High, string Certainty, string Source)
{
    /// <summary>All numbers of a material, in the order of the file.</summary>
    /// <param name="material">The material.</param>
    public static IReadOnlyList<MaterialNumber> Of(Material material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return
        [
            .. MaterialForm.Of(material).Fields.Select(field =>
            {
                Ranged number = field.Data.FromSi(field.Get(material));
                MaterialSource source = material.Sources[field.Data.Key];
                return new MaterialNumber(field.Data.Key, number.Value, number.Low, number.High, DataSheetFile.Words[(int)source.Certainty], source.Text);
            }),
        ];
    }

    /// <summary>The word for a material's kind in its file.</summary>
    /// <param name="material">The material.</param>
    public static string KindOf(Material material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return MaterialForm.Of(material).Kind;
    }
}
