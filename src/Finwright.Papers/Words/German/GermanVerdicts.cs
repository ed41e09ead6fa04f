using Finwright.Assessment.Verdicts;
using Finwright.Water.Sailing;

namespace Finwright.Papers.Words.German;

internal sealed class GermanVerdicts : VerdictWords
{
    // What keeps the flow from being worked out is the same for every check that needs it.
    private const string NoFlow = "no-flow", ChangeWithoutFlow = "Zuerst beheben, weshalb die Strömung nicht gerechnet wurde; die Befunde zum Entwurf nennen es.";

    // Symbols are the same in all languages.
    private static readonly HashSet<string> Symbols = new(StringComparer.Ordinal) { "", "°", "%", "mm", "in", "cm²", "in²", "m/s", "kn", "°C", "°F", "N·m", "lbf·in", "h" };

    private static readonly Dictionary<string, Saying> Sayings = ((Saying[])[.. WaterSayings.All, .. StrengthSayings.All, .. MakingSayings.All]).ToDictionary(saying => saying.Code, StringComparer.Ordinal);

    private readonly GermanNames _names = new();

    /// <summary>Every ground that is told apart.</summary>
    internal static IEnumerable<string> Grounds => Sayings.Values.SelectMany(saying => saying.Changes.Keys).Where(ground => ground.Length > 0).Append(NoFlow).Distinct(StringComparer.Ordinal);

    public override string State(VerdictState state) => state switch
    {
        VerdictState.Holds => "hält",
        VerdictState.Tight => "knapp",
        VerdictState.Fails => "hält nicht",
        VerdictState.NotKnown => "nicht bekannt",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };

    public override string InCase(LoadCaseKind kind) => kind switch
    {
        LoadCaseKind.GettingGoing => "beim Angleiten",
        LoadCaseKind.Cruise => "bei Reisegeschwindigkeit",
        LoadCaseKind.TopSpeed => "bei Höchstgeschwindigkeit",
        LoadCaseKind.Overload => "in einer Bö oder bei der Landung",
        LoadCaseKind.Grounding => "bei Grundberührung",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown load case."),
    };

    public override string Checked(Verdict verdict)
    {
        string what = Of(verdict).Checked;
        if (verdict.Case is { } load)
            what += " " + InCase(load);
        return verdict.Part.Length > 0 ? $"{what}: {_names.Part(verdict.Part)}" : what;
    }

    public override string Why(Verdict verdict) => Of(verdict).Why;

    public override string Change(Verdict verdict)
    {
        Saying saying = Of(verdict);
        return verdict.Change.Length == 0 ? "" : verdict.Ground == NoFlow ? ChangeWithoutFlow : saying.ChangeOf(verdict);
    }

    public override string Unit(string unit) => unit switch
    {
        "% of the pores" => "% der Poren",
        "% of places in the pattern" => "% der Stellen im Muster",
        "% of the core" => "% des Kerns",
        "% of the chord" => "% der Sehne",
        "% of the drop to boiling" => "% des Druckabfalls bis zum Sieden",
        "of a cup's working time" => "der Verarbeitungszeit eines Bechers",
        "of stall" => "der Abrissgrenze",
        "root chords" => "Wurzelsehnen",
        "K for 5 %" => "K je 5 %",
        "°F for 5 %" => "°F je 5 %",
        _ when Symbols.Contains(unit) => unit,
        _ => throw new ArgumentException($"\"{unit}\" is not a unit of verdicts.", nameof(unit)),
    };

    public override string Caution(string caution) => GermanCautions.All.TryGetValue(caution, out string? german)
        ? german
        : throw new ArgumentException($"There is no German caution for \"{caution}\"", nameof(caution));

    private static Saying Of(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return Sayings.TryGetValue($"{verdict.Code}/{verdict.Ground}", out Saying? saying) || Sayings.TryGetValue(verdict.Code, out saying)
            ? saying
            : throw new ArgumentException($"There are no German words for the verdict \"{verdict.Code}\" with the ground \"{verdict.Ground}\".", nameof(verdict));
    }
}
