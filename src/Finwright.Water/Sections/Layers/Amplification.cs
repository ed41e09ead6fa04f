using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Water.Sections.Layers;

/// <summary>Growth of the waves that make a laminar layer turbulent: the envelope of the e^n method.</summary>
/// <remarks>
/// On the surface: Drela and Giles, 1987, AIAA J. 25(10), after Gleyzes, Cousteix and Bonnet, from memory. On a plate n = 9 is reached at a Reynolds number of 2.8 million.
/// Leaving the surface: our own fit to the greatest spatial growth of Orr-Sommerfeld waves on the Falkner-Skan profiles, forward and backward, worked out for
/// momentum Reynolds numbers of 100 to 1600 and shape factors of 3.2 to 8.5. There one frequency stays the fastest, so the envelope rises as fast as it does; the published
/// one lies a quarter below at a shape factor of 4. Valid as a fit to 5 % from 3.5 to 6.2.
/// Above about 7 the published envelope is the steeper one and is kept: with the fit alone long bubbles at the nose turn too late, and at a Reynolds number of 60 thousand drag
/// comes out a quarter above the measured.
/// </remarks>
internal static class Amplification
{
    // Growth sets in over a short stretch of log10 Re about the critical value, so that its derivative exists.
    private const double Onset = 0.08;

    // Shape factors between which one formula hands over to the other: from where the fit begins to where the profiles lose their friction.
    private const double HandOverFrom = 3.2;
    private const double HandOverTo = 4.03;

    /// <summary>Growth of n along the surface times the momentum thickness, dn/ds · θ.</summary>
    public static T Growth<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T inverse = T.Constant(1) / (shape - 1);
        T critical = (1.415 * inverse - 0.489) * Tanh(20 * inverse - 12.9) + 3.295 * inverse + 0.44;
        T along = (1 / (2 * Onset)) * ((1 / Math.Log(10)) * Log(reynolds) - critical + Onset);
        if (along.Value <= 0)
            return T.Constant(0);
        T growth = HandedOver(shape, reynolds);
        return along.Value >= 1 ? growth : growth * Square(along) * (3 - 2 * along);
    }

    private static T HandedOver<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        if (shape.Value <= HandOverFrom)
            return OnSurface(shape);
        if (shape.Value >= HandOverTo)
            return Leaving(shape, reynolds);
        T share = (1 / (HandOverTo - HandOverFrom)) * (shape - HandOverFrom);
        T smooth = Square(share) * (3 - 2 * share), near = OnSurface(shape);
        return near + smooth * (Leaving(shape, reynolds) - near);
    }

    private static T OnSurface<T>(T shape)
        where T : struct, IJet<T>
    {
        T slope = 0.01 * Sqrt(Square(2.4 * shape - 3.7 + 2.5 * Tanh(1.5 * shape - 4.65)) + 0.25);
        T length = (6.54 * shape - 14.07) / Square(shape);
        T stretch = 0.5 * (0.058 * Square(shape - 4) / (shape - 1) - 0.068 + length);
        return Max(slope * stretch, 0);
    }

    private static T Leaving<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        // Fit: tanh over the shape factor to 2 %, the damping by viscosity to 4 %.
        T similar = 0.056 * Tanh(0.61 * (shape - 2.53)) * reynolds / (reynolds + 18), published = OnSurface(shape);
        return similar.Value > published.Value ? similar : published;
    }
}
