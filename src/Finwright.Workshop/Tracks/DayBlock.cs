namespace Finwright.Workshop.Tracks;

/// <summary>Runs of both fins on one day, with one sail, in one wind.</summary>
/// <param name="First">Runs of the first fin.</param>
/// <param name="Second">Runs of the second fin.</param>
internal sealed record DayBlock(ComparedRun[] First, ComparedRun[] Second)
{
    // A mean of one run has no spread of its own.
    private const int FewestOfADay = 2;

    /// <summary>The days on which both fins were sailed alike.</summary>
    public static List<DayBlock> Together(ComparedRun[] first, ComparedRun[] second)
    {
        List<DayBlock> blocks = [];
        foreach ((DateOnly Day, double? Sail) key in first.Select(KeyOf).Distinct().Order())
        {
            ComparedRun[] a = [.. first.Where(run => KeyOf(run) == key)];
            ComparedRun[] b = [.. second.Where(run => run.Day == key.Day && a.Any(other => FairComparison.IsAlike(run, other)))];
            a = [.. a.Where(run => b.Any(other => FairComparison.IsAlike(run, other)))];
            if (a.Length >= FewestOfADay && b.Length >= FewestOfADay)
                blocks.Add(new(a, b));
        }

        return blocks;
    }

    private static (DateOnly Day, double? Sail) KeyOf(ComparedRun run) => (run.Day, run.Sail);
}
