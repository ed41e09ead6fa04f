using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>How the parts are poured.</summary>
internal sealed class PourCommand() : MakingCommand("pour", "Plan the pour: how much resin each part takes, in which cups, how to hold it, where air stays, where ports should go, and whether it fills in time.", "finwright pour my-fin.fin.json", AssessmentDepth.Pour)
{
    protected override bool IsWorkedOut(MakingResult result) => result.Poured is not null;

    protected override IReadOnlyList<Verdict> Verdicts(MakingResult result) => result.PourVerdicts;

    protected override void WriteJson(TextStreams streams, MakingResult result) => streams.Out.Write(AnswerJson.Write(PourSummary.Of(result, ProgramVersion.Text)));

    protected override void WriteText(TextStreams streams, MakingResult result) => PourText.Write(streams, PourSummary.Of(result, ProgramVersion.Text), result.PourVerdicts);
}
