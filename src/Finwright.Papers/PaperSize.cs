namespace Finwright.Papers;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">Its name, for example "A4".</param>
/// <param name="Width">Shorter side, metres.</param>
/// <param name="Height">Longer side, metres.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>A4: 210 x 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("A4", 0.210, 0.297);

    /// <summary>Letter: 8.5 x 11 inches (ANSI/ASME Y14.1).</summary>
    public static PaperSize Letter { get; } = new("Letter", 0.2159, 0.2794);
}
