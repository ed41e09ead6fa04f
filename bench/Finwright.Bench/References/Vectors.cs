namespace Finwright.Bench.References;

/// <summary>Sizes of solutions.</summary>
internal static class Vectors
{
    /// <summary>Size of the largest entry.</summary>
    public static double Largest(double[] vector) => vector.Max(Math.Abs);

    /// <summary>The largest difference of two entries over the second vector's largest entry.</summary>
    public static double Difference(double[] vector, double[] other)
    {
        if (vector.Length != other.Length)
            throw new ArgumentException($"One vector has {vector.Length} entries, the other {other.Length}.", nameof(other));
        double difference = 0;
        for (int i = 0; i < vector.Length; i++)
            difference = Math.Max(difference, Math.Abs(vector[i] - other[i]));
        return difference / Largest(other);
    }
}
