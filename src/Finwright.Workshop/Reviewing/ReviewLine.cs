using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Reviewing;

/// <summary>How a measurement stands to its prediction.</summary>
public enum ReviewState
{
    /// <summary>Within the range of the prediction and the doubt of the measurement.</summary>
    Within,

    /// <summary>Below it.</summary>
    Below,

    /// <summary>Above it.</summary>
    Above,

    /// <summary>It was not measured.</summary>
    NotMeasured,

    /// <summary>It was measured, and there is no prediction.</summary>
    NotPredicted,
}

/// <summary>One quantity of a build: predicted, with its range, and measured.</summary>
/// <param name="Key">Key of the result.</param>
/// <param name="Name">Name in plain words.</param>
/// <param name="Unit">Unit as a person reads it.</param>
/// <param name="Predicted">Predicted; null when it was not.</param>
/// <param name="Low">Lower end of its range; null when none is known.</param>
/// <param name="High">Upper end.</param>
/// <param name="Measured">Measured; null when it was not.</param>
/// <param name="Doubt">How far the measurement may be off, in the unit: two standard deviations.</param>
/// <param name="Decimals">Decimals that the numbers deserve.</param>
public sealed record ReviewLine(string Key, string Name, string Unit, double? Predicted, double? Low, double? High, double? Measured, double Doubt, int Decimals)
{
    /// <summary>Measured over predicted; null where either is missing or nothing is predicted.</summary>
    public double? Ratio => Measured is double measured && Predicted is double predicted && predicted is not 0 ? measured / predicted : null;

    /// <summary>How it stands. The range of the prediction and the doubt of the measurement are joined as independent.</summary>
    public ReviewState State
    {
        get
        {
            if (Measured is not double measured)
                return ReviewState.NotMeasured;
            if (Predicted is not double predicted)
                return ReviewState.NotPredicted;
            if (measured < predicted - double.Hypot(predicted - (Low ?? predicted), Doubt))
                return ReviewState.Below;
            return measured > predicted + double.Hypot((High ?? predicted) - predicted, Doubt) ? ReviewState.Above : ReviewState.Within;
        }
    }

    /// <summary>Whether it was measured and lies outside.</summary>
    public bool IsOff => State is ReviewState.Below or ReviewState.Above;

    internal static ReviewLine Of(string key, string name, string unit, int decimals, ResultLine? predicted, double? measured, Func<double, double> doubt) =>
        new(key, name, predicted?.Unit ?? unit, predicted?.Value, predicted?.Low, predicted?.High, measured, measured is double own ? doubt(own) : 0, predicted?.Decimals ?? decimals);
}
