using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>Which end of the range must stay below the limit.</summary>
public enum PourCaution
{
    /// <summary>The nominal case.</summary>
    Nominal,

    /// <summary>The warm end of the range.</summary>
    High,
}

/// <summary>How a search for a thickness ended.</summary>
public enum ThicknessStatus
{
    /// <summary>Found.</summary>
    Found,

    /// <summary>Even the thinnest slab looked at grows too warm.</summary>
    NoneIsThinEnough,

    /// <summary>Even the thickest slab looked at stays below the limit.</summary>
    AllStayBelow,
}

/// <summary>How thick may I pour?</summary>
/// <param name="Status">How the search ended.</param>
/// <param name="Thickness">Largest thickness that stays below the limit, metres; the end of the range looked at when none is found.</param>
/// <param name="Peak">Peak at that thickness, K.</param>
/// <param name="IsMonotone">False when a thicker slab was cooler than a thinner one among those looked at; then the first crossing is told.</param>
public sealed record ThickestPour(ThicknessStatus Status, double Thickness, double Peak, bool IsMonotone)
{
    /// <summary>Thinnest and thickest slab looked at, metres.</summary>
    public const double Thinnest = 0.001, Thickest = 0.08;

    // A twentieth of a millimetre: finer than anybody prints.
    private const double Resolution = 5e-5;
    private const int Samples = 14;

    // Peaks of neighbouring thicknesses may differ downwards by this much, K, from steps and cells alone.
    private const double Rounding = 0.2;

    /// <summary>Finds the largest thickness whose peak stays below a limit.</summary>
    /// <param name="slab">The case; its thickness is not used.</param>
    /// <param name="limit">Highest temperature allowed in the resin, K.</param>
    /// <param name="caution">Which end of the range must stay below.</param>
    /// <param name="cancellation">Stops it.</param>
    public static ThickestPour Find(SlabCase slab, double limit, PourCaution caution = PourCaution.High, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(slab);
        Require.Positive(limit);
        SlabCase end = caution == PourCaution.High
            ? slab with { RateFactor = slab.RateFactor * CureBand.FastRate, CoolingFactor = slab.CoolingFactor * CureBand.BadlyCooled }
            : slab;
        double Peak(double thickness) => CureSlab.Solve(end with { Thickness = thickness, Cells = 24 }, cancellation).Centre.Temperature;
        double[] thicknesses = new double[Samples], peaks = new double[Samples];
        for (int i = 0; i < Samples; i++)
            thicknesses[i] = Thinnest * Math.Pow(Thickest / Thinnest, (double)i / (Samples - 1));
        Parallel.For(0, Samples, new ParallelOptions { CancellationToken = cancellation }, i => peaks[i] = Peak(thicknesses[i]));
        bool isMonotone = true;
        for (int i = 1; i < Samples; i++)
            isMonotone &= peaks[i] > peaks[i - 1] - Rounding;
        int above = Array.FindIndex(peaks, peak => peak > limit);
        if (above == 0)
            return new(ThicknessStatus.NoneIsThinEnough, Thinnest, peaks[0], isMonotone);
        if (above < 0)
            return new(ThicknessStatus.AllStayBelow, Thickest, peaks[^1], isMonotone);
        double low = thicknesses[above - 1], high = thicknesses[above], peakLow = peaks[above - 1];
        while (high - low > Resolution)
        {
            double middle = (low + high) / 2, peak = Peak(middle);
            if (peak > limit)
                high = middle;
            else
                (low, peakLow) = (middle, peak);
        }

        return new(ThicknessStatus.Found, low, peakLow, isMonotone);
    }
}
