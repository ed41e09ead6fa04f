using Finwright.Numerics;

namespace Finwright.Strength.Vibrations;

/// <summary>Where the vortices shed by a blunt trailing edge may set the blade humming.</summary>
/// <param name="Low">Lowest frequency, Hz.</param>
/// <param name="High">Highest frequency, Hz.</param>
/// <remarks>
/// f = St V/h with the Strouhal number on the thickness of the edge and the layers beside it. The band 0.18 to 0.26 is common practice for blunt edges. All from memory, no source that
/// measured a fin: a bevelled or rounded edge sheds higher and weaker; shedding locks on to a natural frequency within some ten per cent of its own, so treat a frequency near the band
/// like one in it. Natural frequencies in water count, not those in air.
/// </remarks>
public sealed record HumBand(double Low, double High)
{
    /// <summary>Lowest Strouhal number that is taken for a blunt edge.</summary>
    public const double LeastStrouhal = 0.18;

    /// <summary>Greatest Strouhal number that is taken for a blunt edge.</summary>
    public const double GreatestStrouhal = 0.26;

    /// <summary>Band for a range of speeds and of edge thickness along the span.</summary>
    /// <param name="slowest">m/s, above 0.</param>
    /// <param name="fastest">m/s, not below the slowest.</param>
    /// <param name="thinnest">Least thickness of edge and displaced layers, m, above 0.</param>
    /// <param name="thickest">Greatest, m, not below the least.</param>
    public static HumBand Of(double slowest, double fastest, double thinnest, double thickest)
    {
        Require.Positive(slowest);
        Require.AtLeast(fastest, slowest);
        Require.Positive(thinnest);
        Require.AtLeast(thickest, thinnest);
        return new(LeastStrouhal * slowest / thickest, GreatestStrouhal * fastest / thinnest);
    }

    /// <summary>Which natural frequencies lie inside.</summary>
    /// <param name="frequencies">Hz.</param>
    /// <returns>Their places in the list, rising.</returns>
    public IReadOnlyList<int> Within(IReadOnlyList<double> frequencies)
    {
        ArgumentNullException.ThrowIfNull(frequencies);
        return [.. Enumerable.Range(0, frequencies.Count).Where(i => frequencies[i] >= Low && frequencies[i] <= High)];
    }

    /// <summary>Speeds at which vortices of an edge meet a frequency.</summary>
    /// <param name="frequency">Hz, above 0.</param>
    /// <param name="thickness">Thickness of edge and displaced layers, m, above 0.</param>
    /// <returns>Slowest and fastest, m/s.</returns>
    public static (double Slowest, double Fastest) Speeds(double frequency, double thickness)
    {
        Require.Positive(frequency);
        Require.Positive(thickness);
        return (frequency * thickness / GreatestStrouhal, frequency * thickness / LeastStrouhal);
    }
}
