using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Learns a resin from a cup of it, or from what its data sheet says.</summary>
internal sealed class ResinsFitCommand : ProgramCommand
{
    private const double Kelvin = 273.15, Minute = 60;

    private readonly Argument<string?> _cup = new("CUP") { Description = "Readings of a cup of mixed resin (CSV; docs/resins.md says how it is written); left out: the data sheet's words below.", HelpName = "CUP", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _from = Inputs.Text("--from", "name or file", $"A resin of the same kind to start from; left out: {ResinInput.Usual}.");
    private readonly Option<double?> _potLife = Inputs.Number("--pot-life-minutes", "min", "Working time that the data sheet states, 1 to 3000.");
    private readonly Option<double?> _potMass = Inputs.Number("--pot-life-grams", "g", "For a cup of this mass, 1 to 20000; left out: 100.");
    private readonly Option<double?> _potTemperature = Inputs.Number("--pot-life-celsius", "°C", "Started at this temperature, -5 to 60; left out: 25.");
    private readonly Option<double?> _gel = Inputs.Number("--gel-minutes", "min", "Gel time of a thin layer that the data sheet states, 1 to 20000.");
    private readonly Option<double?> _gelTemperature = Inputs.Number("--gel-celsius", "°C", "At this temperature, -5 to 100; left out: 25.");
    private readonly Option<double?> _peak = Inputs.Number("--peak-celsius", "°C", "Highest temperature of the cup that the data sheet states, 25 to 300.");
    private readonly Option<string?> _name = Inputs.Text("--name", "name", "Name of the resin in small letters, digits and hyphens; left out: my-resin.");
    private readonly Option<string?> _save = Inputs.Text("--save", "file", $"Write the resin that was found to a file; ends in {ResinFile.Ending}.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --save: replace the file if it exists.");
    private readonly Option<bool> _json = Inputs.Json();

    public ResinsFitCommand()
        : base(
            "fit",
            "Learn how your resin cures from a cup of it with a thermometer, or from what its data sheet says: its rate, with its range, and what cannot be told.",
            "finwright resins fit my-cup.csv --save my-resin.resin.json")
    {
        Add(_cup);
        foreach (Option option in (Option[])[_from, _potLife, _potMass, _potTemperature, _gel, _gelTemperature, _peak, _name, _save, _overwrite, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string? cup = arguments.GetValue(_cup), save = arguments.GetValue(_save), name = arguments.GetValue(_name);
        if (save is not null)
            ResinsCommand.Refuse(save, arguments.GetValue(_overwrite));
        else if (arguments.GetValue(_overwrite))
            throw new WrongInputException("--overwrite only matters with --save.", "Name the file to write with --save, or leave --overwrite out.");
        if (name is not null && (name.Length is 0 or > 40 || !name.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' or '-')))
            throw new WrongInputException($"\"{name}\" cannot be a resin's name: it goes into commands and design files.", "Use small letters, digits and hyphens only, at most 40.");
        SheetStatements sheet = Sheet(arguments);
        bool hasSheet = sheet.PotLives.Count + sheet.GelTimes.Count > 0 || sheet.CupPeak is not null;
        if (cup is null && !hasSheet)
            throw new WrongInputException("There is nothing to learn from.", "Give the readings of a cup, or what the data sheet says, for example --pot-life-minutes 40.");
        if (cup is not null && hasSheet)
            throw new WrongInputException("Readings of a cup and words of a data sheet are given together.", "Give one of them; a cup of your own goes before the data sheet.");

        ResinSystem before = ResinInput.Find(arguments.GetValue(_from), streams);
        ResinFitAnswer answer = cup is not null
            ? ResinFitAnswer.Of(before, CupFit.Solve(before, Readings(cup, streams), cancellation), ProgramVersion.Text)
            : ResinFitAnswer.Of(before, SheetFit.Solve(before, sheet, cancellation), ProgramVersion.Text);
        cancellation.ThrowIfCancellationRequested();
        if (save is not null && answer.Found is { } found)
        {
            ResinSystem named = found with
            {
                Name = name ?? "my-resin",
                Title = $"{found.Title}, fitted to {(cup is not null ? "a cup of it" : "its data sheet")}",
                Remark = answer.Sentence,
            };
            NewFile.Write(save, stream => ResinFile.Write(stream, named));
            answer = answer with { SavedAs = save };
        }

        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.Write(answer));
        else
            ResinFitText.Write(streams, answer);
        return answer.Found is null ? ExitCode.Fails : ExitCode.Good;
    }

    private SheetStatements Sheet(ParseResult arguments)
    {
        double? potLife = Inputs.Within(arguments, _potLife, 1, 3000), gel = Inputs.Within(arguments, _gel, 1, 20_000);
        double potMass = Inputs.Within(arguments, _potMass, 1, 20_000) ?? 100, potAt = Inputs.Within(arguments, _potTemperature, -5, 60) ?? 25, gelAt = Inputs.Within(arguments, _gelTemperature, -5, 100) ?? 25;
        if (potLife is null && (arguments.GetValue(_potMass) is not null || arguments.GetValue(_potTemperature) is not null))
            throw new WrongInputException("--pot-life-grams and --pot-life-celsius only matter with --pot-life-minutes.", "Give the working time too.");
        if (gel is null && arguments.GetValue(_gelTemperature) is not null)
            throw new WrongInputException("--gel-celsius only matters with --gel-minutes.", "Give the gel time too.");
        return new()
        {
            PotLives = potLife is double life ? [new(life * Minute, potMass / 1e3, potAt + Kelvin)] : [],
            GelTimes = gel is double time ? [new(time * Minute, gelAt + Kelvin)] : [],
            CupPeak = Inputs.Within(arguments, _peak, 25, 300) is double peak ? peak + Kelvin : null,
        };
    }

    private static CupTest Readings(string file, TextStreams streams)
    {
        CupTestReading reading = CupTestFile.Read(InputFile.Bytes(file, "file of readings", "Check the path; docs/resins.md shows how readings are written."));
        if (reading.Findings.Count > 0)
        {
            FindingText.Write(streams.Error, reading.Findings, file, streams.Width);
            streams.Error.WriteLine();
        }

        return reading.Test ?? throw new WrongInputException($"{FindingText.Count(reading.Findings)} in the readings; nothing was worked out.", $"Correct {Path.GetFileName(file)} as said above.");
    }
}
