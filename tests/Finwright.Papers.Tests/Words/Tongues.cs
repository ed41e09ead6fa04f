using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Words;

/// <summary>Tongues of readers.</summary>
internal static class Tongues
{
    public static Tongue English { get; } = Of(PaperLanguage.English, PaperUnits.Metric);

    public static Tongue German { get; } = Of(PaperLanguage.German, PaperUnits.Metric);

    public static Tongue EnglishInch { get; } = Of(PaperLanguage.English, PaperUnits.Inch);

    public static Tongue GermanInch { get; } = Of(PaperLanguage.German, PaperUnits.Inch);

    public static Tongue Of(PaperLanguage language, PaperUnits units, DecimalMark decimals = DecimalMark.OfLanguage) =>
        new(new() { Language = language, Units = units, Decimals = decimals, Date = new(2026, 11, 27), ProgramVersion = "1.0" });
}
