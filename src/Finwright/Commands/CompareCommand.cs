using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>Holds two fins side by side: what was changed, what follows, what was measured.</summary>
internal sealed class CompareCommand : StoreCommand
{
    private readonly Argument<string> _first = Inputs.Needed("A", "A design on the shelf (its latest revision), NAME@NUMBER, build:NAME, or a design file (*.fin.json).");
    private readonly Argument<string> _second = Inputs.Needed("B", "Another one.");
    private readonly Option<bool> _quick = Inputs.Switch("--quick", "Shape and bench only: at once. Else everything, a minute or two for what was not worked out before.");
    private readonly Option<string?> _svg = Inputs.Text("--svg", "file", "Draw both over each other into this file.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --svg: replace the file if it exists.");

    public CompareCommand()
        : base(
            "compare",
            "Hold two fins side by side: which inputs differ, which results follow, which verdicts turned; for two builds also what was measured, and which assumption was off.",
            "finwright compare my-fin.fin.json my-other.fin.json --quick",
            changes: false) => AddAll(_first, _second, _quick, _svg, _overwrite);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string? svg = arguments.GetValue(_svg);
        if (svg is not null)
            NewFile.Refuse(svg, "compared.svg", arguments.GetValue(_overwrite));
        else if (arguments.GetValue(_overwrite))
            throw new WrongInputException("--overwrite only matters with --svg.", "Name the file to draw into with --svg, or leave --overwrite out.");
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        ComparedInput input = new(store, assessor, arguments.GetValue(_quick), progress, cancellation);
        ComparedSide first = input.Side(arguments.GetRequiredValue(_first)), second = input.Side(arguments.GetRequiredValue(_second));
        progress.Clear();
        cancellation.ThrowIfCancellationRequested();
        if (svg is not null)
            Draw(svg, first, second);
        CompareSummary summary = CompareSummary.Of(store, first, second, ProgramVersion.Text);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(summary));
        else
            SideBySideText.Write(streams, summary, svg);
        return ExitCode.Good;
    }

    private static void Draw(string svg, ComparedSide first, ComparedSide second)
    {
        if (first.Blade is not { } one || second.Blade is not { } other)
            throw new WrongInputException($"{(first.Blade is null ? first : second).Label} cannot be drawn.", "\"finwright check\" says what is wrong with a design.");
        NewFile.Write(svg, stream => stream.Write(OutlinePairFigure.Draw(first.Label, one, second.Label, other).ToSvg()));
    }
}
