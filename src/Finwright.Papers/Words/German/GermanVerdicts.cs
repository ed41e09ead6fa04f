using Finwright.Assessment.Verdicts;

namespace Finwright.Papers.Words.German;

internal sealed class GermanVerdicts : VerdictWords
{
    // Symbols are the same in all languages.
    private static readonly HashSet<string> Symbols = new(StringComparer.Ordinal) { "", "°", "%", "mm", "in", "cm²", "in²", "m/s", "kn", "°C", "°F", "N·m", "lbf·in", "h" };

    public override string State(VerdictState state) => state switch
    {
        VerdictState.Holds => "hält",
        VerdictState.Tight => "knapp",
        VerdictState.Fails => "hält nicht",
        VerdictState.NotKnown => "nicht bekannt",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };

    public override string Checked(Verdict verdict) => verdict.Checked;

    public override string Why(Verdict verdict) => verdict.Why;

    public override string Change(Verdict verdict) => verdict.Change;

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

    public override string Caution(string caution) => caution;
}
