using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>What a track says, as JSON. Times of pieces count from its first trusted point.</summary>
internal sealed record TrackAnswer
{
    public string Kind { get; init; } = "finwright-track";

    public int Layout { get; init; } = 1;

    public required string MadeBy { get; init; }

    public required string Sentence { get; init; }

    public required DateTimeOffset Start { get; init; }

    public required DateOnly Day { get; init; }

    public required SpeedSource SpeedSource { get; init; }

    public required int PointsRecorded { get; init; }

    public required int PointsTrusted { get; init; }

    public required double DurationS { get; init; }

    public required double TimeSailedS { get; init; }

    public required double DistanceM { get; init; }

    public required BestAnswer? TwoSeconds { get; init; }

    public required BestAnswer? TenSeconds { get; init; }

    public required SpeedAnswer? FiveTimesTen { get; init; }

    public required IReadOnlyList<BestAnswer> BestOfRuns { get; init; }

    public required BestAnswer? Metres100 { get; init; }

    public required BestAnswer? Metres250 { get; init; }

    public required BestAnswer? Metres500 { get; init; }

    public required BestAnswer? NauticalMile { get; init; }

    public required BestAnswer? Hour { get; init; }

    public required IReadOnlyList<RunAnswer> Runs { get; init; }

    public required IReadOnlyList<CourseAnswer> ByCourse { get; init; }

    public required IReadOnlyList<RejectionAnswer> LeftOut { get; init; }

    public required IReadOnlyList<TrackFindingAnswer> Findings { get; init; }

    public static TrackAnswer Of(Track track, TrackMeasures measures, IReadOnlyList<Finding> findings)
    {
        double first = (measures.Start - track.Start).TotalSeconds;
        return new()
        {
            MadeBy = $"Finwright {ProgramVersion.Text}",
            Sentence = TrackSentence.Of(measures),
            Start = measures.Start,
            Day = measures.Day,
            SpeedSource = measures.Source,
            PointsRecorded = measures.Points.Recorded,
            PointsTrusted = measures.Points.Trusted,
            DurationS = Rounded.Digits(measures.Duration),
            TimeSailedS = Rounded.Digits(measures.TimeSailed),
            DistanceM = Rounded.Digits(measures.Distance),
            TwoSeconds = BestAnswer.Of(measures.TwoSeconds, first),
            TenSeconds = BestAnswer.Of(measures.TenSeconds, first),
            FiveTimesTen = SpeedAnswer.Of(measures.FiveTimesTen),
            BestOfRuns = [.. measures.BestOfRuns.Select(best => BestAnswer.Of(best, first)!)],
            Metres100 = BestAnswer.Of(measures.HundredMetres, first),
            Metres250 = BestAnswer.Of(measures.QuarterKilometre, first),
            Metres500 = BestAnswer.Of(measures.HalfKilometre, first),
            NauticalMile = BestAnswer.Of(measures.NauticalMile, first),
            Hour = BestAnswer.Of(measures.Hour, first),
            Runs = [.. measures.Runs.Select(run => RunAnswer.Of(run, first))],
            ByCourse = [.. measures.ByCourse.Select(CourseAnswer.Of)],
            LeftOut = [.. measures.Rejections.Select(rejection => new RejectionAnswer(rejection.Reason, rejection.Count, Rounded.Digits(rejection.FirstTime - first)))],
            Findings = [.. findings.Select(TrackFindingAnswer.Of)],
        };
    }
}

/// <summary>A speed in both units.</summary>
internal sealed record SpeedAnswer(double Knots, double MPerS)
{
    public static SpeedAnswer? Of(double? speed) => speed is double value ? new(Rounded.Digits(value / SpeedUnits.Knot), Rounded.Digits(value)) : null;
}

/// <summary>A best speed.</summary>
internal sealed record BestAnswer(double Knots, double MPerS, double ErrorKnots, double StartS, double DurationS, double DistanceM, int? Run)
{
    public static BestAnswer? Of(BestSpeed? best, double first) => best is null
        ? null
        : new(Rounded.Digits(best.Speed / SpeedUnits.Knot), Rounded.Digits(best.Speed), Rounded.Digits(best.Error / SpeedUnits.Knot), Rounded.Digits(best.Start - first), Rounded.Digits(best.Duration), Rounded.Digits(best.Distance), best.Run);
}

/// <summary>A run.</summary>
internal sealed record RunAnswer(int Number, double StartS, double DurationS, double DistanceM, double MeanKnots, double? BestTenSecondsKnots, double CourseDegrees)
{
    public static RunAnswer Of(SailedRun run, double first) => new(
        run.Number, Rounded.Digits(run.Start - first), Rounded.Digits(run.Duration), Rounded.Digits(run.Distance), Rounded.Digits(run.MeanSpeed / SpeedUnits.Knot),
        run.BestTenSeconds is { } best ? Rounded.Digits(best.Speed / SpeedUnits.Knot) : null, Rounded.Degrees(run.Course));
}

/// <summary>Speed on the courses of one bin.</summary>
internal sealed record CourseAnswer(double CourseDegrees, double TimePercent, double? MeanKnots, double? BestTenSecondsKnots)
{
    public static CourseAnswer Of(CourseSpeed course) => new(
        Rounded.Degrees(course.Course), Rounded.Percent(course.TimeShare), course.MeanSpeed / SpeedUnits.Knot is double mean ? Rounded.Digits(mean) : null, course.BestTenSeconds / SpeedUnits.Knot is double best ? Rounded.Digits(best) : null);
}

/// <summary>Points left out.</summary>
internal sealed record RejectionAnswer(RejectionReason Reason, int Points, double FirstS);

/// <summary>What to know.</summary>
internal sealed record TrackFindingAnswer(string Code, Severity Severity, int? Line, string Message, string Remedy)
{
    public static TrackFindingAnswer Of(Finding finding) => new(finding.Code, finding.Severity, finding.Line, finding.Message, finding.Remedy);
}
