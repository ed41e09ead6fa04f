using Finwright.Assessment.Verdicts;
using Finwright.Water.Sailing;

namespace Finwright.Papers.Words.English;

internal sealed class EnglishVerdicts : VerdictWords
{
    public override string State(VerdictState state) => StateWords.Word(state);

    public override string InCase(LoadCaseKind kind) => CaseWords.When(kind);

    public override string Checked(Verdict verdict) => verdict.Checked;

    public override string Why(Verdict verdict) => verdict.Why;

    public override string Change(Verdict verdict) => verdict.Change;

    public override string Unit(string unit) => unit;

    public override string Caution(string caution) => caution;
}
