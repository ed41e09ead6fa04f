using System.CommandLine;
using System.Globalization;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>What can be said of an outing: options that adding and changing share.</summary>
internal sealed class OutingInputs
{
    private const double MostWind = 100;

    private readonly Option<string?> _build = Inputs.Text("--build", "name", "The build that was sailed.");
    private readonly Option<DateOnly?> _date = Inputs.Day("--date", "The day; else that of the track.");
    private readonly Option<string?> _place = Inputs.Text("--place", "text", "Where.");
    private readonly Option<WindBand?> _wind = Wind();
    private readonly Option<string?> _sail = Inputs.Text("--sail", "text", "The sail, in your words.");
    private readonly Option<double?> _sailArea = Inputs.Number("--sail-m2", "m²", "Area of the sail, as printed on it; only runs with the same sail are compared.");
    private readonly Option<string?> _board = Inputs.Text("--board", "text", "The board, in your words.");
    private readonly Option<string?> _rider = Inputs.Text("--rider", "name", "Who sailed.");
    private readonly Option<int?> _grip = Inputs.Whole("--grip", "How it gripped, 1 (poor) to 5 (good).", 1, 5);
    private readonly Option<int?> _spinOuts = Inputs.Whole("--spin-outs", "How often it let go.", 0, 1000);
    private readonly Option<int?> _speed = Inputs.Whole("--speed", "How fast it felt, 1 to 5.", 1, 5);
    private readonly Option<int?> _feel = Inputs.Whole("--feel", "How it felt, 1 to 5.", 1, 5);
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Anything else worth remembering.");

    /// <summary>The options.</summary>
    public Symbol[] All => [_build, _date, _place, _wind, _sail, _sailArea, _board, _rider, _grip, _spinOuts, _speed, _feel, _note];

    /// <summary>The day that was given.</summary>
    public DateOnly? Date(ParseResult arguments) => arguments.GetValue(_date);

    /// <summary>Whether anything was given.</summary>
    public bool SaysSomething(ParseResult arguments) => All.Any(symbol => arguments.GetResult((Option)symbol) is not null);

    /// <summary>An outing with what was given put in; what was not given stays.</summary>
    public Outing Into(Outing outing, ParseResult arguments, WorkshopStore store) => outing with
    {
        BuildId = arguments.GetValue(_build) is string build ? store.Builds.Get(build).Id : outing.BuildId,
        SailedOn = arguments.GetValue(_date) ?? outing.SailedOn,
        Place = arguments.GetValue(_place) ?? outing.Place,
        WindLowKnots = arguments.GetValue(_wind)?.LowKnots ?? outing.WindLowKnots,
        WindHighKnots = arguments.GetValue(_wind)?.HighKnots ?? outing.WindHighKnots,
        Sail = arguments.GetValue(_sail) ?? outing.Sail,
        SailM2 = Inputs.Within(arguments, _sailArea, 0.5, 20) ?? outing.SailM2,
        Board = arguments.GetValue(_board) ?? outing.Board,
        Rider = arguments.GetValue(_rider) ?? outing.Rider,
        Grip = arguments.GetValue(_grip) ?? outing.Grip,
        SpinOuts = arguments.GetValue(_spinOuts) ?? outing.SpinOuts,
        Speed = arguments.GetValue(_speed) ?? outing.Speed,
        Feel = arguments.GetValue(_feel) ?? outing.Feel,
        Note = arguments.GetValue(_note) ?? outing.Note,
    };

    private static Option<WindBand?> Wind()
    {
        const string Name = "--wind-knots";
        return new(Name)
        {
            Description = "The wind from lulls to gusts, such as 18-22; one number for a steady wind.",
            HelpName = "band",
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                string[] ends = text.Replace(',', '.').Split('-');
                if (ends.Length is 1 or 2 && Knots(ends[0]) is double low && Knots(ends[^1]) is double high && low <= high)
                    return new(low, high);
                result.AddError($"{Name} takes a band such as 18-22, from 0 to {MostWind:0} knots with the lower end first, not \"{Inputs.Shorten(text)}\".");
                return null;
            },
        };
    }

    private static double? Knots(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out double knots) && knots is >= 0 and <= MostWind ? knots : null;

    /// <summary>Wind from lulls to gusts.</summary>
    private sealed record WindBand(double LowKnots, double HighKnots);
}
