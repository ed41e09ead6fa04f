using System.Globalization;

namespace Finwright.Papers.Words.English;

internal sealed class EnglishNumbers : NumberWords
{
    private static readonly string[] Months = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    public override bool HasDecimalComma => false;

    public override string Days => "days";

    public override string Range(string low, string high) => $"{low} to {high}";

    public override string Limit(string limit, bool mustStayAbove) => mustStayAbove ? $"limit at least {limit}" : $"limit {limit}";

    public override string Both(string first, string second) => $"{first} and {second}";

    public override string Day(DateOnly day) => string.Create(CultureInfo.InvariantCulture, $"{day.Day} {Months[day.Month - 1]} {day.Year}");
}
