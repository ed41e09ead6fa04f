using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>The greatest suction against the pressure that lets water boil.</summary>
internal static class CavitationMargin
{
    // Judgement: what print errors and nicks add to a suction peak, and how well a panel method knows it.
    private const double TightRatio = 0.7, PeakUncertainty = 0.2;

    public static Margin Of(VentilationCase state)
    {
        double ratio = double.NegativeInfinity;
        StripCondition worst = default;
        foreach (StripCondition strip in state.Strips)
        {
            double here = -strip.MinimumCp / Cavitation.Number(state.Water, strip.Depth, state.Speed);
            if (here > ratio)
                (worst, ratio) = (strip, here);
        }

        const string name = "cavitation";
        if (state.Strips.Count == 0)
            return new() { Name = name, Certainty = Certainty.Derived, State = MarginState.NotKnown, Explanation = "The pressure over the strips is not known." };
        double value = Math.Max(ratio, 0);
        return new()
        {
            Name = name,
            Value = value,
            Limit = 1,
            Uncertainty = PeakUncertainty * value,
            Certainty = Certainty.Derived,
            State = Margin.Below(value, TightRatio, 1),
            Onset = Cavitation.InceptionSpeed(state.Water, worst.Depth, worst.MinimumCp) is double speed
                ? new(speed, OnsetDirection.Faster, "angle of attack held; with the side force held the angle falls and it begins later")
                : null,
            Explanation = $"The lowest pressure, at {worst.Depth / state.Span:P0} of the span, uses up {value:P0} of the drop at which water boils. Nicks and rough spots bring it on sooner.",
        };
    }
}
