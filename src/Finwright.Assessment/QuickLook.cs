using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;

namespace Finwright.Assessment;

/// <summary>
/// Water and strength of a design that is being changed, while the hand is still moving: the sections are not solved anew but taken
/// from the last full answer, everything else is worked out as always.
/// </summary>
/// <remarks>
/// Right for another outline, brief, base or hardware, up to the small effect of another Reynolds number. Another thickness or another
/// section shows only in strength until the full answer comes: whoever shows the result says so.
/// </remarks>
public static class QuickLook
{
    /// <summary>Works a design out with sections solved before.</summary>
    /// <param name="design">The design, without errors of its own.</param>
    /// <param name="blade">Its blade.</param>
    /// <param name="sections">The sections, from the last full answer; null leaves the water out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Water, strength and bench; nothing of print and pour.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static AssessmentResult Of(FinDesign design, Blade blade, FinPolars? sections, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        FinAfloat? afloat = sections is null ? null : AfloatWork.Of(design, blade, sections, progress: null, cancellation);
        cancellation.ThrowIfCancellationRequested();
        FinBuilt built = FinBuilt.Of(design, blade);
        cancellation.ThrowIfCancellationRequested();
        FinLoaded? loaded = afloat is null ? null : LoadedWork.Of(built, afloat, progress: null, cancellation);
        Planform planform = Planform.Of(blade.SplineOutline);
        return new()
        {
            Design = design,
            DesignHash = "",
            Findings = [],
            InputIsWrong = false,
            Blade = blade,
            Planform = planform,
            Stations = SpanStation.Along(blade, planform),
            Polars = sections,
            Afloat = afloat,
            Built = built,
            Bench = FinOnBench.Of(design.Prove, blade, built),
            Loaded = loaded,
            Verdicts = afloat is null ? [] : WaterVerdicts.Of(design, afloat),
            StrengthVerdicts = loaded is null ? [] : StrengthVerdicts.Of(design, loaded, vibration: null),
        };
    }
}
