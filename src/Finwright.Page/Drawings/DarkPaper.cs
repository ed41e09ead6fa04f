using System.Text;
using System.Text.RegularExpressions;

namespace Finwright.Page.Drawings;

/// <summary>Drawings made for light paper, put onto dark paper.</summary>
internal static partial class DarkPaper
{
    // Tones lighter than this and with no more colour than this are paper with a little ink.
    private const int LightFrom = 150, MostColour = 40;

    // The inks of every drawing, light and dark.
    private static readonly (string Light, string Dark)[] Inks =
    [
        ("#fbfaf6", "#10181f"), ("#14273a", "#e8e6de"), ("#5b6b78", "#9fb0bb"), ("#d8d5cb", "#2c3942"), ("#1f6f8b", "#6fb7cf"), ("#946200", "#e0b04a"), ("#a3262a", "#f08a87"), ("#2f6b4f", "#7cc39d"),
    ];

    /// <summary>The same drawing on dark paper: inks by their list, light tones between them by as much ink as they hold.</summary>
    public static byte[] Of(byte[] svg) => Encoding.UTF8.GetBytes(Colour().Replace(Encoding.UTF8.GetString(svg), match =>
    {
        string colour = match.Value.ToLowerInvariant();
        foreach ((string light, string dark) in Inks)
        {
            if (colour == light)
                return dark;
        }

        byte[] tone = Convert.FromHexString(colour.AsSpan(1)), paper = Convert.FromHexString(Inks[0].Dark.AsSpan(1)), ink = Convert.FromHexString(Inks[1].Dark.AsSpan(1));
        // A tone of its own, such as a band of a scale, stays what it is.
        if (tone.Min() < LightFrom || tone.Max() - tone.Min() > MostColour)
            return colour;
        double share = 1 - tone.Average(part => part) / byte.MaxValue;
        return $"#{Convert.ToHexStringLower([.. paper.Zip(ink, (low, high) => (byte)Math.Round(low + share * (high - low)))])}";
    }));

    [GeneratedRegex("#[0-9a-fA-F]{6}\\b", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Colour();
}
