using Finwright.Design.DataFiles;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>A kind of material in its file: the word for it, its numbers, and how the material is made from them.</summary>
/// <param name="Kind">Word in the field "kind".</param>
/// <param name="Type">The record it becomes.</param>
/// <param name="Fields">Its numbers, in the order of the file.</param>
/// <param name="Create">Makes the material from texts, sources and numbers by field name.</param>
internal sealed record MaterialForm(string Kind, Type Type, IReadOnlyList<MaterialField> Fields, Func<MaterialTexts, IReadOnlyDictionary<string, Ranged>, Material> Create)
{
    public static IReadOnlyList<MaterialForm> All { get; } = [PrintedPlastic(), CastResin(), Rod(), Metal(), Sheet()];

    /// <summary>The kinds as their files know them.</summary>
    public static DataSubject Subject { get; } = new("material", [.. All.Select(f => f.Data)]);

    /// <summary>Kind and fields as the file knows them.</summary>
    public DataForm Data => new(Kind, [.. Fields.Select(f => f.Data)]);

    public static MaterialForm Of(Material material) => All.First(form => form.Type == material.GetType());

    private static MaterialForm PrintedPlastic() => new(
        "printed-plastic",
        typeof(PrintedPlastic),
        [
            MaterialField.Modulus<PrintedPlastic>("modulus_along", m => m.ModulusAlong),
            MaterialField.Modulus<PrintedPlastic>("modulus_across", m => m.ModulusAcross),
            MaterialField.Poisson<PrintedPlastic>(m => m.Poisson),
            MaterialField.Modulus<PrintedPlastic>("shear_modulus", m => m.ShearModulus),
            MaterialField.Strength<PrintedPlastic>("strength_along", m => m.StrengthAlong),
            MaterialField.Strength<PrintedPlastic>("strength_across", m => m.StrengthAcross),
            MaterialField.Temperature<PrintedPlastic>("softening", m => m.SofteningTemperature),
            MaterialField.Density,
        ],
        (texts, numbers) => new PrintedPlastic
        {
            Name = texts.Name,
            Title = texts.Title,
            Remark = texts.Remark,
            Sources = texts.Sources,
            ModulusAlong = numbers["modulus_along_gpa"],
            ModulusAcross = numbers["modulus_across_gpa"],
            Poisson = numbers["poisson"],
            ShearModulus = numbers["shear_modulus_gpa"],
            StrengthAlong = numbers["strength_along_mpa"],
            StrengthAcross = numbers["strength_across_mpa"],
            SofteningTemperature = numbers["softening_celsius"],
            Density = numbers["density_kg_per_m3"],
        });

    private static MaterialForm CastResin() => new(
        "cast-resin",
        typeof(CastResin),
        [
            MaterialField.Modulus<CastResin>("modulus", m => m.Modulus),
            MaterialField.Poisson<CastResin>(m => m.Poisson),
            MaterialField.Strength<CastResin>("strength", m => m.Strength),
            MaterialField.Temperature<CastResin>("glass_transition", m => m.GlassTransition),
            MaterialField.Density,
        ],
        (texts, numbers) => new CastResin
        {
            Name = texts.Name,
            Title = texts.Title,
            Remark = texts.Remark,
            Sources = texts.Sources,
            Modulus = numbers["modulus_gpa"],
            Poisson = numbers["poisson"],
            Strength = numbers["strength_mpa"],
            GlassTransition = numbers["glass_transition_celsius"],
            Density = numbers["density_kg_per_m3"],
        });

    private static MaterialForm Rod() => new(
        "rod",
        typeof(Rod),
        [
            MaterialField.Modulus<Rod>("modulus", m => m.Modulus),
            MaterialField.Modulus<Rod>("modulus_across", m => m.ModulusAcross),
            MaterialField.Modulus<Rod>("shear_modulus", m => m.ShearModulus),
            MaterialField.Strength<Rod>("tensile_strength", m => m.TensileStrength),
            MaterialField.Strength<Rod>("compressive_strength", m => m.CompressiveStrength),
            MaterialField.Strength<Rod>("bond_strength", m => m.BondStrength),
            MaterialField.Density,
        ],
        (texts, numbers) => new Rod
        {
            Name = texts.Name,
            Title = texts.Title,
            Remark = texts.Remark,
            Sources = texts.Sources,
            Modulus = numbers["modulus_gpa"],
            ModulusAcross = numbers["modulus_across_gpa"],
            ShearModulus = numbers["shear_modulus_gpa"],
            TensileStrength = numbers["tensile_strength_mpa"],
            CompressiveStrength = numbers["compressive_strength_mpa"],
            BondStrength = numbers["bond_strength_mpa"],
            Density = numbers["density_kg_per_m3"],
        });

    private static MaterialForm Metal() => new(
        "metal",
        typeof(Metal),
        [
            MaterialField.Modulus<Metal>("modulus", m => m.Modulus),
            MaterialField.Poisson<Metal>(m => m.Poisson),
            MaterialField.Strength<Metal>("yield", m => m.Yield),
            MaterialField.Strength<Metal>("ultimate", m => m.Ultimate),
            MaterialField.Density,
        ],
        (texts, numbers) => new Metal
        {
            Name = texts.Name,
            Title = texts.Title,
            Remark = texts.Remark,
            Sources = texts.Sources,
            Modulus = numbers["modulus_gpa"],
            Poisson = numbers["poisson"],
            Yield = numbers["yield_mpa"],
            Ultimate = numbers["ultimate_mpa"],
            Density = numbers["density_kg_per_m3"],
        });

    private static MaterialForm Sheet() => new(
        "sheet",
        typeof(Sheet),
        [
            MaterialField.Modulus<Sheet>("modulus", m => m.Modulus),
            MaterialField.Poisson<Sheet>(m => m.Poisson),
            MaterialField.Strength<Sheet>("strength", m => m.Strength),
            MaterialField.Temperature<Sheet>("softening", m => m.SofteningTemperature),
            MaterialField.Density,
        ],
        (texts, numbers) => new Sheet
        {
            Name = texts.Name,
            Title = texts.Title,
            Remark = texts.Remark,
            Sources = texts.Sources,
            Modulus = numbers["modulus_gpa"],
            Poisson = numbers["poisson"],
            Strength = numbers["strength_mpa"],
            SofteningTemperature = numbers["softening_celsius"],
            Density = numbers["density_kg_per_m3"],
        });
}

/// <summary>What all materials have besides numbers.</summary>
internal sealed record MaterialTexts(string Name, string Title, string Remark, IReadOnlyDictionary<string, MaterialSource> Sources);
