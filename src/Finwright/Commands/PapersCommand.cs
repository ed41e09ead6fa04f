using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Packing;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Makes the papers of a fin.</summary>
internal sealed class PapersCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<string> _out = new("--out")
    {
        Description = "Folder to write into; made when missing. A folder that holds other files than earlier papers is refused.",
        HelpName = "folder",
        Required = true,
    };

    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "Allow a folder that holds other files. They are kept, except where a paper has the same name.");
    private readonly PaperInputs _paper = new();
    private readonly Option<bool> _json = Inputs.Json();

    public PapersCommand()
        : base(
            "papers",
            "Make the papers for the bench alone: the build sheet, templates at true size (tiled PDF and SVG), and a drawing with dimensions. Print them at 100 % and measure the rulers first. Either all files are written or none.",
            "finwright papers my-fin.fin.json --out my-fin-papers")
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
        bool overwrite = arguments.GetValue(_overwrite);
        PaperSettings settings = _paper.Of(arguments);
        if (string.IsNullOrWhiteSpace(folder))
            throw new WrongInputException("--out names no folder.", "Give it a name, for example --out my-fin-papers.");
        try
        {
            PackFolder.OfPapers.Check(folder, overwrite);
            using Assessor assessor = new(curves: CacheFolder.OpenCurves());
            using ProgressLine progress = new(streams);
            AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Everything, progress, cancellation);
            PapersSummary summary = PapersSummary.Of(result, settings);
            if (!result.HasErrors)
            {
                IReadOnlyList<PackFile> papers = FinPapers.Of(result, settings, cancellation);
                (summary, IReadOnlyList<PackFile> files) = summary.With(papers);
                PackFolder.OfPapers.Write(folder, files, overwrite, cancellation);
            }

            progress.Clear();
            if (arguments.GetValue(_json))
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
                streams.Out.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
                FindingText.Write(streams.Out, result.Findings, file, streams.Width);
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
