using Finwright.Design;
using Finwright.Geometry.Outlines;
using Finwright.Water.Spot;

namespace Finwright.Water.FromDesign;

/// <summary>Weed and depth of the spot a design is meant for.</summary>
public static class SpotFromDesign
{
    // Judgement: a single strand on half of the edge is soon shaken off; under mats next to nothing may hang.
    private const double NeededAmongStrands = 0.5, NeededUnderMats = 0.9;

    /// <summary>Whether weed slides off.</summary>
    /// <param name="brief">The spot.</param>
    /// <param name="planform">The fin's outline.</param>
    public static Margin Weed(Brief brief, Planform planform)
    {
        ArgumentNullException.ThrowIfNull(brief);
        return LeadingEdgeShedding.Of(planform).Judge(NeededShare(brief.Weed));
    }

    /// <summary>Whether the fin is short enough.</summary>
    /// <param name="brief">The spot.</param>
    /// <param name="planform">The fin's outline.</param>
    public static Margin Draught(Brief brief, Planform planform)
    {
        ArgumentNullException.ThrowIfNull(brief);
        ArgumentNullException.ThrowIfNull(planform);
        return Spot.Draught.Judge(planform.Span, brief.DraughtLimitMm * 1e-3);
    }

    /// <summary>Share of the leading edge that must shed weed.</summary>
    /// <param name="weed">How much weed floats there.</param>
    public static double NeededShare(Weed weed) => weed switch
    {
        Design.Weed.None => 0,
        Design.Weed.Some => NeededAmongStrands,
        Design.Weed.Thick => NeededUnderMats,
        _ => throw new ArgumentOutOfRangeException(nameof(weed), weed, "Not an amount of weed."),
    };
}
