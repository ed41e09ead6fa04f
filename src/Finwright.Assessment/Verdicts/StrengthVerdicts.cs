using Finwright.Assessment.Loaded;
using Finwright.Design;

namespace Finwright.Assessment.Verdicts;

/// <summary>Judges whether a fin bends, twists, opens or breaks. Estimates, never a certificate.</summary>
public static class StrengthVerdicts
{
    /// <summary>All verdicts, worst first, in a steady order among equals.</summary>
    /// <param name="design">The design.</param>
    /// <param name="loaded">What the loads of sailing do.</param>
    /// <param name="vibration">How it swings; null when it was not worked out.</param>
    public static IReadOnlyList<Verdict> Of(FinDesign design, FinLoaded loaded, FinVibration? vibration)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(loaded);
        return WaterVerdicts.WorstFirst(
        [
            .. BreakageVerdicts.Of(loaded),
            .. JointVerdicts.Of(loaded),
            .. BendingVerdicts.Of(loaded, vibration, design.Brief.TopSpeedMPerS),
        ]);
    }
}
