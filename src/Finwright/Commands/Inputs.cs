using System.CommandLine;
using System.Globalization;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Options that refuse bad values with a sentence of our own.</summary>
internal static class Inputs
{
    /// <summary>A number; a comma is taken for a decimal point. Ranges are the design file's, and checked with it.</summary>
    public static Option<double?> Number(string name, string unit, string description) =>
        new(name)
        {
            Description = description,
            HelpName = unit,
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                // "1,234" could be meant as a thousand and something; in this trade it is a millimetre and a bit.
                if (double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
                    return value;
                result.AddError($"{name} takes a number, not \"{Shorten(text)}\".");
                return null;
            },
        };

    /// <summary>The number of an option, refused outside a range; null when it is not given.</summary>
    public static double? Within(ParseResult arguments, Option<double?> option, double least, double greatest) => arguments.GetValue(option) switch
    {
        null => null,
        double value when value >= least && value <= greatest => value,
        double value => throw new WrongInputException($"{option.Name} {value} is outside {least} to {greatest}.", "Give a number within that range."),
    };

    /// <summary>A whole number within a range.</summary>
    public static Option<int?> Whole(string name, string description, int minimum, int maximum) =>
        new(name)
        {
            Description = description,
            HelpName = "number",
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) && value >= minimum && value <= maximum)
                    return value;
                result.AddError($"{name} takes a whole number from {minimum} to {maximum}, not \"{Shorten(text)}\".");
                return null;
            },
        };

    /// <summary>One of the values of an enumeration.</summary>
    public static Option<T?> OneOf<T>(string name, string description)
        where T : struct, Enum =>
        new(name)
        {
            Description = $"{description} One of: {string.Join(", ", Choice.All<T>())}.",
            HelpName = "word",
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                if (Choice.Find<T>(text) is T value)
                    return value;
                result.AddError($"{name} takes one of {string.Join(", ", Choice.All<T>())}, not \"{Shorten(text)}\".");
                return null;
            },
        };

    /// <summary>A text.</summary>
    public static Option<string?> Text(string name, string word, string description) => new(name) { Description = description, HelpName = word };

    /// <summary>A day.</summary>
    public static Option<DateOnly?> Day(string name, string description) =>
        new(name)
        {
            Description = $"{description} Written as year, month and day, such as 2027-04-18.",
            HelpName = "date",
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                if (FindDay(text) is DateOnly day)
                    return day;
                result.AddError($"{name} takes a day such as 2027-04-18, not \"{Shorten(text)}\".");
                return null;
            },
        };

    /// <summary>A day as it is written; null when the text is none.</summary>
    public static DateOnly? FindDay(string text) =>
        DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day.Year >= 1970 ? day : null;

    /// <summary>Words separated by commas.</summary>
    public static IReadOnlyList<string> Words(string? text) => text is null ? [] : text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>A switch.</summary>
    public static Option<bool> Switch(string name, string description) => new(name) { Description = description, Arity = ArgumentArity.Zero };

    /// <summary>The <c>--json</c> switch that several commands share.</summary>
    public static Option<bool> Json() => Switch("--json", "Write the answer as JSON and nothing else to standard output.");

    /// <summary>A required argument.</summary>
    public static Argument<string> Needed(string name, string description) => new(name) { Description = description, HelpName = name };

    /// <summary>A text that fits a message.</summary>
    public static string Shorten(string text) => text.Length <= 40 ? text : string.Concat(text.AsSpan(0, 37), "...");
}
