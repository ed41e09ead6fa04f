using System.Globalization;
using Finwright.Assessment.Figures;
using OxyPlot;

namespace Finwright.Page.Scene;

/// <summary>Colours for a field, in bands of even width: whoever cannot tell the colours apart counts the lines between them.</summary>
/// <remarks>
/// Rising values take the colours of the figures of a pack, pale to dark at even steps of lightness. Where zero matters, both ways from a pale middle: to dark blue below and to dark brown above, a
/// pair that those who tell red from green badly tell apart; lightness falls evenly on both sides.
/// </remarks>
/// <param name="First">Where the first band begins.</param>
/// <param name="Step">Width of a band.</param>
/// <param name="Colours">Colour of each band, as HTML writes it, lowest first.</param>
public sealed record ColourScale(double First, double Step, IReadOnlyList<string> Colours)
{
    private const int MostBands = 8;

    // A range this small against its values is one value.
    private const double LeastSpread = 1e-9;

    private static readonly double[] Digits = [1, 2, 5, 10];

    // Even steps of lightness (CIE L* 91, 78, 65, 52, 39, 26), the middle shared.
    private static readonly OxyColor[] Below = [OxyColor.Parse("#e9e5dc"), OxyColor.Parse("#b3c4d6"), OxyColor.Parse("#7ea2c4"), OxyColor.Parse("#4a80ad"), OxyColor.Parse("#205f90"), OxyColor.Parse("#083f6b")];
    private static readonly OxyColor[] Above = [OxyColor.Parse("#e9e5dc"), OxyColor.Parse("#dcbd98"), OxyColor.Parse("#c8965c"), OxyColor.Parse("#a97330"), OxyColor.Parse("#815215"), OxyColor.Parse("#573407")];

    /// <summary>Where the last band ends.</summary>
    public double Last => First + Step * Colours.Count;

    /// <summary>Decimals with which the borders are told.</summary>
    public int Decimals => Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, 4);

    /// <summary>Borders of the bands, lowest first.</summary>
    public IReadOnlyList<double> Borders => [.. Enumerable.Range(0, Colours.Count + 1).Select(i => First + i * Step)];

    /// <summary>Colours for values that rise from pale to dark.</summary>
    /// <param name="least">Least value.</param>
    /// <param name="greatest">Greatest value.</param>
    public static ColourScale Rising(double least, double greatest)
    {
        double step = RoundStep(greatest - least, greatest), first = Math.Floor(least / step + LeastSpread) * step;
        int bands = Math.Max(1, (int)Math.Ceiling((greatest - first) / step - LeastSpread));
        return new(first, step, [.. Enumerable.Range(0, bands).Select(i => Html(BandColours.Of(i, bands)))]);
    }

    /// <summary>Colours for values on both sides of zero; each side is as dark as its values are large.</summary>
    /// <param name="least">Least value.</param>
    /// <param name="greatest">Greatest value.</param>
    public static ColourScale AroundZero(double least, double greatest)
    {
        (least, greatest) = (Math.Min(least, 0), Math.Max(greatest, 0));
        double step = RoundStep(greatest - least, Math.Max(greatest, -least));
        int below = (int)Math.Ceiling(-least / step - LeastSpread), above = (int)Math.Ceiling(greatest / step - LeastSpread);
        if (below + above == 0)
            above = 1;
        int most = Math.Max(below, above);
        IEnumerable<OxyColor> falling = Enumerable.Range(0, below).Select(i => At(Below, below - i, most)), rising = Enumerable.Range(1, above).Select(i => At(Above, i, most));
        return new(-below * step, step, [.. falling.Concat(rising).Select(Html)]);
    }

    /// <summary>Number of the band of a value; the first and last take what lies beyond them.</summary>
    public int BandOf(double value) => (int)Math.Clamp(Math.Floor((value - First) / Step), 0, Colours.Count - 1);

    private static double RoundStep(double spread, double size)
    {
        double wanted = Math.Max(spread, Math.Max(LeastSpread * Math.Abs(size), double.Epsilon * 1e6)) / MostBands;
        if (!(spread > LeastSpread * Math.Abs(size)))
            wanted = Math.Max(Math.Abs(size), 1) / MostBands;
        double power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        return power * Digits.First(digit => digit * power >= wanted * (1 - LeastSpread));
    }

    // The band next to zero is told from its neighbour beyond zero: the middle itself is no band.
    private static OxyColor At(OxyColor[] colours, int band, int most)
    {
        double place = (colours.Length - 1.0) * Math.Max(band - 0.5, 0.35) / Math.Max(most - 0.5, 0.5);
        int low = Math.Min((int)place, colours.Length - 2);
        return OxyColor.Interpolate(colours[low], colours[low + 1], Math.Min(place - low, 1));
    }

    private static string Html(OxyColor colour) => string.Create(CultureInfo.InvariantCulture, $"#{colour.R:x2}{colour.G:x2}{colour.B:x2}");
}
