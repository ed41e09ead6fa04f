using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Commands;
using Finwright.Strength.Files;

namespace Finwright.Terminal;

/// <summary>Materials as plain text.</summary>
internal static class MaterialsText
{
    private const int FieldColumns = 28, SourceIndent = 6;

    // The numbers by which materials of one kind are told apart.
    private static readonly (string Ending, string Unit)[] Main = [("_gpa", "GPa"), ("_mpa", "MPa")];

    /// <summary>Writes all materials in short, by what they are for.</summary>
    public static void WriteAll(TextStreams streams, IReadOnlyList<MaterialAnswer> materials)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap("Typical values with the range in which they lie as good as certainly. The maker's data sheet of the very material in hand goes before them, and a bench test before both.", streams.Width));
        foreach (IGrouping<string, MaterialAnswer> place in materials.GroupBy(own => own.Place, StringComparer.Ordinal))
        {
            o.WriteLine();
            o.WriteLine($"For {place.First().UsedFor} ({place.Key})");
            foreach (MaterialAnswer own in place)
            {
                o.WriteLine($"  {own.Name,-20}{own.Title}");
                o.WriteLine(new string(' ', 22) + Wrapping.Wrap(string.Join(", ", Main.Select(kind => Short(own, kind.Ending, kind.Unit))), streams.Width, 22, 22));
            }
        }

        o.WriteLine();
        o.WriteLine(Wrapping.Wrap("\"finwright materials NAME\" shows every number with its source; --copy writes a material to a file that you can change.", streams.Width));
    }

    /// <summary>Writes one material with the source of each number.</summary>
    public static void WriteOne(TextStreams streams, MaterialAnswer material)
    {
        TextWriter o = streams.Out;
        o.WriteLine($"{material.Title}: {material.Name}");
        o.WriteLine(Wrapping.Wrap(material.Remark, streams.Width));
        o.WriteLine($"For {material.UsedFor} ({material.Place}).");
        foreach (MaterialNumber own in material.Numbers)
        {
            o.WriteLine();
            o.WriteLine($"  {own.Field,-FieldColumns}{Digits(own.Value),8}   {(own.Low < own.High ? $"{Digits(own.Low)} to {Digits(own.High)}" : "")}".TrimEnd());
            o.WriteLine(new string(' ', SourceIndent) + Wrapping.Wrap($"{own.Certainty.Replace('-', ' ')}: {own.Source}", streams.Width, SourceIndent, SourceIndent));
        }
    }

    // The first number of a unit: the modulus, and the strength or yield.
    private static string Short(MaterialAnswer material, string ending, string unit)
    {
        MaterialNumber own = material.Numbers.First(number => number.Field.EndsWith(ending, StringComparison.Ordinal));
        string range = own.Low < own.High ? $" ({Digits(own.Low)} to {Digits(own.High)})" : "";
        return $"{own.Field[..^ending.Length].Replace('_', ' ')} {Digits(own.Value)}{range} {unit}, {own.Certainty.Replace('-', ' ')}";
    }

    private static string Digits(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
