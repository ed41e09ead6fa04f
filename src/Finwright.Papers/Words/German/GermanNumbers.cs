using System.Globalization;

namespace Finwright.Papers.Words.German;

internal sealed class GermanNumbers : NumberWords
{
    private static readonly string[] Months = ["Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober", "November", "Dezember"];

    public override bool HasDecimalComma => true;

    public override string Days => "Tage";

    public override string Range(string low, string high) => $"{low} bis {high}";

    public override string Limit(string limit, bool mustStayAbove) => mustStayAbove ? $"Grenze mindestens {limit}" : $"Grenze {limit}";

    public override string Both(string first, string second) => $"{first} und {second}";

    public override string Day(DateOnly day) => string.Create(CultureInfo.InvariantCulture, $"{day.Day}. {Months[day.Month - 1]} {day.Year}");
}
