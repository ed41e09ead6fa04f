using Finwright.Workshop.Tracks;

namespace Finwright.Page.Outings;

/// <summary>Speeds in a few bands, each with a colour and a width of line: safe for colour-blind readers, and told by more than colour.</summary>
public sealed class SpeedColours
{
    // Even steps of the published cividis map, dark to light.
    private static readonly string[] Colours = ["#00204d", "#31446b", "#666970", "#958f78", "#cbba69", "#ffea46"];

    // Steps between bands that are easily read, knots.
    private static readonly double[] Steps = [2, 3, 4, 5, 6, 8, 10, 15];

    private SpeedColours(double step) => StepKnots = step;

    /// <summary>From one band to the next, knots.</summary>
    public double StepKnots { get; }

    /// <summary>How many bands there are.</summary>
    public static int Bands => Colours.Length;

    /// <summary>Bands that reach to a speed.</summary>
    /// <param name="fastest">The fastest that is to be shown, m/s.</param>
    public static SpeedColours UpTo(double fastest) => new(Array.Find(Steps, step => step * Bands >= fastest / SpeedUnits.Knot) is var step and > 0 ? step : Steps[^1]);

    /// <summary>The band of a speed, from 0.</summary>
    /// <param name="speed">m/s.</param>
    public int Of(double speed) => Math.Clamp((int)(speed / SpeedUnits.Knot / StepKnots), 0, Bands - 1);

    /// <summary>Colour of a band.</summary>
    public static string Colour(int band) => Colours[band];

    /// <summary>Width of its line, in units of the drawing.</summary>
    public static double Width(int band) => 1.2 + 0.6 * band;
}
