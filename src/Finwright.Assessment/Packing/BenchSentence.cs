using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Plates;

namespace Finwright.Assessment.Packing;

/// <summary>What the bench should show, in a sentence or two.</summary>
public static class BenchSentence
{
    /// <summary>The sentence.</summary>
    public static string Of(FinDesign design, BenchPrediction prediction)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(prediction);
        BenchLoad load = prediction.Load;
        StationBend tip = prediction.AtTip;
        string twist = $"{double.RadiansToDegrees(Math.Abs(tip.Twist.Value)):0.00}° {(tip.Twist.Value >= 0 ? "trailing edge first" : "leading edge first")}";
        string crack = prediction.FirstCrack is { } first ? $" The first crack is to be expected at {first.Reserve:0.0} times this weight, in the {StressSummary.Words(first)}." : "";
        return $"{load.Mass:0.##} kg hung {1e3 * load.Depth:0} mm below the hull {Where(design.Prove.AtChord)} should move the middle of the tip {1e3 * tip.MidChord.Value:0.0} mm ({1e3 * tip.MidChord.Low:0.0} to {1e3 * tip.MidChord.High:0.0}) and turn it {twist}.{crack}";
    }

    /// <summary>What is assumed, and what to take care of.</summary>
    public static IReadOnlyList<string> Notes(FinDesign design, BenchPrediction prediction)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(prediction);
        List<string> notes =
        [
            "An estimate, never a certificate: the range is what materials, print and root leave open. Makers' data sheets go before it.",
            design.Base.RootHold switch
            {
                RootHold.Clamped => "The root is taken as held rigidly along its whole length; a real base gives way and the blade moves more.",
                RootHold.Elastic => "The base is taken to give in its box, the joint as whole.",
                _ => "The root is held as in the board: the base gives in its box, and a joint may open.",
            },
            "Hang the weight low over something soft, stand clear of the tip, wear eye protection: a fin that breaks throws pieces.",
            "Read after half a minute, take the weight off, read again: what stays is creep or a loose root, not stiffness.",
        ];
        if (prediction.DeflectionShare > PlateSolution.LinearShare)
            notes.Insert(0, $"The blade bends by {100 * prediction.DeflectionShare:0} % of its span: beyond {100 * PlateSolution.LinearShare:0} % the true deflection is smaller than this linear answer. Hang less weight to compare.");
        return notes;
    }

    private static string Where(ChordPlace place) => place switch
    {
        ChordPlace.LeadingEdge => "on the leading edge",
        ChordPlace.MidChord => "at mid-chord",
        ChordPlace.TrailingEdge => "on the trailing edge",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };
}
