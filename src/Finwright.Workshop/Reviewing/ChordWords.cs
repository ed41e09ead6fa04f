using Finwright.Design;

namespace Finwright.Workshop.Reviewing;

/// <summary>Places along the chord, within a sentence.</summary>
public static class ChordWords
{
    /// <summary>For example "trailing edge".</summary>
    public static string Of(ChordPlace place) => place switch
    {
        ChordPlace.LeadingEdge => "leading edge",
        ChordPlace.MidChord => "mid-chord",
        ChordPlace.TrailingEdge => "trailing edge",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };
}
