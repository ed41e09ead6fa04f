using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Making.Motion;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reads a motion file back: what it prints, whether it stops where it must; writes a copy with the stops it lacks.</summary>
internal sealed class MotionCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The motion file (words after ISO 6983).");
    private readonly Option<string?> _design = Inputs.Text("--design", "file", "The design whose plate it prints: size, layers, plastic and stops are held against it.");
    private readonly Option<int?> _plate = Inputs.Whole("--plate", "With --design: which plate; left out: the one whose size comes nearest.", 1, 1000);
    private readonly Option<string?> _insert = Inputs.Text("--insert-stops", "file", "With --design: write a copy with the stops it lacks, proved to be the same otherwise.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --insert-stops: replace the file if it exists.");
    private readonly Option<string?> _line = Inputs.Text("--stop-line", "text", "The line with which your printer stops; left out: M0.");
    private readonly Option<double?> _filament = MotionInput.FilamentOption();
    private readonly Option<bool> _volumetric = MotionInput.VolumetricOption();
    private readonly Option<double?> _acceleration = Inputs.Number("--acceleration", "mm/s²", "Acceleration of the nozzle, 10 to 100000; left out: the design's own (print.machine), else 1000.");
    private readonly Option<bool> _json = Inputs.Json();

    public MotionCommand()
        : base(
            "motion",
            "Read a motion file back before you print it: layers, plastic, box, time, stops; hold it against the plate that it should print; write a copy with the stops it lacks.",
            "finwright motion my-plate-2.gcode --design my-fin.fin.json --insert-stops my-plate-2-stops.gcode")
    {
        Add(_file);
        foreach (Option option in (Option[])[_design, _plate, _insert, _overwrite, _line, _filament, _volumetric, _acceleration, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        string? designFile = arguments.GetValue(_design), copy = arguments.GetValue(_insert);
        Check(arguments, designFile, copy);
        using ProgressLine progress = new(streams);
        AssessmentResult? fin = null;
        if (designFile is not null)
        {
            using Assessor assessor = OpenAssessor();
            fin = assessor.Assess(DesignFile.Read(designFile), AssessmentDepth.Print, progress, cancellation);
            if (fin.Printed is null)
            {
                progress.Clear();
                FindingText.Write(streams.Error, fin.Findings, designFile, streams.Width);
                streams.Error.WriteLine();
                throw new WrongInputException($"{FindingText.Count(fin.Findings)} in the design; the motion file was not read.", "Correct the design as said above.");
            }
        }

        MotionOptions options = MotionInput.Options(MotionInput.Filament(arguments, _filament), arguments.GetValue(_volumetric), Acceleration(arguments, fin?.Design), arguments.GetValue(_line));
        MotionReading reading = MotionInput.Read(file, options, cancellation);
        List<Finding> findings = [.. reading.Findings];
        MotionOfPlate? plate = null;
        StopInsertion? insertion = null;
        if (reading.Summary is { } motion && fin?.Printed is { } printed)
        {
            plate = MotionOfPlate.Find(motion, printed, arguments.GetValue(_plate))
                ?? throw new WrongInputException($"The design has no plate {arguments.GetValue(_plate)}; it has {printed.Plates.Count}.", "Name one of its plates, or leave --plate out.");
            findings.AddRange(plate.Comparison.Findings);
            if (copy is not null)
            {
                insertion = Insert(file, copy, plate, arguments.GetValue(_line) ?? "M0", options, cancellation);
                findings.AddRange(insertion.Findings);
            }
        }

        progress.Clear();
        MotionAnswer answer = MotionAnswer.Of(reading.Summary, plate, insertion is null ? null : (insertion, copy!), findings, ProgramVersion.Text);
        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.Write(answer));
        else if (reading.Summary is not null)
            MotionText.Write(streams, answer);
        FindingText.Write(reading.Summary is null ? streams.Error : arguments.GetValue(_json) ? TextWriter.Null : streams.Out, findings, file, streams.Width);
        if (reading.Summary is null)
            return ExitCode.WrongInput;
        bool lacks = plate is not null && plate.Stops.Any(stop => stop.State != StopState.Present) && insertion?.Proof?.Holds is not true;
        return lacks || findings.Exists(finding => finding.IsError) ? ExitCode.Fails : ExitCode.Good;
    }

    private void Check(ParseResult arguments, string? design, string? copy)
    {
        if (design is null && copy is not null)
            throw new WrongInputException("--insert-stops needs the design that says where to stop.", "Name it with --design.");
        if (design is null && arguments.GetValue(_plate) is not null)
            throw new WrongInputException("--plate only matters with --design.", "Name the design with --design, or leave --plate out.");
        if (copy is not null)
            NewFile.Refuse(copy, "plate-2-stops.gcode", arguments.GetValue(_overwrite));
        else if (arguments.GetValue(_overwrite))
            throw new WrongInputException("--overwrite only matters with --insert-stops.", "Name the file to write with --insert-stops, or leave --overwrite out.");
    }

    private static StopInsertion Insert(string file, string copy, MotionOfPlate plate, string line, MotionOptions options, CancellationToken cancellation)
    {
        try
        {
            return MotionStops.Insert(file, copy, plate.Needed, line, options, cancellation);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new WrongInputException(problem.Message, "Choose a file in a folder that you may write to.");
        }
    }

    private double? Acceleration(ParseResult arguments, FinDesign? design) => arguments.GetValue(_acceleration) switch
    {
        double given when given is < 10 or > 100_000 => throw new WrongInputException($"--acceleration {given} is outside 10 to 100000 mm/s².", "Give the acceleration of your printer."),
        double given => given / 1e3,
        null => design?.Print.Machine.AccelerationMmPerS2 / 1e3,
    };
}
