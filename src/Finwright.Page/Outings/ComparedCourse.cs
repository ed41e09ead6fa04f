using Finwright.Workshop.Builds;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Page.Outings;

/// <summary>The fastest 10 s of two fins on courses within one bin.</summary>
/// <param name="Course">Middle of the bin, radians from north by east.</param>
/// <param name="First">Of the first, m/s; null when it was not sailed there.</param>
/// <param name="Second">Of the second.</param>
public sealed record ComparedCourse(double Course, double? First, double? Second)
{
    /// <summary>Goes through every track of both fins.</summary>
    /// <returns>Every bin from north by east; nothing when neither fin has a run of 10 s.</returns>
    public static IReadOnlyList<ComparedCourse> Of(WorkshopStore store, Build first, Build second)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        double?[] one = Bests(store, first), other = Bests(store, second);
        if (!Array.Exists(one, best => best is not null) && !Array.Exists(other, best => best is not null))
            return [];
        return [.. Enumerable.Range(0, SpeedByCourse.Bins).Select(bin => new ComparedCourse(2 * Math.PI * bin / SpeedByCourse.Bins, one[bin], other[bin]))];
    }

    private static double?[] Bests(WorkshopStore store, Build build)
    {
        double?[] bests = new double?[SpeedByCourse.Bins];
        foreach (Outing outing in store.Outings.List(build.Id))
        {
            if (OutingTracks.Of(store, outing) is not { } track)
                continue;
            foreach ((int bin, CourseSpeed course) in TrackMeasures.Of(track).ByCourse.Index())
            {
                if (course.BestTenSeconds is double best)
                    bests[bin] = Math.Max(bests[bin] ?? 0, best);
            }
        }

        return bests;
    }
}
