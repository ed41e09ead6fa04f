using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Colours of a field's bands, from pale sand to dark blue.</summary>
/// <remarks>
/// Nine colours at even steps of lightness (CIE L* from 94 down to 20 by 9.25) on a way from yellow over grey to blue, which those who tell red from green badly see as others do; the order can
/// be read without colour.
/// </remarks>
internal static class BandColours
{
    private static readonly OxyColor[] Steps =
    [
        OxyColor.Parse("#fdedbc"), OxyColor.Parse("#e4d398"), OxyColor.Parse("#c9ba81"), OxyColor.Parse("#aaa17f"), OxyColor.Parse("#8a8982"),
        OxyColor.Parse("#697282"), OxyColor.Parse("#475b7d"), OxyColor.Parse("#284571"), OxyColor.Parse("#02305f"),
    ];

    /// <summary>Colour of one band.</summary>
    /// <param name="band">Its number from 0, lowest first.</param>
    /// <param name="bands">How many there are.</param>
    public static OxyColor Of(int band, int bands)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(band);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(band, bands);
        if (bands == 1)
            return Steps[0];
        double place = (Steps.Length - 1.0) * band / (bands - 1);
        int below = Math.Min((int)place, Steps.Length - 2);
        return OxyColor.Interpolate(Steps[below], Steps[below + 1], place - below);
    }
}
