using Finwright.Numerics;

namespace Finwright.Strength.Plates;

/// <summary>How the plate is divided.</summary>
public sealed record PlateOptions
{
    /// <summary>Elements along the chord, 2 or more.</summary>
    public int ChordElements { get; init; } = 8;

    /// <summary>Elements along the span, 2 or more.</summary>
    public int SpanElements { get; init; } = 14;

    /// <summary>Thickness below which the plate is taken as this thick, metres: at nose and rounded tip it runs to nothing. 0.2 mm is half an extrusion line; its stiffness is nil beside the rest (judgement).</summary>
    public double LeastThickness { get; init; } = 0.2e-3;

    /// <summary>How much narrower the elements are toward the nose: 0 all the same; 1 shrinking to nothing.</summary>
    public double NoseGrading { get; init; } = 0.5;

    /// <summary>The mesh ends where the chord falls below this share of the largest chord.</summary>
    public double LeastChordShare { get; init; } = 0.02;

    internal static void Check(PlateOptions options)
    {
        Require.AtLeast(options.ChordElements, 2);
        Require.AtLeast(options.SpanElements, 2);
        Require.Positive(options.LeastThickness);
        Require.Between(options.NoseGrading, 0, 0.9);
        Require.Between(options.LeastChordShare, 1e-3, 0.5);
    }
}

/// <summary>Factors on the stiffness of the parts, as a bench test finds them.</summary>
/// <param name="Wall">Walls.</param>
/// <param name="Core">Core, and the sheet in it.</param>
/// <param name="Rod">Rods.</param>
/// <param name="Root">Springs of the root against bending, which is where a joint opens; without effect on a clamped one.</param>
public sealed record StiffnessFactors(double Wall = 1, double Core = 1, double Rod = 1, double Root = 1)
{
    /// <summary>All as given.</summary>
    public static StiffnessFactors One { get; } = new();
}

/// <summary>A force on the blade along z.</summary>
/// <param name="X">Where, metres.</param>
/// <param name="Y">At what depth, metres.</param>
/// <param name="Force">Newtons, positive to starboard.</param>
public readonly record struct PlateLoad(double X, double Y, double Force);

/// <summary>Whether a plate calculation can be trusted to have been carried out.</summary>
public enum PlateStatus
{
    /// <summary>Done; balances hold.</summary>
    Solved,

    /// <summary>The stiffness is not positive definite: the root holds too little, or a factor is too small.</summary>
    NotHeld,

    /// <summary>Solved, but loads and reactions, or work and energy, do not balance to <see cref="PlateSolution.BalanceLimit"/>.</summary>
    OutOfBalance,

    /// <summary>An iteration did not settle.</summary>
    NotConverged,
}
