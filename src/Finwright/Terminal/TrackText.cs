using Finwright.Assessment.Packing;
using Finwright.Commands.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Terminal;

/// <summary>What a track says, as plain text.</summary>
internal static class TrackText
{
    // Courses on which less of the time was sailed are turns.
    private const double LeastTimePercent = 2;

    /// <summary>Writes the answer.</summary>
    public static void Write(TextStreams streams, TrackAnswer answer)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap($"{answer.Day:yyyy-MM-dd}, from {answer.Start:HH:mm:ss} UTC: {answer.Sentence}", streams.Width));
        o.WriteLine();
        WriteBests(streams, answer);
        if (answer.Runs.Count > 0)
        {
            o.WriteLine();
            TextColumns runs = new(" run", " at", " time", " m", " mean, kn", " 10 s, kn", "course");
            foreach (RunAnswer run in answer.Runs)
                runs.Add($"{run.Number}", TrackSentence.Clock(run.StartS), $"{run.DurationS:0} s", $"{run.DistanceM:0}", $"{run.MeanKnots:0.00}", run.BestTenSecondsKnots is double ten ? $"{ten:0.00}" : "", $"{run.CourseDegrees:0}°");
            runs.Write(streams);
        }

        CourseAnswer[] sailed = [.. answer.ByCourse.Where(course => course.TimePercent >= LeastTimePercent)];
        if (sailed.Length > 0)
        {
            o.WriteLine();
            TextColumns courses = new(" course", " of the time", " mean, kn", " 10 s, kn", "");
            foreach (CourseAnswer course in sailed)
                courses.Add($"{course.CourseDegrees:0}°", $"{course.TimePercent:0} %", $"{course.MeanKnots:0.00}", course.BestTenSecondsKnots is double ten ? $"{ten:0.00}" : "", "");
            courses.Write(streams);
        }

        o.WriteLine();
        if (answer.LeftOut.Count == 0)
        {
            o.WriteLine($"  All {answer.PointsRecorded} points were used.");
            return;
        }

        o.WriteLine($"  Used {answer.PointsTrusted} of {answer.PointsRecorded} points. Left out:");
        foreach (RejectionAnswer rejection in answer.LeftOut)
            o.WriteLine($"  {rejection.Points,8}  " + Wrapping.Wrap($"{Reason(rejection.Reason)}; {(rejection.FirstS >= 0 ? $"first at {TrackSentence.Clock(rejection.FirstS)}" : "first before the start")}", streams.Width, 12, 12));
    }

    private static void WriteBests(TextStreams streams, TrackAnswer answer)
    {
        TextColumns bests = new("best", " knots", " m/s", " ± kn", " run", " at", "");
        Row("2 s", answer.TwoSeconds);
        Row("10 s", answer.TenSeconds);
        if (answer.FiveTimesTen is { } five)
            bests.Add("5 x 10 s", $"{five.Knots:0.00}", $"{five.MPerS:0.00}", "", "", "", string.Join(", ", answer.BestOfRuns.Select(best => $"{best.Knots:0.00}")));
        Row("100 m", answer.Metres100);
        Row("250 m", answer.Metres250);
        Row("500 m", answer.Metres500);
        Row("mile", answer.NauticalMile);
        Row("hour", answer.Hour);
        bests.Write(streams);

        void Row(string name, BestAnswer? best)
        {
            if (best is not null)
                bests.Add(name, $"{best.Knots:0.00}", $"{best.MPerS:0.00}", $"{best.ErrorKnots:0.00}", $"{best.Run}", TrackSentence.Clock(best.StartS), $"{best.DistanceM:0} m in {best.DurationS:0.#} s");
        }
    }

    private static string Reason(RejectionReason reason) => reason switch
    {
        RejectionReason.DoubledTime => "the same time as the point before",
        RejectionReason.ClockWentBack => "the clock went back",
        RejectionReason.OtherDay => "of another day, or the clock was wrong by days",
        RejectionReason.FewSatellites => "too few satellites, or badly placed ones",
        RejectionReason.Leap => "farther from the last good point than anyone sails in the time",
        RejectionReason.NoSpeed => "no speed told, or one that nobody sails",
        RejectionReason.SpeedsDisagree => "measured speed and positions do not agree",
        RejectionReason.TooClose => "nearer than a second to the point before: more would only add noise to speeds from positions",
        RejectionReason.Acceleration => "the speed changed faster than a board's can",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Unknown reason."),
    };
}
