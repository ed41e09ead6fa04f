using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Making.Motion;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>How the parts are poured.</summary>
internal sealed class PourCommand : MakingCommand
{
    private readonly Option<string?> _motion = Inputs.Text("--motion", "file", "The motion file of one plate: the pores of its parts are taken from what it really lays. With a mesh, the part is the plate.");
    private readonly Option<int?> _plate = Inputs.Whole("--plate", "With --motion: which plate it prints; left out: the one whose size comes nearest.", 1, 1000);
    private readonly Option<double?> _filament = MotionInput.FilamentOption();
    private readonly Option<bool> _volumetric = MotionInput.VolumetricOption();

    // Read before the work, which takes longer; a command runs once.
    private MotionReading? _reading;

    public PourCommand()
        : base("pour", "Plan the pour: how much resin each part takes, in which cups, how to hold it, where air stays, where ports should go, and whether it fills in time.", "finwright pour my-fin.fin.json", AssessmentDepth.Pour)
    {
        foreach (Option option in (Option[])[_motion, _plate, _filament, _volumetric])
            Add(option);
    }

    protected override void Check(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        if (arguments.GetValue(_motion) is not string file)
        {
            if (arguments.GetValue(_plate) is not null || arguments.GetValue(_filament) is not null || arguments.GetValue(_volumetric))
                throw new WrongInputException("--plate, --filament-mm and --volumetric only matter with --motion.", "Name the motion file with --motion, or leave them out.");
            return;
        }

        _reading = MotionInput.Read(file, MotionInput.Options(MotionInput.Filament(arguments, _filament), arguments.GetValue(_volumetric), acceleration: null, stopLine: null), cancellation);
        if (_reading.Summary is not null)
            return;
        FindingText.Write(streams.Error, _reading.Findings, file, streams.Width);
        streams.Error.WriteLine();
        throw new WrongInputException($"{FindingText.Count(_reading.Findings)} in the motion file; nothing was worked out.", $"Correct {Path.GetFileName(file)} as said above, or leave --motion out.");
    }

    protected override MakingResult Refine(MakingResult result, ParseResult arguments)
    {
        if (_reading?.Summary is not { } motion || result is not { Printed: { } printed, Poured: not null })
            return result;
        MotionOfPlate plate = MotionOfPlate.Find(motion, printed, arguments.GetValue(_plate))
            ?? throw new WrongInputException($"There is no plate {arguments.GetValue(_plate)}; there {(printed.Plates.Count == 1 ? "is one" : $"are {printed.Plates.Count}")}.", "Name one of the plates, or leave --plate out.");
        return PouredByMotion.Of(result, plate, Path.GetFileName(arguments.GetValue(_motion)!));
    }

    protected override bool IsWorkedOut(MakingResult result) => result.Poured is not null;

    protected override IReadOnlyList<Verdict> Verdicts(MakingResult result) => result.PourVerdicts;

    protected override void WriteJson(TextStreams streams, MakingResult result) => streams.Out.Write(AnswerJson.Write(PourSummary.Of(result, ProgramVersion.Text)));

    protected override void WriteText(TextStreams streams, MakingResult result) => PourText.Write(streams, PourSummary.Of(result, ProgramVersion.Text), result.PourVerdicts);
}
