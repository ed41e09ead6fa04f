using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Finwright.Tests.EndToEnd;

/// <summary>The numbers of a pack that a person looks at first, as short lines of text that can be reviewed.</summary>
/// <remarks>
/// A line reads <c>name = number unit ~ tolerance</c>, or <c>name = word</c>. Tolerances are relative and judgement. Geometry, 1e-4: exact but for the flat facets. Water and strength,
/// 0.5 %: a change of that size in a method should be looked at, while its own uncertainty is several per cent and another processor's rounding is far below. Print and pour, 0.5 %, as
/// they add up cells and layers. Reserves, bench and peak, 1 %, as they hang on single places of largest stress or heat.
/// </remarks>
internal static class KeyNumbers
{
    private const double Geometry = 1e-4, Method = 0.005, Place = 0.01;

    /// <summary>The lines of a fin.</summary>
    public static string Of(PackedFin fin)
    {
        StringBuilder text = new();
        JsonElement planform = fin.Summary.GetProperty("planform");
        Number("area", planform.Number("area_cm2"), "cm2", Geometry);
        Number("aspect ratio", planform.Number("aspect_ratio"), "", Geometry);
        Number("volume of the parts", fin.Summary.Number("parts_volume_cm3"), "cm3", Geometry);
        Word("parts", fin.Summary.GetProperty("parts").GetArrayLength());
        Word("plates", fin.Summary.GetProperty("plates").GetInt32());
        JsonElement cruise = fin.Water.Items("load_cases").Named("case", "cruise");
        Number("side force at cruise", cruise.Number("side_force_n"), "N", Method);
        Number("leeway at cruise", cruise.Number("leeway_degrees"), "deg", Method);
        Number("drag at cruise", cruise.GetProperty("drag").Number("total_n"), "N", Method);
        Number("side force left at cruise before stall", cruise.Number("reserve_n"), "N", Place);
        JsonElement loaded = fin.Strength.Items("load_cases").Named("case", "cruise"), tip = loaded.Items("along").Last();
        Number("deflection of the tip at cruise", tip.Number("mid_chord_mm"), "mm", Method);
        Number("twist of the tip at cruise", tip.Number("twist_degrees"), "deg", Place);
        foreach (JsonElement own in fin.Strength.Items("load_cases").Where(own => own.Reserves().Any()))
            Number($"load may grow, {own.GetProperty("case").GetString()}", own.Reserves().Min(), "times", Place);
        Number("print time", fin.Print.Items("plates").Sum(plate => plate.GetProperty("hours").Number("value")), "h", Method);
        Number("plastic", fin.Print.Items("plates").Sum(plate => plate.Number("plastic_grams")), "g", Method);
        Number("resin to mix", fin.Pour.GetProperty("total").GetProperty("total_ml").Number("value"), "ml", Method);
        foreach (JsonElement part in fin.Cure.Items("parts"))
            Number($"peak of the {part.GetProperty("name").GetString()}", part.GetProperty("nominal").Number("peak_resin_celsius"), "C", Place);
        Number("weight on the bench", fin.Bench.Number("massKg"), "kg", Geometry);
        Number("deflection of the tip on the bench", fin.Bench.GetProperty("deflectionMm").GetProperty("tip").Number("midChord"), "mm", Place);
        Number("weight may grow on the bench", fin.Bench.GetProperty("prediction").Number("firstCrackReserve"), "times", Place);
        foreach (JsonElement answer in (JsonElement[])[fin.Water, fin.Strength, fin.Print, fin.Pour, fin.Cure])
            foreach (JsonElement verdict in answer.Items("verdicts").OrderBy(verdict => verdict.GetProperty("code").GetString(), StringComparer.Ordinal).ThenBy(verdict => verdict.GetProperty("checked").GetString(), StringComparer.Ordinal))
                text.Append(CultureInfo.InvariantCulture, $"verdict {verdict.GetProperty("code").GetString()}, {verdict.GetProperty("checked").GetString()} = {verdict.GetProperty("state").GetString()}\n");
        return text.ToString();

        void Number(string name, double value, string unit, double tolerance) => text.Append(CultureInfo.InvariantCulture, $"{name} = {value:G6}{(unit.Length > 0 ? " " : "")}{unit} ~ {tolerance}\n");

        void Word(string name, int value) => text.Append(CultureInfo.InvariantCulture, $"{name} = {value}\n");
    }

    /// <summary>What differs between two texts, line by line, beyond the tolerance that the expected line names; empty when nothing does.</summary>
    public static IReadOnlyList<string> Differences(string expected, string actual)
    {
        string[] wanted = Lines(expected), have = Lines(actual);
        List<string> differences = [.. wanted.Select(NameOf).Except(have.Select(NameOf), StringComparer.Ordinal).Select(name => $"missing: {name}"), .. have.Select(NameOf).Except(wanted.Select(NameOf), StringComparer.Ordinal).Select(name => $"new: {name}")];
        if (differences.Count == 0 && wanted.Length != have.Length)
            differences.Add($"{wanted.Length} lines expected, {have.Length} found");
        return differences.Count > 0 ? differences : [.. wanted.Zip(have).Where(pair => !AreClose(pair.First, pair.Second)).Select(pair => $"expected {pair.First}; found {pair.Second}")];
    }

    private static bool AreClose(string expected, string actual)
    {
        string[] parts = expected.Split(" ~ ");
        if (parts.Length < 2)
            return string.Equals(expected, actual, StringComparison.Ordinal);
        (double wanted, string unit) = Value(expected);
        (double have, string haveUnit) = Value(actual);
        return NameOf(expected) == NameOf(actual) && unit == haveUnit && Math.Abs(have - wanted) <= double.Parse(parts[1], CultureInfo.InvariantCulture) * Math.Abs(wanted);
    }

    private static (double Value, string Unit) Value(string line)
    {
        string[] words = line.Split(" ~ ")[0].Split(" = ")[1].Split(' ');
        return (double.Parse(words[0], CultureInfo.InvariantCulture), words.Length > 1 ? words[1] : "");
    }

    private static string NameOf(string line) => line.Split(" = ")[0];

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>Short ways into an answer.</summary>
internal static class AnswerElements
{
    public static double Number(this JsonElement element, string name) => element.GetProperty(name).GetDouble();

    public static IEnumerable<JsonElement> Items(this JsonElement element, string name) => element.GetProperty(name).EnumerateArray();

    public static JsonElement Named(this IEnumerable<JsonElement> items, string property, string value) => items.Single(item => item.GetProperty(property).GetString() == value);

    /// <summary>By how much the load of a case may grow, place by place.</summary>
    public static IEnumerable<double> Reserves(this JsonElement loaded) =>
        loaded.Items("stresses").Select(stress => stress.GetProperty("reserve")).Where(reserve => reserve.ValueKind == JsonValueKind.Number).Select(reserve => reserve.GetDouble());
}
