using System.Globalization;
using System.Text.RegularExpressions;
using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Words;

/// <summary>Names of parts, ports, attitudes and bought things. What a person has named, like a cavity or a mesh file, keeps its name.</summary>
public abstract partial class NameWords
{
    /// <summary>A part, for example "blade 1 of 2".</summary>
    public abstract string Part(string name);

    /// <summary>A port, for example "blade 1 front".</summary>
    public abstract string Port(string name);

    /// <summary>How a part is held, for example "trailing edge up, root tilted down 30°".</summary>
    public abstract string Attitude(string name);

    /// <summary>Something that is put in at a stop, for example "front box bolt: nut pocket".</summary>
    public abstract string Feature(string name);

    /// <summary>What to buy or cut, without length and count.</summary>
    /// <param name="item">The thing.</param>
    /// <param name="tongue">Shows the sizes within the name.</param>
    public abstract string Size(HardwareItem item, Tongue tongue);

    /// <summary>A resin: one that comes along, or what the design calls its resin.</summary>
    public abstract string Resin(string name);

    /// <summary>Where it goes.</summary>
    public abstract string Place(HardwareItem item);

    /// <summary>Shows the sizes within a text as the reader wants them.</summary>
    /// <remarks>What is sold by the millimetre is bought by it, so inches stand behind and not instead. Metric nuts have no inches.</remarks>
    /// <param name="text">The text, its sizes in millimetres with a decimal point.</param>
    /// <param name="kind">What it speaks of.</param>
    /// <param name="tongue">The reader's.</param>
    private protected static string Measured(string text, HardwareKind kind, Tongue tongue)
    {
        bool inchesToo = tongue.Units is PaperUnits.Inch && kind is not HardwareKind.Nut;
        string marked = DecimalNumber().Replace(text, match => tongue.Marked(match.Value));
        return inchesToo ? Millimetres().Replace(marked, match => WithInches(match, tongue)) : marked;
    }

    private static string WithInches(Match match, Tongue tongue)
    {
        string number = match.Groups["number"].Value;
        double metres = 1e-3 * double.Parse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        int decimals = number.AsSpan().IndexOfAny(',', '.') is var mark and >= 0 ? number.Length - mark - 1 : 0;
        // A drill or a rod is told to a tenth of a millimetre though its name is a whole number.
        return $"{match.Value} ({tongue.Length(metres, Math.Max(1, decimals))})";
    }

    [GeneratedRegex(@"\d+\.\d+", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex DecimalNumber();

    [GeneratedRegex(@"(?<number>\d+([.,]\d+)?) mm", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Millimetres();
}
