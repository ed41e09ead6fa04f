using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>How the parts are printed.</summary>
internal sealed class PrintCommand() : MakingCommand("print", "Plan the print of each part, layer by layer: time, plastic, filament and its cost, where to stop for each nut, which way to lie on the bed, and what to take care of.", "finwright print my-fin.fin.json", AssessmentDepth.Print)
{
    protected override bool IsWorkedOut(MakingResult result) => result.Printed is not null;

    protected override IReadOnlyList<Verdict> Verdicts(MakingResult result) => result.PrintVerdicts;

    protected override void WriteJson(TextStreams streams, MakingResult result) => streams.Out.Write(AnswerJson.Write(PrintSummary.Of(result, ProgramVersion.Text)));

    protected override void WriteText(TextStreams streams, MakingResult result) => PrintText.Write(streams, PrintSummary.Of(result, ProgramVersion.Text), result.PrintVerdicts);
}
