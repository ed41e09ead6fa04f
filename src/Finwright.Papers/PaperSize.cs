using System.Globalization;

namespace Finwright.Papers;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">Its name, for example "A4".</param>
/// <param name="Width">Shorter side, metres.</param>
/// <param name="Height">Longer side, metres.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    // A5; on less, tables and tiles fall apart.
    private const double LeastWidth = 0.148, LeastHeight = 0.210;

    // Rolls of plotters are up to 1118 mm wide (44 inches); a sheet longer than this is a mistake.
    private const double GreatestSide = 1.2;

    /// <summary>A4: 210 x 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("A4", 0.210, 0.297);

    /// <summary>A3: 297 x 420 mm (ISO 216).</summary>
    public static PaperSize A3 { get; } = new("A3", 0.297, 0.420);

    /// <summary>Letter: 8.5 x 11 inches (ANSI/ASME Y14.1).</summary>
    public static PaperSize Letter { get; } = new("Letter", 0.2159, 0.2794);

    /// <summary>Sizes with a name.</summary>
    public static IReadOnlyList<PaperSize> Named { get; } = [A4, A3, Letter];

    /// <summary>Whether papers can be laid out on it: at least 148 x 210 mm (A5), at most 1200 mm.</summary>
    public bool IsUsable => Width >= LeastWidth && Height >= LeastHeight && Height <= GreatestSide;

    /// <summary>Reads a name, or two sides in millimetres such as "210x297".</summary>
    /// <param name="text">The text; case does not matter.</param>
    /// <returns>The paper, which need not be usable; null when the text is neither.</returns>
    public static PaperSize? Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        if (Named.FirstOrDefault(size => string.Equals(size.Name, trimmed, StringComparison.OrdinalIgnoreCase)) is { } named)
            return named;
        string[] sides = trimmed.Split('x', 'X');
        if (sides.Length != 2 || !Side(sides[0], out double a) || !Side(sides[1], out double b))
            return null;
        (double width, double height) = (Math.Min(a, b), Math.Max(a, b));
        return new(string.Create(CultureInfo.InvariantCulture, $"{width:0.##} x {height:0.##} mm"), width / 1e3, height / 1e3);
    }

    private static bool Side(string text, out double millimetres) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out millimetres) && double.IsFinite(millimetres) && millimetres > 0;
}
