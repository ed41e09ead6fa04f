namespace Finwright.Papers.Pictures;

/// <summary>The least room in which a picture's words can be read.</summary>
internal static class PictureRoom
{
    /// <summary>Least width and height of most pictures, metres.</summary>
    public const double Least = 50e-3;

    /// <summary>Least width of the bench, which shows two views side by side, metres.</summary>
    public const double LeastBenchWidth = 140e-3;

    /// <summary>Least height of the bench, metres.</summary>
    public const double LeastBenchHeight = 80e-3;

    public static void Check(double width, double height, double leastWidth = Least, double leastHeight = Least)
    {
        if (!(width >= leastWidth && double.IsFinite(width)))
            throw new ArgumentOutOfRangeException(nameof(width), width, $"The picture needs a room {leastWidth} m wide or wider.");
        if (!(height >= leastHeight && double.IsFinite(height)))
            throw new ArgumentOutOfRangeException(nameof(height), height, $"The picture needs a room {leastHeight} m high or higher.");
    }
}
