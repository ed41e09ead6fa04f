using System.Globalization;

namespace Finwright.Terminal;

/// <summary>How things of the workshop look as text.</summary>
internal static class ShelfText
{
    /// <summary>A moment as the day that it was here.</summary>
    public static string Day(DateTimeOffset moment) => moment.ToLocalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A day.</summary>
    public static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    /// <summary>The first line of a text.</summary>
    public static string FirstLine(string text)
    {
        int end = text.AsSpan().IndexOfAny('\n', '\r');
        return end < 0 ? text : text[..end] + " ...";
    }

    /// <summary>Texts one after another, those that say nothing left out.</summary>
    public static string Joined(params IEnumerable<string> texts) => string.Join(" · ", texts.Where(text => text.Length > 0));

    /// <summary>A name as it is typed on the command line.</summary>
    public static string Typed(string name) => name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name;

    /// <summary>A number with its unit; empty when there is none.</summary>
    public static string Number(double? value, string format, string unit) =>
        value is double number ? $"{number.ToString(format, CultureInfo.InvariantCulture)} {unit}".TrimEnd() : "";
}
