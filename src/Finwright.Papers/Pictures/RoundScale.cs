namespace Finwright.Papers.Pictures;

/// <summary>A scale that is told in few digits.</summary>
/// <param name="Factor">Length on paper over true length.</param>
internal readonly record struct RoundScale(double Factor)
{
    private static readonly double[] Steps = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

    /// <summary>The largest round scale that does not pass a factor; the factor itself when it is below all of them.</summary>
    /// <param name="most">Positive.</param>
    public static RoundScale Largest(double most)
    {
        if (!(most > 0 && double.IsFinite(most)))
            throw new ArgumentOutOfRangeException(nameof(most), most, "There is no room for a scale.");
        IEnumerable<double> all = Steps.Concat(Steps.Select(step => 1 / step)).Where(factor => factor <= most);
        return new(all.DefaultIfEmpty(most).Max());
    }
}
