using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Commands.Bench;

/// <summary>Says what a fin should do on the bench, under a known weight.</summary>
internal sealed class BenchCommand : ProgramCommand
{
    private const double LeastPercent = 5;

    private readonly Argument<string?> _file = new("FILE") { Description = "The design file.", HelpName = "FILE", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<double?> _mass = Inputs.Number("--mass-kg", "kg", "Mass of the weight; else the design's own (prove.mass_kg).");
    private readonly Option<double?> _at = Inputs.Number("--at-mm", "mm", "Where it hangs, from the hull plane; else the design's own (prove.at_span_percent).");
    private readonly Option<ChordPlace?> _chord = Inputs.OneOf<ChordPlace>("--at-chord", "Where it hangs along the chord; else the design's own (prove.at_chord).");
    private readonly Option<RootHold?> _root = Inputs.OneOf<RootHold>("--root", "How the root is held; else the design's own (base.root_hold).");
    private readonly Option<bool> _json = Inputs.Json();

    public BenchCommand()
        : base(
            "bench",
            "Hang a known weight on the fin: how far it should bend and twist, within what range, and how far it is from the first crack. \"bench fit\" learns from what you measured; \"bench add\" keeps it with a build, and \"bench learn\" takes it into the predictions of further builds.",
            "finwright bench my-fin.fin.json --mass-kg 15 --at-mm 90")
    {
        Add(_file);
        foreach (Option option in (Option[])[_mass, _at, _chord, _root, _json])
            Add(option);
        foreach (ProgramCommand below in (ProgramCommand[])[new BenchFitCommand(), new BenchAddCommand(), new BenchListCommand(), new BenchLearnCommand(), new BenchDeleteCommand(), new BenchRestoreCommand()])
            Add(below);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetValue(_file) ?? throw new WrongInputException("The design file is not named.", "See finwright bench --help.");
        DesignReading reading = DesignFile.Read(file);
        using Assessor assessor = OpenAssessor();
        if (reading is { HasErrors: false, Design: { } design })
        {
            design = design with
            {
                Base = design.Base with { RootHold = arguments.GetValue(_root) ?? design.Base.RootHold },
                Prove = design.Prove with { MassKg = arguments.GetValue(_mass) ?? design.Prove.MassKg, AtChord = arguments.GetValue(_chord) ?? design.Prove.AtChord },
            };
            if (arguments.GetValue(_at) is double at && assessor.Assess(reading, AssessmentDepth.Shape, cancellation: cancellation).Blade is { } blade)
                design = design with { Prove = design.Prove with { AtSpanPercent = PercentOf(at, 1e3 * blade.Span) } };
            RefuseMass(design.Prove.MassKg);
            reading = reading with { Design = design };
        }

        AssessmentResult result = assessor.Assess(reading, AssessmentDepth.Bench, cancellation: cancellation);
        BenchSummary summary = BenchSummary.Of(result, ProgramVersion.Text);
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.WriteTabular(summary));
        }
        else if (summary.DeflectionMm is not null)
        {
            BenchText.Write(streams, summary);
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        }
        else
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            streams.Error.WriteLine("finwright: " + Wrapping.Wrap(summary.Problem ?? $"{FindingText.Count(result.Findings)}; nothing could be worked out.", streams.Width, 11, 11));
        }

        ExitCode code = DesignFile.ExitCodeOf(result);
        return code == ExitCode.Good && summary.DeflectionMm is null ? ExitCode.Fails : code;
    }

    private static double PercentOf(double at, double span)
    {
        double percent = 100 * at / span;
        return percent is >= LeastPercent and <= 100
            ? percent
            : throw new WrongInputException($"--at-mm {at} lies outside the blade: weights hang from {LeastPercent / 100 * span:0.#} to {span:0.#} mm below the hull.", "Give a distance within the blade.");
    }

    private static void RefuseMass(double mass)
    {
        if (!(mass is >= 0.2 and <= 80))
            throw new WrongInputException($"--mass-kg {mass} is outside 0.2 to 80 kg, where a bench test makes sense.", "Give a mass within that range.");
    }
}
