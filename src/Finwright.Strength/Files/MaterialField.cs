using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>One number of a material in its file: name, unit, and what can be meant at all.</summary>
/// <param name="Key">Field name with the unit.</param>
/// <param name="Factor">SI value of one unit of the file.</param>
/// <param name="Offset">Added after the factor: 273.15 for degrees.</param>
/// <param name="Least">Least number that can be meant, in the unit of the file.</param>
/// <param name="Greatest">Greatest number that can be meant, in the unit of the file.</param>
/// <param name="Get">The number in a material.</param>
internal sealed record MaterialField(string Key, double Factor, double Offset, double Least, double Greatest, Func<Material, Ranged> Get)
{
    public static MaterialField Modulus<T>(string key, Func<T, Ranged> get)
        where T : Material => new(key + "_gpa", 1e9, 0, 0.001, 1000, m => get((T)m));

    public static MaterialField Strength<T>(string key, Func<T, Ranged> get)
        where T : Material => new(key + "_mpa", 1e6, 0, 0.1, 10_000, m => get((T)m));

    public static MaterialField Temperature<T>(string key, Func<T, Ranged> get)
        where T : Material => new(key + "_celsius", 1, 273.15, -50, 500, m => get((T)m));

    public static MaterialField Poisson<T>(Func<T, Ranged> get)
        where T : Material => new("poisson", 1, 0, 0, 0.49, m => get((T)m));

    public static MaterialField Density { get; } = new("density_kg_per_m3", 1, 0, 10, 25_000, m => m.Density);

    /// <summary>From the unit of the file to SI.</summary>
    public double ToSi(double number) => Factor * number + Offset;

    /// <summary>From SI to the unit of the file, without the noise of the last digits.</summary>
    public double FromSi(double value) => double.Round((value - Offset) / Factor, 9);
}
