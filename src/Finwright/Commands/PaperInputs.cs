using System.CommandLine;
using System.Text.Json.Serialization;
using Finwright.Papers;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>How papers are to be made: options that several commands share.</summary>
internal sealed class PaperInputs
{
    private readonly Option<string?> _paper = Inputs.Text("--paper", "size", "Paper: a4 (the default), letter, a3, or two sides in millimetres such as 210x297.");
    private readonly Option<Language?> _language = Inputs.OneOf<Language>("--language", "Language of the papers, en by default.");
    private readonly Option<Units?> _units = Inputs.OneOf<Units>("--units", "Units of the papers, mm by default. Kitchen scales and syringes stay in grams and millilitres.");
    private readonly Option<Mark?> _decimal = Inputs.OneOf<Mark>("--decimal", "Decimal mark of the papers; by default that of the language.");
    private readonly Option<double?> _across = Inputs.Number("--ruler-across-mm", "mm", "What the 100 mm ruler across an earlier print of the templates measured; the papers are put right by it.");
    private readonly Option<double?> _down = Inputs.Number("--ruler-down-mm", "mm", "The same for the ruler down the page.");
    private readonly Option<DateOnly?> _date = Inputs.Day("--date", "Date on the papers; today by default. The same design with the same date gives the same files.");

    private enum Language
    {
        [JsonStringEnumMemberName("en")]
        English,

        [JsonStringEnumMemberName("de")]
        German,
    }

    private enum Units
    {
        [JsonStringEnumMemberName("mm")]
        Metric,

        [JsonStringEnumMemberName("inch")]
        Inch,
    }

    private enum Mark
    {
        Point,
        Comma,
    }

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_paper, _language, _units, _decimal, _across, _down, _date])
            command.Add(option);
    }

    /// <summary>The settings.</summary>
    /// <exception cref="WrongInputException">One of them is not usable.</exception>
    public PaperSettings Of(ParseResult arguments) => new()
    {
        Paper = Paper(arguments.GetValue(_paper)),
        Language = arguments.GetValue(_language) is Language.German ? PaperLanguage.German : PaperLanguage.English,
        Units = arguments.GetValue(_units) is Units.Inch ? PaperUnits.Inch : PaperUnits.Metric,
        Decimals = arguments.GetValue(_decimal) switch { Mark.Point => DecimalMark.Point, Mark.Comma => DecimalMark.Comma, _ => DecimalMark.OfLanguage },
        Rulers = new(Ruler(arguments, _across), Ruler(arguments, _down)),
        Date = arguments.GetValue(_date) ?? DateOnly.FromDateTime(DateTime.Now),
        ProgramVersion = ProgramVersion.Text,
    };

    private static double Ruler(ParseResult arguments, Option<double?> option) =>
        (Inputs.Within(arguments, option, 1e3 * RulerReading.Least, 1e3 * RulerReading.Greatest) ?? 1e3 * RulerReading.Meant) / 1e3;

    private static PaperSize Paper(string? text)
    {
        if (text is null)
            return PaperSize.A4;
        PaperSize paper = PaperSize.Find(text) ?? throw new WrongInputException($"--paper does not know \"{Inputs.Shorten(text)}\".", $"Give {string.Join(", ", PaperSize.Named.Select(size => size.Name.ToLowerInvariant()))}, or two sides in millimetres such as 210x297.");
        return paper.IsUsable ? paper : throw new WrongInputException($"Paper of {paper.Name} cannot hold the papers.", "Give paper from 148 x 210 mm (A5) to 1200 mm long.");
    }
}
