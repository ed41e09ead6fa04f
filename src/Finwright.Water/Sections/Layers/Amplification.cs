using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Water.Sections.Layers;

/// <summary>Growth of the waves that make a laminar layer turbulent: the envelope of the e^n method.</summary>
/// <remarks>Drela and Giles, 1987, AIAA J. 25(10), after Gleyzes, Cousteix and Bonnet, from memory. On a plate n = 9 is reached at a Reynolds number of 2.8 million.</remarks>
internal static class Amplification
{
    // Growth sets in over a short stretch of log10 Re about the critical value, so that its derivative exists.
    private const double Onset = 0.08;

    /// <summary>Growth of n along the surface times the momentum thickness, dn/ds · θ.</summary>
    public static T Growth<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T inverse = T.Constant(1) / (shape - 1);
        T critical = (1.415 * inverse - 0.489) * Tanh(20 * inverse - 12.9) + 3.295 * inverse + 0.44;
        T along = (1 / (2 * Onset)) * ((1 / Math.Log(10)) * Log(reynolds) - critical + Onset);
        if (along.Value <= 0)
            return T.Constant(0);
        T slope = 0.01 * Sqrt(Square(2.4 * shape - 3.7 + 2.5 * Tanh(1.5 * shape - 4.65)) + 0.25);
        T length = (6.54 * shape - 14.07) / Square(shape);
        T stretch = 0.5 * (0.058 * Square(shape - 4) * inverse - 0.068 + length);
        T growth = Max(slope * stretch, 0);
        return along.Value >= 1 ? growth : growth * Square(along) * (3 - 2 * along);
    }
}
