using Finwright.Page.Words;
using Finwright.Papers.Words;
using Finwright.Workshop.Comparing;

namespace Finwright.Page.Compare;

/// <summary>Results as the reader reads them: words in their language, numbers in their units.</summary>
internal static class ResultText
{
    // How names of results end that belong to a load case.
    private static readonly string[] Cases = [" when getting going", " at cruise", " at top speed", " in a gust or landing", " when grounding"];

    /// <summary>A result: word, number, or both.</summary>
    public static string Of(ResultLine? line, Reader reader) => line is null ? "–"
        : line.Value is not double value ? line.Word is null ? "–" : reader[line.Word]
        : line.Word is null ? Number(line, value, reader) : $"{reader[line.Word]}, {Number(line, value, reader)}";

    /// <summary>A range; empty when none is known.</summary>
    public static string Range(ResultLine? line, Reader reader) => line is { Low: double low, High: double high } && line.Bare(low) != line.Bare(high)
        ? reader["{0} to {1}", Bare(line, low, reader), Bare(line, high, reader)]
        : "";

    /// <summary>A difference with its sign.</summary>
    public static string Change(ComparedRow row, Reader reader)
    {
        if (row.Change is not double change)
            return "";
        UnitScale scale = FieldUnits.Of(row.Line.Unit, reader.Choice.Units) with { Zero = 0 };
        string number = reader.Tongue.Number(Math.Abs(scale.Factor * change), row.Line.Decimals + scale.MoreDecimals);
        return $"{(change > 0 ? "+" : Tongue.Minus)}{number}{After(scale.Unit, reader)}";
    }

    /// <summary>Name of a result.</summary>
    public static string Name(string name, Reader reader)
    {
        string whole = reader[name];
        if (!ReferenceEquals(whole, name))
            return whole;
        string? when = Array.Find(Cases, own => name.EndsWith(own, StringComparison.Ordinal));
        return when is null ? name : $"{reader[name[..^when.Length]]} {reader[when.Trim()]}";
    }

    private static string Number(ResultLine line, double value, Reader reader)
    {
        UnitScale scale = FieldUnits.Of(line.Unit, reader.Choice.Units);
        return reader.Tongue.Number(FieldUnits.Shown(value, scale), line.Decimals + scale.MoreDecimals) + After(scale.Unit, reader);
    }

    private static string Bare(ResultLine line, double value, Reader reader)
    {
        UnitScale scale = FieldUnits.Of(line.Unit, reader.Choice.Units);
        return reader.Tongue.Number(FieldUnits.Shown(value, scale), line.Decimals + scale.MoreDecimals);
    }

    private static string After(string unit, Reader reader) => unit is "" or "°" ? unit : " " + reader[unit];
}
