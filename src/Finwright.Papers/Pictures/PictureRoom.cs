namespace Finwright.Papers.Pictures;

/// <summary>The least room in which a picture's words can be read.</summary>
internal static class PictureRoom
{
    /// <summary>Least width and height of most pictures, metres.</summary>
    public const double Least = 50e-3;

    /// <summary>Least width and height of the bench, which shows two views, metres.</summary>
    public const double LeastOfBench = 80e-3;

    public static void Check(double width, double height, double least = Least)
    {
        if (!(width >= least && double.IsFinite(width)))
            throw new ArgumentOutOfRangeException(nameof(width), width, $"The picture needs a room {least} m wide or wider.");
        if (!(height >= least && double.IsFinite(height)))
            throw new ArgumentOutOfRangeException(nameof(height), height, $"The picture needs a room {least} m high or higher.");
    }
}
