using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>One row of an answer, read by the names of its columns.</summary>
internal readonly struct Row(SqliteDataReader reader)
{
    /// <summary>A text; empty when there is none.</summary>
    public string Text(string column) => TextOrNull(column) ?? "";

    /// <summary>A text; null when there is none.</summary>
    public string? TextOrNull(string column) => At(column) is int at ? reader.GetString(at) : null;

    /// <summary>A whole number that is always there.</summary>
    public long Whole(string column) => reader.GetInt64(Needed(column));

    /// <summary>A whole number; null when there is none.</summary>
    public long? WholeOrNull(string column) => At(column) is int at ? reader.GetInt64(at) : null;

    /// <summary>A small whole number; null when there is none.</summary>
    public int? CountOrNull(string column) => At(column) is int at ? reader.GetInt32(at) : null;

    /// <summary>A number that is always there.</summary>
    public double Number(string column) => reader.GetDouble(Needed(column));

    /// <summary>A number; null when there is none.</summary>
    public double? NumberOrNull(string column) => At(column) is int at ? reader.GetDouble(at) : null;

    /// <summary>Bytes that are always there.</summary>
    public byte[] Bytes(string column) => reader.GetFieldValue<byte[]>(Needed(column));

    /// <summary>A moment that is always there.</summary>
    public DateTimeOffset Moment(string column) => StoredForm.Moment(reader.GetString(Needed(column)));

    /// <summary>A moment; null when there is none.</summary>
    public DateTimeOffset? MomentOrNull(string column) => At(column) is int at ? StoredForm.Moment(reader.GetString(at)) : null;

    /// <summary>A day; null when there is none.</summary>
    public DateOnly? DayOrNull(string column) => At(column) is int at ? StoredForm.Day(reader.GetString(at)) : null;

    /// <summary>A day that is always there.</summary>
    public DateOnly Day(string column) => StoredForm.Day(reader.GetString(Needed(column)));

    /// <summary>A word of an enumeration.</summary>
    public T Word<T>(string column)
        where T : struct, Enum => StoredForm.Word<T>(reader.GetString(Needed(column)));

    private int Needed(string column) => At(column) ?? throw new InvalidDataException($"{column} is not there.");

    private int? At(string column)
    {
        int at = reader.GetOrdinal(column);
        return reader.IsDBNull(at) ? null : at;
    }
}

/// <summary>How values that the database has no type for are written in it.</summary>
internal static class StoredForm
{
    private const string MomentFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'", DayFormat = "yyyy-MM-dd";

    /// <summary>The value as the database takes it.</summary>
    /// <exception cref="StoreException">It would not come back as it went in.</exception>
    public static object Of(object? value) => value switch
    {
        null => DBNull.Value,
        double number when !double.IsFinite(number) => throw new StoreException(StoreProblem.Wrong, $"{number} is not a number that can be kept.", "Give a finite number."),
        string text when text.Contains('\0', StringComparison.Ordinal) => throw new StoreException(StoreProblem.Wrong, "A text holds a character of code 0, behind which nothing could be read again.", "Leave that character out."),
        DateTimeOffset moment => moment.UtcDateTime.ToString(MomentFormat, CultureInfo.InvariantCulture),
        DateOnly day => day.ToString(DayFormat, CultureInfo.InvariantCulture),
        Enum word => System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(word.ToString()),
        _ => value,
    };

    /// <summary>A moment, in universal time.</summary>
    public static DateTimeOffset Moment(string text) =>
        DateTimeOffset.TryParseExact(text, MomentFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment) ? moment : throw Nonsense(text, "a moment");

    /// <summary>A day.</summary>
    public static DateOnly Day(string text) =>
        DateOnly.TryParseExact(text, DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : throw Nonsense(text, "a day");

    /// <summary>A word of an enumeration.</summary>
    public static T Word<T>(string text)
        where T : struct, Enum
    {
        foreach (T value in Enum.GetValues<T>())
        {
            if (string.Equals((string)Of(value), text, StringComparison.Ordinal))
                return value;
        }

        throw Nonsense(text, "a word that is known");
    }

    private static InvalidDataException Nonsense(string text, string what) => new($"\"{text}\" is not {what}.");
}
