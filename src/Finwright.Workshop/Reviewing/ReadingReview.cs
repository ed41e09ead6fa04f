using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;

namespace Finwright.Workshop.Reviewing;

/// <summary>One reading of the bench: predicted, with its range, and read.</summary>
/// <param name="Session">Number of the readings that it belongs to.</param>
/// <param name="TakenOn">The day.</param>
/// <param name="RootHold">How the root was held.</param>
/// <param name="MassKg">The weight.</param>
/// <param name="AtMm">Where it hung, from the hull plane.</param>
/// <param name="AtChord">Where along the chord.</param>
/// <param name="ReadAtMm">Where it was read, from the hull plane.</param>
/// <param name="ReadChord">Where along the chord; without meaning for a twist.</param>
/// <param name="ReadShare">Depth at which it was read over the span.</param>
/// <param name="Quantity">What was read.</param>
/// <param name="Against">Prediction and reading, in mm or degrees.</param>
public sealed record ReadingReview(
    long Session, DateOnly TakenOn, RootHold RootHold, double MassKg, double AtMm, ChordPlace AtChord, double ReadAtMm, ChordPlace ReadChord, double ReadShare, BenchQuantity Quantity, ReviewLine Against)
{
    // A prediction below this many standard deviations of its reading tells nothing by a ratio.
    private const double TellingRatio = 10;

    /// <summary>Logarithm of read over predicted with its standard deviation; null where the prediction is too small to tell.</summary>
    internal (double Value, double Deviation)? LogRatio =>
        Against is { Ratio: > 0 and double ratio, Predicted: double predicted, Doubt: double doubt } && Math.Abs(predicted) >= TellingRatio * doubt / 2
            ? (Math.Log(ratio), doubt / 2 / Math.Abs(Against.Measured!.Value))
            : null;

    internal static ReadingReview Of(Bench.BenchSession session, BenchReadingLine line, BenchMeasurement own, Ranged predicted, double span)
    {
        bool turns = own.Quantity is BenchQuantity.Twist;
        double unit = turns ? 180 / Math.PI : 1e3;
        ReviewLine against = new(
            turns ? "bench.twist" : "bench.deflection", turns ? "twist" : "deflection", turns ? "°" : "mm",
            unit * predicted.Value, unit * predicted.Low, unit * predicted.High, unit * own.Value, 2 * unit * own.Deviation, turns ? 2 : 1);
        return new(session.Id, session.TakenOn, session.RootHold, line.MassKg, line.AtMm, line.AtChord, line.ReadAtMm, line.ReadChord, own.ReadDepth / span, own.Quantity, against);
    }
}
