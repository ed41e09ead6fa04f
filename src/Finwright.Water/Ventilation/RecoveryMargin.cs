using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>Whether a fin that has drawn air grips again by itself.</summary>
internal static class RecoveryMargin
{
    private const string LiftHeld = "lift coefficient held";

    // Judgement: beyond the aspect ratios measured the bound may be off by a third.
    private const double RelativeUncertainty = 0.33;

    /// <summary>The margin, the cavity's fate, and the side force below which water comes back, N.</summary>
    public static (Margin Margin, CavityFate Fate, double? SideForce) Of(VentilationCase state)
    {
        const string name = "grips again after letting go";
        double lift = state.SideForce / (state.Water.DynamicPressure(state.Speed) * state.Area);
        double aspect = state.Span * state.Span / state.Area;
        double froude = DepthFroude.Number(state.Speed, state.Span);
        if (lift <= 0)
            return (Bare(name, froude, MarginState.Holds, "The fin carries no side force, so air has no reason to stay."), CavityFate.NoLoad, null);
        if (aspect is < 0.3 or > 12)
            return (Bare(name, froude, MarginState.NotKnown, $"Span over mean chord is {aspect:0.0}; the published bound is not used outside 0.3 to 12."), CavityFate.MayStay, null);

        double washout = DepthFroude.Washout(aspect, lift), full = DepthFroude.FullVentilation(lift);
        // The bound goes as 1/√CL, and CL at a given side force as 1/V²: speed drops out, and only unloading brings the water back.
        double recovers = state.SideForce * washout / froude * washout / froude;
        CavityFate fate = froude < washout ? CavityFate.WashesOut : froude < full ? CavityFate.MayStay : CavityFate.Stays;
        string reach = aspect > DepthFroude.MeasuredAspectRatio ? $" Measured up to {DepthFroude.MeasuredAspectRatio:0.0} of span over chord; this fin has {aspect:0.0}, so the bound is drawn on." : "";
        string meaning = fate switch
        {
            CavityFate.WashesOut => "Air that gets in is washed out again.",
            CavityFate.MayStay => $"Air that gets in may stay; it surely leaves when the fin is unloaded below about {recovers:0} N.",
            _ => $"Air that gets in stays: once the fin lets go it grips again only when it is unloaded below about {recovers:0} N, so ease the back foot. Slowing down with the same push does not help.",
        };
        Margin margin = Bare(name, froude, fate is CavityFate.WashesOut ? MarginState.Holds : MarginState.Tight, $"Depth Froude number {froude:0.0}; a cavity washes out below {washout:0.0} and surely stays above {full:0.0}. {meaning}{reach}") with
        {
            Limit = washout,
            Uncertainty = RelativeUncertainty * washout,
            Onset = new(DepthFroude.Speed(washout, state.Span), OnsetDirection.Faster, LiftHeld),
        };
        return (margin, fate, recovers);
    }

    private static Margin Bare(string name, double froude, MarginState state, string explanation) => new()
    {
        Name = name,
        Value = froude,
        Certainty = Certainty.Published,
        State = state,
        Explanation = explanation,
    };
}
