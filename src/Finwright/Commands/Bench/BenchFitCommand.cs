using System.CommandLine;
using System.Text;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Terminal;

namespace Finwright.Commands.Bench;

/// <summary>Learns from the bench how stiff walls and core really are.</summary>
internal sealed class BenchFitCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Argument<string> _readings = Inputs.Needed("READINGS", "The file of readings (CSV; docs/bench-readings.md says how it is written).");
    private readonly Option<RootHold?> _root = Inputs.OneOf<RootHold>("--root", "How the root was held on the bench; else the design's own (base.root_hold).");
    private readonly Option<string?> _save = Inputs.Text("--save", "file", "Write a copy of the design that holds the factors, for example my-fin-measured.fin.json.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --save: replace the file if it exists.");
    private readonly Option<bool> _json = Inputs.Json();

    public BenchFitCommand()
        : base(
            "fit",
            "Learn from readings of the bench how stiff walls and core really are: a factor for each, with its range, what the readings cannot tell apart, and which of them look wrong.",
            "finwright bench fit my-fin.fin.json my-fin.readings.csv")
    {
        Add(_file);
        Add(_readings);
        foreach (Option option in (Option[])[_root, _save, _overwrite, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file), readings = arguments.GetRequiredValue(_readings);
        string? save = arguments.GetValue(_save);
        if (save is not null)
            NewFile.Refuse(save, "my-fin-measured.fin.json", arguments.GetValue(_overwrite));
        else if (arguments.GetValue(_overwrite))
            throw new WrongInputException("--overwrite only matters with --save.", "Name the file to write with --save, or leave --overwrite out.");
        DesignReading reading = DesignFile.Read(file);
        IReadOnlyList<BenchReadingLine> lines = ReadingsFile.Read(readings, "worked out", streams);
        DesignReading asHeld = arguments.GetValue(_root) is RootHold root && reading is { HasErrors: false, Design: { } own }
            ? reading with { Design = own with { Base = own.Base with { RootHold = root } } }
            : reading;
        using Assessor assessor = OpenAssessor();
        AssessmentResult result = assessor.Assess(asHeld, AssessmentDepth.Structure, cancellation: cancellation);
        if (result.Blade is { } blade)
            ReadingsFile.Refuse([.. lines.SelectMany(line => line.Beyond(blade.Span))], readings, "worked out", streams);
        cancellation.ThrowIfCancellationRequested();
        BenchFitSummary summary = BenchFitSummary.Of(result, lines, ProgramVersion.Text);
        if (save is not null && summary.Factors.Count > 0)
        {
            Save(summary, save, file, reading, result, streams);
            summary = summary with { SavedAs = save };
        }

        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.WriteTabular(summary));
        }
        else if (summary.Factors.Count > 0)
        {
            BenchFitText.Write(streams, summary);
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        }
        else
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            streams.Error.WriteLine("finwright: " + Wrapping.Wrap(summary.Problem ?? $"{FindingText.Count(result.Findings)}; nothing could be worked out.", streams.Width, 11, 11));
        }

        ExitCode code = DesignFile.ExitCodeOf(result);
        return code == ExitCode.Good && summary.Factors.Count == 0 ? ExitCode.Fails : code;
    }

    private static void Save(BenchFitSummary summary, string save, string file, DesignReading reading, AssessmentResult result, TextStreams streams)
    {
        // Files that a design names lie beside it; a copy elsewhere takes their content along. The hold of the bench is not the hold in the board.
        bool beside = string.Equals(FolderOf(save), FolderOf(file), StringComparison.Ordinal);
        FinDesign source = beside ? reading.Design! : result.Design! with { Base = reading.Design!.Base };
        FinDesign learned = summary.Into(source);
        IReadOnlyList<Finding> wrong = [.. DesignValidation.Check(learned).Where(finding => finding.IsError)];
        if (wrong.Count > 0)
        {
            FindingText.Write(streams.Error, wrong, save, streams.Width);
            streams.Error.WriteLine();
            throw new WrongInputException("The design was not saved, because these factors cannot be right.", "Look for a reading with a wrong sign, unit or place.");
        }

        NewFile.Write(save, stream => stream.Write(Encoding.UTF8.GetBytes(DesignWriter.Write(learned, compact: true))));
    }

    private static string? FolderOf(string file) => Path.GetDirectoryName(Path.GetFullPath(file));
}
