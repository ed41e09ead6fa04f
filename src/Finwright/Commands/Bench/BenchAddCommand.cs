using System.CommandLine;
using System.Globalization;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Terminal;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Keeps readings of the bench with a build.</summary>
internal sealed class BenchAddCommand : StoreCommand
{
    private const int LongestNote = 2000;

    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build that was measured.");
    private readonly Argument<string> _readings = Inputs.Needed("READINGS", "The file of readings (CSV; docs/bench-readings.md says how it is written).");
    private readonly Option<string?> _date = Inputs.Text("--date", "yyyy-mm-dd", "The day they were taken; today if left out.");
    private readonly Option<RootHold?> _root = Inputs.OneOf<RootHold>("--root", "How the root was held; else the design's own (base.root_hold).");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Your own words.");

    public BenchAddCommand()
        : base(
            "add",
            "Keep readings of the bench with the build that they were taken of.",
            "finwright bench add \"Sandbar one\" my-fin.readings.csv --root clamped",
            changes: true) => AddAll(_build, _readings, _date, _root, _note);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_readings), note = arguments.GetValue(_note) ?? "";
        if (note.Length > LongestNote)
            throw new WrongInputException($"The note has {note.Length} characters; {LongestNote} are the most.", "Shorten it.");
        Build build = ComparedInput.BuildOf(store, arguments.GetRequiredValue(_build));
        DateOnly day = Day(arguments.GetValue(_date));
        IReadOnlyList<BenchReadingLine> lines = ReadingsFile.Read(file, "kept", streams);
        using Assessor assessor = OpenAssessor();
        AssessmentResult shape = assessor.Assess(store.Shelf.Read(build.RevisionId), AssessmentDepth.Shape, cancellation: cancellation);
        if (shape is not { Design: { } design, Blade: { } blade })
            throw new WrongInputException($"The design of this build, {build.Revision}, cannot be drawn, so nobody knows where its tip is.", "\"finwright check\" says what is wrong with a design.");
        ReadingsFile.Refuse([.. lines.SelectMany(line => line.Beyond(blade.Span))], file, "kept", streams);
        cancellation.ThrowIfCancellationRequested();
        BenchSession session = store.Bench.Add(new(0, build.Id, day, arguments.GetValue(_root) ?? design.Base.RootHold, note, lines));
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(BenchSessionAnswer.Of(store, session)));
        else
            BenchSessionText.WriteKept(streams, BenchSessionAnswer.Of(store, session));
        return ExitCode.Good;
    }

    private static DateOnly Day(string? text)
    {
        DateOnly today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        if (text is null)
            return today;
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
            throw new WrongInputException($"--date takes a day as 2026-05-17, not \"{Inputs.Shorten(text)}\".", "Write year, month and day with dashes.");
        return day <= today ? day : throw new WrongInputException($"--date {text} lies in the future.", "Give the day the readings were taken.");
    }
}
