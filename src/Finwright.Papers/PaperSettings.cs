namespace Finwright.Papers;

/// <summary>Language of papers.</summary>
public enum PaperLanguage
{
    /// <summary>English.</summary>
    English,

    /// <summary>German.</summary>
    German,
}

/// <summary>Units of papers.</summary>
public enum PaperUnits
{
    /// <summary>Millimetres, newtons, °C.</summary>
    Metric,

    /// <summary>Inches, pounds, °F. What is weighed on kitchen scales or drawn up in syringes stays in grams and millilitres.</summary>
    Inch,
}

/// <summary>What stands between whole number and decimals.</summary>
public enum DecimalMark
{
    /// <summary>As the language has it.</summary>
    OfLanguage,

    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}

/// <summary>How papers are made.</summary>
public sealed record PaperSettings
{
    /// <summary>Paper.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>Language.</summary>
    public PaperLanguage Language { get; init; } = PaperLanguage.English;

    /// <summary>Units.</summary>
    public PaperUnits Units { get; init; } = PaperUnits.Metric;

    /// <summary>Decimal mark.</summary>
    public DecimalMark Decimals { get; init; } = DecimalMark.OfLanguage;

    /// <summary>What the 100 mm rulers of an earlier print measured: the printer's scale is put right by it.</summary>
    public RulerReading Rulers { get; init; } = RulerReading.True;

    /// <summary>Date that stands on the papers.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Version of the program.</summary>
    public required string ProgramVersion { get; init; }
}

/// <summary>What the two 100 mm rulers measured on paper.</summary>
/// <param name="Across">The ruler across the page, metres.</param>
/// <param name="Down">The ruler down the page, metres.</param>
public sealed record RulerReading(double Across, double Down)
{
    /// <summary>Length that a ruler is meant to have, metres.</summary>
    public const double Meant = 0.1;

    /// <summary>Least and greatest reading that is taken for a printer's scale, metres; farther off, the pages were fitted to the paper.</summary>
    public const double Least = 0.09, Greatest = 0.11;

    /// <summary>A printer that prints to scale.</summary>
    public static RulerReading True { get; } = new(Meant, Meant);
}
