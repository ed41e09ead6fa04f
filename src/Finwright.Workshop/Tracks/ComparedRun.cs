namespace Finwright.Workshop.Tracks;

/// <summary>One run as evidence of how fast a fin is.</summary>
/// <param name="Outing">What tells the outing from others.</param>
/// <param name="Day">When it was sailed.</param>
/// <param name="SailArea">m²; null when not written down.</param>
/// <param name="WindLow">Lower end of the wind, m/s; null when not written down.</param>
/// <param name="WindHigh">Upper end of the wind, m/s; null when not written down.</param>
/// <param name="Speed">Best 10 s of the run, m/s.</param>
/// <param name="Error">Its usual error, m/s to either side.</param>
public sealed record ComparedRun(string Outing, DateOnly Day, double? SailArea, double? WindLow, double? WindHigh, double Speed, double Error)
{
    /// <summary>The sail by the area printed on it, to a tenth of a square metre: sails of the same number are the same.</summary>
    public double? Sail => SailArea is double area ? Math.Round(area, 1) : null;
}
