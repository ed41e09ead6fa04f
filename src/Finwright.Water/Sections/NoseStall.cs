namespace Finwright.Water.Sections;

/// <summary>Where the flow lets go at the nose of a thin section.</summary>
/// <remarks>
/// Behind a high suction peak a short bubble bursts, or the young turbulent layer leaves again. Integral layers carry on past that point. What measured sections have
/// in common when it happens is the height of the peak, which depends on the Reynolds number alone (the pressure-difference rule of Valarezo and Chin, 1994, J. Aircraft 31(1), from memory).
/// Our limit is laid through the peaks that this method computes at the measured stall of the 0006 and 0009 at 9 million (USAF DATCOM, from memory), the 0012 at 2 and 6 million
/// (Ladson, 1988, NASA TM-4074) and the 0009 at 60 to 300 thousand (Selig, Donovan and Fraser, 1989): it meets their greatest lift within 5 %, four-digit sections of other thickness
/// within 10 %. A nose that is blunter or sharper than theirs was not compared.
/// </remarks>
public static class NoseStall
{
    // The measured peaks at stall: 4.2 at 6e4, 4.7 at 1e5, 5.7 at 2e5, 6.0 at 3e5, 13.2 at 6e6, 12.8 at 9e6.
    private const double Peak = 4.6;
    private const double PeakReynolds = 1e5;
    private const double Exponent = 0.25;
    private const double HighestPeak = 13;

    // Peaks farther aft are not at the nose.
    private const double NoseEnd = 0.1;

    /// <summary>Lowest pressure coefficient that the nose bears.</summary>
    /// <param name="reynoldsNumber">On the chord.</param>
    public static double LowestPressure(double reynoldsNumber) =>
        -Math.Min(HighestPeak, Peak * Math.Pow(reynoldsNumber / PeakReynolds, Exponent));

    /// <summary>Whether a suction peak is past what the nose bears.</summary>
    /// <param name="minimumCp">Lowest pressure coefficient.</param>
    /// <param name="at">Its place, x/c.</param>
    /// <param name="reynoldsNumber">On the chord.</param>
    public static bool IsPast(double minimumCp, double at, double reynoldsNumber) => at < NoseEnd && minimumCp < LowestPressure(reynoldsNumber);
}
