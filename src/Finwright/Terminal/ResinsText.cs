using System.Globalization;
using System.Text.Json;
using Finwright.Assessment.Packing;
using Finwright.Making.Resins;

namespace Finwright.Terminal;

/// <summary>Resins as plain text.</summary>
internal static class ResinsText
{
    private const int FieldColumns = 34, SourceIndent = 6;

    /// <summary>Writes all resins in short.</summary>
    public static void WriteAll(TextStreams streams, IReadOnlyList<ResinSystem> resins)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap("Kinds of resin to start from. The maker's data sheet of the very resin in hand goes before them, and a cup test before both: finwright resins fit.", streams.Width));
        foreach (ResinSystem resin in resins)
        {
            o.WriteLine();
            o.WriteLine($"  {resin.Name,-22}{resin.Title}");
            o.WriteLine(new string(' ', 24) + Wrapping.Wrap(resin.Remark, streams.Width, 24, 24));
        }

        o.WriteLine();
        o.WriteLine(Wrapping.Wrap("\"finwright resins NAME\" shows every number with its source; --copy writes a resin to a file that you can change.", streams.Width));
    }

    /// <summary>Writes one resin with the source of each number.</summary>
    public static void WriteOne(TextStreams streams, ResinSystem resin)
    {
        TextWriter o = streams.Out;
        o.WriteLine($"{resin.Title}: {resin.Name}");
        o.WriteLine(Wrapping.Wrap(resin.Remark, streams.Width));
        foreach ((string field, ResinNumber number) in resin.Numbers)
        {
            o.WriteLine();
            o.WriteLine($"  {field,-FieldColumns}{Digits(number.Range.Value),10}   {(number.Range.Low < number.Range.High ? $"{Digits(number.Range.Low)} to {Digits(number.Range.High)}" : "")}".TrimEnd());
            o.WriteLine(new string(' ', SourceIndent) + Wrapping.Wrap($"{JsonNamingPolicy.KebabCaseLower.ConvertName(number.Certainty.ToString()).Replace('-', ' ')}: {number.Source}", streams.Width, SourceIndent, SourceIndent));
        }
    }

    private static string Digits(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
