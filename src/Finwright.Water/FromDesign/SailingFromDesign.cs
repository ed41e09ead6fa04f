using Finwright.Design;
using Finwright.Numerics;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;

namespace Finwright.Water.FromDesign;

/// <summary>Rider, board, sail and speeds of a design, in SI units.</summary>
public static class SailingFromDesign
{
    /// <summary>What decides the load on the fin.</summary>
    /// <param name="brief">Every value within the range of its field, speeds rising.</param>
    public static SailingBrief Brief(Brief brief)
    {
        ArgumentNullException.ThrowIfNull(brief);
        return new()
        {
            RiderMass = brief.RiderMassKg,
            HangOut = brief.HangOutMm * 1e-3,
            SailEffortHeight = brief.SailEffortHeightMm * 1e-3,
            SailArea = brief.SailAreaM2,
            BoardWidth = brief.BoardWidthMm * 1e-3,
            GettingGoingSpeed = brief.GettingGoingSpeedMPerS,
            CruiseSpeed = brief.CruiseSpeedMPerS,
            TopSpeed = brief.TopSpeedMPerS,
            GivenSideForce = brief.SideForceN,
        };
    }

    /// <summary>Ways for air to the root.</summary>
    /// <param name="brief">The board.</param>
    /// <param name="rootChord">Chord at the root, m.</param>
    /// <param name="rootGap">Gap between hull and root, m: 0 for a base that seats.</param>
    /// <param name="boltHolesSealed">Whether the bolt holes are sealed; null when not known.</param>
    /// <remarks>The box's middle is taken under the root's mid-chord; half the tail's width and the run to the tail end decide, whichever is less.</remarks>
    public static AirPath AirPath(Brief brief, double rootChord, double rootGap = 0, bool? boltHolesSealed = null)
    {
        ArgumentNullException.ThrowIfNull(brief);
        double behind = brief.FinToTailMm * 1e-3 - 0.5 * Require.Positive(rootChord), beside = 0.5e-3 * brief.TailWidthMm;
        return new()
        {
            RootGap = rootGap,
            BoltHolesSealed = boltHolesSealed,
            HullCover = Math.Min(behind, beside),
            RootChord = rootChord,
        };
    }
}
