using CsCheck;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Tracks;

/// <summary>Tracks of any kind of points: measured without a fault, and within what their own points allow.</summary>
public sealed class TrackPropertyTests
{
    private static readonly Gen<Track> Wild = Gen.Select(Gen.Double[-20, 400], Gen.OneOf(Gen.Double[-1.5, 1.5], Gen.Double[0.9, 0.90002], Gen.Const(0.9)), Gen.OneOf(Gen.Double[-3.1, 3.1], Gen.Double[0.1, 0.10002], Gen.Const(0.1)), Gen.OneOf(Gen.Double[0, 60], Gen.Const(double.NaN)))
        .Select(Gen.Byte, Gen.Double[0, 8], Gen.Bool, (point, satellites, dilution, starts) => new TrackPoint(point.Item1, point.Item2, point.Item3, point.Item4) { Satellites = satellites, Dilution = (float)dilution, StartsSegment = starts })
        .Array[0, 60].Select(points => new Track(TrackMaker.Start, points));

    /// <summary>Legs of wind and water as they come: speed, seconds, course, how fast it turns.</summary>
    private static readonly Gen<(double Speed, double Seconds, double Course, double Turn)[]> Legs = Gen.Select(Gen.Double[0, 16], Gen.Double[1, 40], Gen.Double[0, 360], Gen.Double[-15, 15]).Array[1, 25];

    [Fact]
    public void Any_points_are_measured_without_a_fault() =>
        Wild.Hold(track => Sound(TrackMeasures.Of(track)) && Sound(TrackMeasures.Of(track, positionsOnly: true)), iter: 300);

    [Fact]
    public void Any_sailing_is_measured_within_what_was_sailed() =>
        Gen.Select(Legs, Gen.OneOf(Gen.Const(1.0), Gen.Const(2.0), Gen.Const(10.0)), Gen.Bool).Hold(
            pick =>
            {
                TrackMaker maker = new(pick.Item2, pick.Item3);
                foreach ((double speed, double seconds, double course, double turn) in pick.Item1)
                    maker.Sail(speed, seconds, course, turn);
                TrackMeasures measures = TrackMeasures.Of(maker.Track);
                double top = pick.Item1.Max(leg => leg.Speed) * 1.0001 + 1e-6;
                return Sound(measures) && new[] { measures.TwoSeconds, measures.TenSeconds, measures.HundredMetres, measures.QuarterKilometre, measures.HalfKilometre, measures.NauticalMile }.OfType<BestSpeed>().All(best => best.Speed <= top)
                    // Ten seconds are made of five times two.
                    && (measures.TenSeconds is null || measures.TwoSeconds!.Speed >= measures.TenSeconds.Speed * (1 - 1e-9));
            },
            iter: 150);

    [Fact]
    public void The_best_piece_is_that_of_trying_every_pair_of_points() =>
        Gen.Select(Gen.Double[1, 16].Array[5, 80], Gen.Double[1, 20], Gen.Double[5, 200]).Hold(
            pick =>
            {
                TrackMaker maker = new(2);
                foreach (double speed in pick.Item1)
                    maker.Sail(speed, 0.5);
                CleanTrack track = TrackCleaning.Clean(maker.Track).Track;
                if (track.Stretches[^1] != 0)
                    return true;
                return Same(BestWindow.OfTime(track, 0, track.Count - 1, pick.Item2), Tried(track, (time, _) => time >= pick.Item2 - 1e-8))
                    && Same(BestWindow.OfWay(track, 0, track.Count - 1, pick.Item3), Tried(track, (_, way) => way >= pick.Item3 - 1e-6));
            },
            iter: 200);

    [Fact]
    public void Any_track_is_kept_and_read_back_to_the_last_bit() =>
        Wild.Hold(track => Kept(track), iter: 300);

    private static bool Kept(Track track)
    {
        // Not all that can be written down is a speed.
        Track read = TrackForm.Read(TrackForm.Write(track));
        return read.Start == track.Start && read.Points.Count == track.Points.Count && read.Points.Zip(track.Points).All(pair => pair.First.Equals(pair.Second));
    }

    private static bool Same(BestSpeed? found, double tried) => found is null ? tried < 0 : Math.Abs(found.Speed - tried) < 1e-9;

    private static double Tried(CleanTrack track, Func<double, double, bool> reaches)
    {
        double best = -1;
        for (int i = 0; i < track.Count; i++)
        {
            for (int j = i + 1; j < track.Count; j++)
            {
                double time = track.Points[j].Time - track.Points[i].Time, way = track.Ways[j] - track.Ways[i];
                if (!reaches(time, way))
                    continue;
                best = Math.Max(best, way / time);
                break;
            }
        }

        return best;
    }

    private static bool Sound(TrackMeasures measures)
    {
        bool runs = measures.Runs.All(run => run.Duration >= RunSplitting.ShortestRun && run.MeanSpeed is >= 0 and <= 1.001 * (TrackLimits.FastestSpeed + TrackLimits.PositionSlack * 100) && double.IsFinite(run.Course));
        bool order = measures.Runs.Zip(measures.Runs.Skip(1)).All(pair => pair.Second.Start >= pair.First.Start + pair.First.Duration - 1e-9);
        bool whole = measures.TimeSailed <= measures.Duration + 1e-9 && measures.Distance >= 0 && double.IsFinite(measures.Distance);
        bool counted = measures.Points.Recorded == measures.Points.Trusted + measures.Rejections.Sum(rejection => rejection.Count);
        return runs && order && whole && counted && measures.BestOfRuns.Count <= 5;
    }
}
