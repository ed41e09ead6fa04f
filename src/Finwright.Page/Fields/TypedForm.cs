using System.Globalization;
using Finwright.Page.Words;
using Finwright.Papers.Words;

namespace Finwright.Page.Fields;

/// <summary>A form as it is typed: the text of each field, and what is wrong with it. What was typed stays, however wrong.</summary>
/// <param name="reader">The reader's words and units.</param>
public sealed class TypedForm(Reader reader)
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _wrong = new(StringComparer.Ordinal);

    /// <summary>The text of a field; another text is not judged yet.</summary>
    /// <param name="field">The field.</param>
    public string this[string field]
    {
        get => _texts.GetValueOrDefault(field, "");
        set
        {
            _texts[field] = value ?? "";
            _wrong.Remove(field);
        }
    }

    /// <summary>Whether nothing is wrong with what was read so far.</summary>
    public bool IsSound => _wrong.Count == 0;

    /// <summary>What is wrong with a field; null when nothing is known to be.</summary>
    public string? WrongAt(string field) => _wrong.GetValueOrDefault(field);

    /// <summary>Says what is wrong with a field.</summary>
    public void Refuse(string field, string what) => _wrong[field] = what;

    /// <summary>Forgets what was said against the fields, before they are read anew.</summary>
    public void Judge() => _wrong.Clear();

    /// <summary>Puts a number into a field.</summary>
    /// <param name="field">The field.</param>
    /// <param name="value">The number; null leaves the field empty.</param>
    /// <param name="unit">Its unit in files and store; shown as the reader wants it.</param>
    public void Put(string field, double? value, string unit = "")
    {
        string text = value is double own ? FieldUnits.Shown(own, Scale(unit)).ToString("0.######", CultureInfo.InvariantCulture) : "";
        this[field] = HasComma ? text.Replace('.', ',') : text;
    }

    /// <summary>Puts a day into a field.</summary>
    public void Put(string field, DateOnly? day) => this[field] = day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    /// <summary>A number.</summary>
    /// <param name="field">The field.</param>
    /// <param name="low">Least, in <paramref name="unit"/>.</param>
    /// <param name="high">Greatest, in <paramref name="unit"/>.</param>
    /// <param name="unit">Its unit in files and store.</param>
    /// <param name="isNeeded">Whether it must be there.</param>
    /// <returns>The number in <paramref name="unit"/>; null when it is left out or wrong.</returns>
    public double? Number(string field, double low, double high, string unit = "", bool isNeeded = false)
    {
        string text = this[field].Trim();
        if (text.Length == 0)
        {
            if (isNeeded)
                Refuse(field, reader["Needed."]);
            return null;
        }

        string plain = text.Replace(',', '.').Replace(Tongue.Minus, '-');
        if (!double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double shown) || !double.IsFinite(shown))
        {
            Refuse(field, reader["\"{0}\" is not a number. Write it as 12.5 or 12,5.", text.Length > 20 ? text[..20] + "…" : text]);
            return null;
        }

        UnitScale scale = Scale(unit);
        double value = FieldUnits.Kept(shown, scale);
        // What the reader sees of the bounds is rounded; a number at the bound is within.
        double slack = 1e-6 * Math.Max(Math.Abs(low), Math.Abs(high));
        if (value < low - slack || value > high + slack)
        {
            Refuse(field, reader["{0} is outside {1} to {2}.", text, Bare(low, scale), (Bare(high, scale) + " " + reader[scale.Unit]).TrimEnd()]);
            return null;
        }

        return value;
    }

    /// <summary>A whole number.</summary>
    /// <inheritdoc cref="Number"/>
    public int? Whole(string field, int low, int high)
    {
        double? number = Number(field, low, high);
        if (number is double own && own != Math.Floor(own))
        {
            Refuse(field, reader["Only whole numbers count here."]);
            return null;
        }

        return (int?)number;
    }

    /// <summary>A day.</summary>
    /// <param name="field">The field.</param>
    /// <param name="latest">The last that can be; null for any.</param>
    /// <param name="isNeeded">Whether it must be there.</param>
    /// <param name="kept">A day that was kept before: it stands, even when it lies in the future.</param>
    public DateOnly? Day(string field, DateOnly? latest = null, bool isNeeded = false, DateOnly? kept = null)
    {
        string text = this[field].Trim();
        if (text.Length == 0)
        {
            if (isNeeded)
                Refuse(field, reader["Needed."]);
            return null;
        }

        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            Refuse(field, reader["Write the day as 2026-05-17."]);
            return null;
        }

        if (day > latest && day != kept)
        {
            Refuse(field, reader["This day lies in the future."]);
            return null;
        }

        return day;
    }

    /// <summary>A text.</summary>
    /// <param name="field">The field.</param>
    /// <param name="most">Most characters.</param>
    /// <param name="isNeeded">Whether it must be there.</param>
    public string Text(string field, int most, bool isNeeded = false)
    {
        string text = this[field].Trim();
        if (text.Length == 0 && isNeeded)
            Refuse(field, reader["Needed."]);
        if (text.Length > most)
            Refuse(field, reader["{0} characters; {1} are the most.", text.Length, most]);
        return text;
    }

    /// <summary>A number of something in the store, as a choice gives it.</summary>
    public long? Chosen(string field) => long.TryParse(this[field], NumberStyles.None, CultureInfo.InvariantCulture, out long number) ? number : null;

    private bool HasComma => reader.Tongue.Number(0.5, 1).Contains(',', StringComparison.Ordinal);

    private UnitScale Scale(string unit) => FieldUnits.Of(unit, reader.Choice.Units);

    private string Bare(double value, UnitScale scale) => reader.Tongue.Number(FieldUnits.Shown(value, scale), Math.Abs(value) < 10 && value != Math.Floor(value) ? 2 : 0);
}
