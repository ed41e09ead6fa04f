using System.Globalization;
using Finwright.Making.Resins;
using Finwright.Papers.Words;

namespace Finwright.Page.Libraries;

/// <summary>Measured marks over the fitted line: temperature of the cup over time.</summary>
public sealed class CupPlot
{
    private const double Left = 46, Right = 624, Top = 14, Bottom = 250;

    private readonly double _lastMinutes, _low, _high;
    private readonly Tongue _tongue;

    /// <summary>Lays it out.</summary>
    /// <param name="residuals">Readings beside the fit; at least two.</param>
    /// <param name="tongue">How temperatures are shown.</param>
    public CupPlot(IReadOnlyList<CupResidual> residuals, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(residuals);
        _tongue = tongue;
        _lastMinutes = Math.Max(1, residuals.Max(own => own.Seconds) / 60);
        double lowest = residuals.Min(own => Math.Min(own.Measured, own.Computed)), highest = residuals.Max(own => Math.Max(own.Measured, own.Computed));
        (_low, _high) = (10 * Math.Floor((lowest - 273.15) / 10) + 273.15, 10 * Math.Ceiling((highest - 273.15 + 1) / 10) + 273.15);
        Marks = [.. residuals.Select(own => (X(own.Seconds / 60), Y(own.Measured)))];
        Line = string.Concat(residuals.Select((own, index) => $"{(index == 0 ? 'M' : 'L')}{Number(X(own.Seconds / 60))} {Number(Y(own.Computed))}"));
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<(double X, double Y)> Marks { get; }

    /// <summary>The fitted cup.</summary>
    public string Line { get; }

    /// <summary>The axes.</summary>
    public static string Axes => $"M{Number(Left)} {Number(Top)}V{Number(Bottom)}H{Number(Right)}";

    /// <summary>Labels of the upright axis.</summary>
    public IEnumerable<(double Y, string Text)> Temperatures
    {
        get
        {
            double step = (_high - _low) / 10 > 12 ? 40 : (_high - _low) / 10 > 6 ? 20 : 10;
            for (double at = _low; at <= _high + 1e-6; at += step)
                yield return (Y(at), _tongue.Temperature(at));
        }
    }

    /// <summary>Labels of the level axis.</summary>
    public IEnumerable<(double X, string Text)> Times
    {
        get
        {
            double rough = _lastMinutes / 6, step = new double[] { 1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 960, 1440 }.FirstOrDefault(own => own >= rough, 1440);
            for (double at = 0; at <= _lastMinutes + 1e-6; at += step)
                yield return (X(at), at.ToString("0", CultureInfo.InvariantCulture));
        }
    }

    /// <summary>A number as drawings have it.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private double X(double minutes) => Left + (Right - Left) * minutes / _lastMinutes;

    private double Y(double kelvin) => Bottom - (Bottom - Top) * (kelvin - _low) / (_high - _low);
}
