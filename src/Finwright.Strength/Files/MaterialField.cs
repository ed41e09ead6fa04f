using Finwright.Design.DataFiles;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>One number of a material in its file, and where the material has it.</summary>
/// <param name="Data">Name, unit, and what can be meant at all.</param>
/// <param name="Get">The number in a material, SI.</param>
internal sealed record MaterialField(DataField Data, Func<Material, Ranged> Get)
{
    public static MaterialField Modulus<T>(string key, Func<T, Ranged> get)
        where T : Material => new(new(key + "_gpa", 1e9, 0, 0.001, 1000), m => get((T)m));

    public static MaterialField Strength<T>(string key, Func<T, Ranged> get)
        where T : Material => new(new(key + "_mpa", 1e6, 0, 0.1, 10_000), m => get((T)m));

    public static MaterialField Temperature<T>(string key, Func<T, Ranged> get)
        where T : Material => new(new(key + "_celsius", 1, 273.15, -50, 500), m => get((T)m));

    public static MaterialField Poisson<T>(Func<T, Ranged> get)
        where T : Material => new(new("poisson", 1, 0, 0, 0.49), m => get((T)m));

    public static MaterialField Density { get; } = new(new("density_kg_per_m3", 1, 0, 10, 25_000), m => m.Density);
}
