using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Packing;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Makes every file that is needed to print a fin.</summary>
internal sealed class PackCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<string> _out = new("--out")
    {
        Description = "Folder to write into; made when missing. A folder that holds other files than an earlier pack is refused.",
        HelpName = "folder",
        Required = true,
    };

    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "Allow a folder that holds other files. They are kept, except where a file of the pack has the same name.");
    private readonly PaperInputs _paper = new();
    private readonly Option<bool> _json = Inputs.Json();

    public PackCommand()
        : base(
            "pack",
            "Make the files: 3MF plates and STL parts to print, a STEP of the plain blade, the papers for the bench (build sheet, templates at true size, drawing), a picture, figures and numbers of what the fin does in the water and under its load, a summary with all numbers, and a page that says what each file is. Either all files are written or none.",
            "finwright pack my-fin.fin.json --out my-fin")
    {
        Add(_file);
        Add(_out);
        Add(_overwrite);
        _paper.AddTo(this);
        Add(_json);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file), folder = arguments.GetRequiredValue(_out);
        bool overwrite = arguments.GetValue(_overwrite), json = arguments.GetValue(_json);
        PaperSettings settings = _paper.Of(arguments);
        if (string.IsNullOrWhiteSpace(folder))
            throw new WrongInputException("--out names no folder.", "Give it a name, for example --out my-fin.");
        try
        {
            PackFolder.OfPacks.Check(folder, overwrite);
            using Assessor assessor = new(curves: CacheFolder.OpenCurves());
            using ProgressLine progress = new(streams);
            AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Everything, progress, cancellation);
            FinSummary summary = FinSummary.Of(result, ProgramVersion.Text);
            if (!result.HasErrors)
            {
                (summary, IReadOnlyList<PackFile> files) = PackContents.Of(result, summary, FinPapers.Of(result, settings, cancellation), ProgramVersion.Text, cancellation);
                PackFolder.OfPacks.Write(folder, files, overwrite, cancellation);
            }

            progress.Clear();
            if (json)
            {
                streams.Out.Write(AnswerJson.Write(summary));
            }
            else if (result.HasErrors)
            {
                FindingText.Write(streams.Error, result.Findings, file, streams.Width);
                streams.Error.WriteLine();
                streams.Error.WriteLine($"finwright: {FindingText.Count(result.Findings)}; nothing was written.");
            }
            else
            {
                SummaryText.Write(streams, summary, file, result.Findings);
                SummaryText.WriteFiles(streams, summary.Files, folder);
            }

            return DesignFile.ExitCodeOf(result);
        }
        catch (PackFolderException refusal)
        {
            throw new WrongInputException(refusal.Message, refusal.Remedy);
        }
    }
}
