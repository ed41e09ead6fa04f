using System.CommandLine;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Keeps an outing, with its track.</summary>
internal sealed class OutingAddCommand : OutingChange
{
    // No receiver for sailors is older; one that has not heard the date yet tells an earlier one.
    private const int EarliestYear = 2000;

    private readonly Argument<string?> _track = new("TRACK") { Description = "The track (GPX); left out when there is none.", HelpName = "TRACK", Arity = ArgumentArity.ZeroOrOne };
    private readonly OutingInputs _inputs = new();

    public OutingAddCommand()
        : base("add", "Keep a time on the water: with which fin, in what wind, how it felt, and its track. More can be said later with \"outing change\".", "finwright outing add my-afternoon.gpx --build \"Fairway grey\" --wind-knots 18-22 --sail-m2 5.8 --grip 4") =>
        AddAll([_track, .. _inputs.All]);

    protected override (string Did, Outing About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        DateOnly? day = _inputs.Date(arguments);
        if (arguments.GetValue(_track) is not string file)
        {
            if (day is null)
                throw new WrongInputException("Neither a track nor a day is given.", "Name the track, or the day with --date.");
            Outing without = store.Outings.Add(_inputs.Into(new() { SailedOn = day.Value }, arguments, store), null);
            return ($"Kept outing {without.Id} of {ShelfText.Day(without.SailedOn)}, without a track.", without);
        }

        (Track track, KeptTrack kept, TrackReading reading) = TrackInput.ReadToKeep(file, cancellation);
        TrackMeasures measures = TrackMeasures.Of(track);
        if (day is null && measures.Day.Year < EarliestYear)
            throw new WrongInputException($"\"{file}\" says that it was recorded on {ShelfText.Day(measures.Day)}: the receiver did not know the date.", "Give the day with --date.");
        Outing outing = store.Outings.Add(_inputs.Into(new() { SailedOn = measures.Day }, arguments, store), kept);
        int remarks = reading.Findings.Concat(measures.Findings).Count(finding => finding.Severity != Severity.Note);
        string more = remarks == 0 ? "" : $" There {(remarks == 1 ? "is a caution" : $"are {remarks} cautions")}: see finwright outing show {outing.Id}.";
        string other = outing.SailedOn == measures.Day ? "" : $" The track is of {ShelfText.Day(measures.Day)}; the day you gave was kept.";
        return ($"Kept outing {outing.Id} of {ShelfText.Day(outing.SailedOn)}: {TrackSentence.Of(measures)}{other}{more}", outing);
    }
}
