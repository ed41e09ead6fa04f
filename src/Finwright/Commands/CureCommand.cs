using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>How warm the parts grow while they cure.</summary>
internal sealed class CureCommand() : MakingCommand("cure", "Let the resin cure on paper: how warm resin and walls grow, where and when, how long the part must stand in water, when it can be handled, with its range.", "finwright cure my-fin.fin.json", AssessmentDepth.Cure)
{
    protected override bool IsWorkedOut(MakingResult result) => result.Cured is not null;

    protected override IReadOnlyList<Verdict> Verdicts(MakingResult result) => result.CureVerdicts;

    protected override void WriteJson(TextStreams streams, MakingResult result) => streams.Out.Write(AnswerJson.Write(CureSummary.Of(result, ProgramVersion.Text)));

    protected override void WriteText(TextStreams streams, MakingResult result) => CureText.Write(streams, CureSummary.Of(result, ProgramVersion.Text), result.CureVerdicts);
}
