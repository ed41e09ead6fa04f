using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Makes every file that is needed to print a fin.</summary>
internal sealed class PackCommand() : FolderCommand(
    "pack",
    "Make the files: 3MF plates and STL parts to print, a STEP of the plain blade, the papers for the bench (build sheet, templates at true size, drawing), a picture, figures and numbers of what the fin does in the water and under its load, a summary with all numbers, and a page that says what each file is. Either all files are written or none.",
    PackFolder.OfPacks,
    "an earlier pack",
    "my-fin")
{
    protected override FolderAnswer Answer(AssessmentResult result, string file, PaperSettings settings, CancellationToken cancellation)
    {
        FinSummary summary = FinSummary.Of(result, ProgramVersion.Text);
        IReadOnlyList<PackFile> files = [];
        if (!result.HasErrors)
            (summary, files) = PackContents.Of(result, summary, FinPapers.Of(result, settings, cancellation), ProgramVersion.Text, cancellation);
        return new(files, AnswerJson.Write(summary), streams => SummaryText.Write(streams, summary, file, result.Findings));
    }
}
