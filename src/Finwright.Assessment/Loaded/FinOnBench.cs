using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;

namespace Finwright.Assessment.Loaded;

/// <summary>What the bench should show, when it could be worked out.</summary>
public sealed record FinOnBench
{
    /// <summary>Why there is no prediction, and what to do; null when there is.</summary>
    public string? Problem { get; init; }

    /// <summary>The prediction; null when there is a <see cref="Problem"/>.</summary>
    public BenchPrediction? Prediction { get; init; }

    internal static FinOnBench Of(Prove prove, Blade blade, FinBuilt built)
    {
        if (built.Structure is not { } structure)
            return new() { Problem = built.Problem };
        BenchPrediction prediction = BenchTest.Predict(structure, new(prove.MassKg, prove.AtSpanPercent / 100 * blade.Span, ChordShare.Of(prove.AtChord)));
        // A blade that soft may be out of balance by rounding as well; what to do is the same.
        if (prediction.DeflectionShare > CaseLoaded.FarthestShare)
            return new() { Problem = $"The blade would bend by more than {100 * CaseLoaded.FarthestShare:0} % of its span under this weight, which a linear calculation does not reach. Hang {Less(prove.MassKg, prediction.DeflectionShare):0.##} kg or less, or closer to the root." };
        return prediction.Status is PlateStatus.Solved
            ? new() { Prediction = prediction }
            : new() { Problem = "The loads and what the root gives back do not balance, so the deflections are not shown. Look for a blade that runs out to nothing, or materials that differ by a factor of thousands." };
    }

    // A weight that bends the blade as far as a linear calculation is good for.
    private static double Less(double mass, double share) => PlateSolution.LinearShare * mass / share;
}
