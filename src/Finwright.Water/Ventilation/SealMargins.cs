using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>Whether air has a way to the root: past the hull's edge, through a gap, through the bolt holes.</summary>
internal static class SealMargins
{
    // Judgement: half a millimetre is what a fitted base leaves; a millimetre and more is a slit that feeds air from the box.
    private const double TightGap = 0.0005, GreatestGap = 0.001;

    // Judgement: a section's suction is felt about a chord around it, most of it within half a chord.
    private const double TightCover = 0.75, LeastCover = 0.25;

    public static Margin Seal(AirPath? path)
    {
        const string name = "seal at the root";
        if (path is null)
            return Unknown(name);
        MarginState state = path.BoltHolesSealed is false ? MarginState.Fails : Margin.Below(path.RootGap, TightGap, GreatestGap);
        string bolts = path.BoltHolesSealed switch
        {
            true => "The bolt holes are sealed.",
            false => "The bolt holes are open: air is drawn down them to the root. Put a sealing washer under each bolt head.",
            null => "Bolt holes must be sealed under the heads, or air is drawn down them (common practice).",
        };
        return new()
        {
            Name = name,
            Value = path.RootGap,
            Limit = GreatestGap,
            Uncertainty = TightGap / 2,
            Certainty = Certainty.Judgement,
            State = state,
            Explanation = $"Gap between hull and root {path.RootGap * 1000:0.0} mm. {bolts}",
        };
    }

    public static Margin HullCover(AirPath? path)
    {
        const string name = "hull over the root";
        if (path is null)
            return Unknown(name);
        double value = path.HullCover / path.RootChord;
        return new()
        {
            Name = name,
            Value = value,
            Limit = LeastCover,
            MustStayAbove = true,
            Uncertainty = LeastCover / 2,
            Certainty = Certainty.Judgement,
            State = value < LeastCover ? MarginState.Fails : value < TightCover ? MarginState.Tight : MarginState.Holds,
            Explanation = $"From the root to the nearest edge of the hull it is {path.HullCover * 1000:0} mm, {value:0.0} root chords. The hull keeps air off the fin while it lies flat; heel, a rail out of the water, or chop under the tail opens the way.",
        };
    }

    private static Margin Unknown(string name) => new()
    {
        Name = name,
        Certainty = Certainty.Judgement,
        State = MarginState.NotKnown,
        Explanation = "Board and box are not known.",
    };
}
