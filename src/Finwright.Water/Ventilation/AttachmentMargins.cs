using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>Whether the flow keeps to the blade: everywhere, and above all near the root.</summary>
internal static class AttachmentMargins
{
    // Judgement: chop and steering swing the angle by some tenths of it, and thin sections let go suddenly.
    private const double TightRatio = 0.7, GreatestRatio = 0.85;

    // Boundary-layer methods of the integral kind put the stall 5 to 10 % too high (from memory).
    private const double StallUncertainty = 0.1;

    // Judgement: separation ahead of nine tenths of the chord within the top 15 % of the span makes a way for air along the hull.
    private const double LeastSeparation = 0.9, TightSeparation = 0.95, RootZone = 0.15;
    private const double SeparationUncertainty = 0.05;

    private const string SideForceHeld = "side force held, so the angle rises as the speed squared falls";

    public static Margin Attachment(VentilationCase state)
    {
        const string name = "reserve before stall";
        if (state.Strips.Count == 0)
            return Unknown(name);
        StripCondition worst = state.Strips[0];
        double ratio = -1;
        foreach (StripCondition strip in state.Strips)
        {
            if (strip.AngleOfAttack / strip.StallAngle > ratio)
                (worst, ratio) = (strip, strip.AngleOfAttack / strip.StallAngle);
        }

        return new()
        {
            Name = name,
            Value = ratio,
            Limit = GreatestRatio,
            Uncertainty = StallUncertainty * ratio,
            Certainty = Certainty.Judgement,
            State = Margin.Below(ratio, TightRatio, GreatestRatio),
            Onset = ratio > 0 ? new(state.Speed * Math.Sqrt(ratio), OnsetDirection.Slower, SideForceHeld) : null,
            Explanation = $"At {worst.Depth / state.Span:P0} of the span the section works at {Degrees(worst.AngleOfAttack)} of the {Degrees(worst.StallAngle)} degrees where it stalls. Stalled flow near the surface lets air in.",
        };
    }

    public static Margin RootSeparation(VentilationCase state)
    {
        const string name = "attached flow at the root";
        if (state.Strips.Count == 0)
            return Unknown(name);
        double separation = 1, shallowest = double.MaxValue, there = 1;
        bool inZone = false;
        foreach (StripCondition strip in state.Strips)
        {
            if (strip.Depth < shallowest)
                (shallowest, there) = (strip.Depth, strip.Separation);
            if (strip.Depth <= RootZone * state.Span)
                (separation, inZone) = (Math.Min(separation, strip.Separation), true);
        }

        // Strips so wide that none has its middle in the zone: the uppermost stands for it.
        double value = inZone ? separation : there;
        return new()
        {
            Name = name,
            Value = value,
            Limit = LeastSeparation,
            MustStayAbove = true,
            Uncertainty = SeparationUncertainty,
            Certainty = Certainty.Judgement,
            State = value < LeastSeparation ? MarginState.Fails : value < TightSeparation ? MarginState.Tight : MarginState.Holds,
            Onset = state.RootSeparationAngleRatio is double ratio ? new(state.Speed / Math.Sqrt(ratio), OnsetDirection.Slower, SideForceHeld) : null,
            Explanation = $"In the top {RootZone:P0} of the span the flow leaves the suction side at {value:0.00} of the chord. Slow flow there is where air finds its way under the hull.",
        };
    }

    private static string Degrees(double radians) => $"{radians * 180 / Math.PI:0.0}";

    private static Margin Unknown(string name) => new()
    {
        Name = name,
        Certainty = Certainty.Judgement,
        State = MarginState.NotKnown,
        Explanation = "The flow over the strips is not known.",
    };
}
