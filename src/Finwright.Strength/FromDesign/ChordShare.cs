using Finwright.Design;

namespace Finwright.Strength.FromDesign;

/// <summary>Places along the chord as shares of it.</summary>
public static class ChordShare
{
    /// <summary>Share of the chord of a named place: 0 at the leading edge, 1 at the trailing edge.</summary>
    public static double Of(ChordPlace place) => place switch
    {
        ChordPlace.LeadingEdge => 0,
        ChordPlace.MidChord => 0.5,
        ChordPlace.TrailingEdge => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };
}
