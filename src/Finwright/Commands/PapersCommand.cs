using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Makes the papers of a fin.</summary>
internal sealed class PapersCommand() : FolderCommand(
    "papers",
    "Make the papers for the bench alone: the build sheet, templates at true size (tiled PDF and SVG), and a drawing with dimensions. Print them at 100 % and measure the rulers first. Either all files are written or none.",
    PackFolder.OfPapers,
    "earlier papers",
    "my-fin-papers")
{
    protected override FolderAnswer Answer(AssessmentResult result, string file, PaperSettings settings, CancellationToken cancellation)
    {
        PapersSummary summary = PapersSummary.Of(result, settings);
        IReadOnlyList<PackFile> files = [];
        if (!result.HasErrors)
            (summary, files) = summary.With(FinPapers.Of(result, settings, cancellation));
        return new(files, AnswerJson.Write(summary), streams =>
        {
            streams.Out.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        });
    }
}
