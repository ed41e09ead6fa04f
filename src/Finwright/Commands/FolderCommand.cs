using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>A command that works a fin out in full and writes files into a folder, all of them or none.</summary>
internal abstract class FolderCommand : ProgramCommand
{
    private readonly PackFolder _kind;
    private readonly string _exampleFolder;
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<string> _out;
    private readonly Option<bool> _overwrite;
    private readonly PaperInputs _paper = new();
    private readonly Option<bool> _json = Inputs.Json();

    /// <summary>Declares the command.</summary>
    /// <param name="name">The word that calls it.</param>
    /// <param name="description">What it does.</param>
    /// <param name="kind">What its folders hold.</param>
    /// <param name="earlier">What an earlier call left, in words.</param>
    /// <param name="exampleFolder">A name for the folder.</param>
    protected FolderCommand(string name, string description, PackFolder kind, string earlier, string exampleFolder)
        : base(name, description, $"finwright {name} my-fin.fin.json --out {exampleFolder}")
    {
        (_kind, _exampleFolder) = (kind, exampleFolder);
        _out = new("--out")
        {
            Description = $"Folder to write into; made when missing. A folder that holds other files than {earlier} is refused.",
            HelpName = "folder",
            Required = true,
        };
        _overwrite = Inputs.Switch("--overwrite", "Allow a folder that holds other files. They are kept, except where a new file has the same name.");
        Add(_file);
        Add(_out);
        Add(_overwrite);
        _paper.AddTo(this);
        Add(_json);
    }

    /// <inheritdoc/>
    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file), folder = arguments.GetRequiredValue(_out);
        bool overwrite = arguments.GetValue(_overwrite);
        PaperSettings settings = _paper.Of(arguments);
        if (string.IsNullOrWhiteSpace(folder))
            throw new WrongInputException("--out names no folder.", $"Give it a name, for example --out {_exampleFolder}.");
        try
        {
            _kind.Check(folder, overwrite);
            using Assessor assessor = OpenAssessor();
            using ProgressLine progress = new(streams);
            AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Everything, progress, cancellation);
            FolderAnswer answer = Answer(result, file, settings, cancellation);
            if (!result.HasErrors)
                _kind.Write(folder, answer.Files, overwrite, cancellation);
            progress.Clear();
            if (arguments.GetValue(_json))
            {
                streams.Out.Write(answer.Json);
            }
            else if (result.HasErrors)
            {
                FindingText.Write(streams.Error, result.Findings, file, streams.Width);
                streams.Error.WriteLine();
                streams.Error.WriteLine($"finwright: {FindingText.Count(result.Findings)}; nothing was written.");
            }
            else
            {
                answer.Say(streams);
                SummaryText.WriteFiles(streams, answer.Files, folder);
            }

            return DesignFile.ExitCodeOf(result);
        }
        catch (PackFolderException refusal)
        {
            throw new WrongInputException(refusal.Message, refusal.Remedy);
        }
    }

    /// <summary>Makes the files and sums up.</summary>
    /// <param name="result">The fin; without files when it has errors.</param>
    /// <param name="file">The design file, as the person named it.</param>
    /// <param name="settings">How papers are made.</param>
    /// <param name="cancellation">Stops the work.</param>
    protected abstract FolderAnswer Answer(AssessmentResult result, string file, PaperSettings settings, CancellationToken cancellation);

    /// <summary>What came of it.</summary>
    /// <param name="Files">The files; none when the fin has errors.</param>
    /// <param name="Json">The answer for programs.</param>
    /// <param name="Say">Writes the answer for people.</param>
    protected sealed record FolderAnswer(IReadOnlyList<PackFile> Files, string Json, Action<TextStreams> Say);
}
