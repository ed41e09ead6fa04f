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
    /// <param name="before">The last answer: its sections are taken, and its curves over leeway stand in until <see cref="WithCurves"/>. Null leaves the water out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Water, strength and bench; nothing of print and pour.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static AssessmentResult Of(FinDesign design, Blade blade, AssessmentResult? before, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        FinPolars? sections = before?.Polars;
        Task<FinBuilt> building = Task.Run(() => FinBuilt.Of(design, blade), cancellation);
        FinAfloat? afloat = sections is null ? null : AfloatWork.WithoutCurves(design, blade, sections, progress: null, cancellation);
        FinBuilt built = building.GetAwaiter().GetResult();
        Task<FinOnBench> hanging = Task.Run(() => FinOnBench.Of(design.Prove, blade, built), cancellation);
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
            Afloat = afloat is null || before?.Afloat is not { } curves ? afloat
                : afloat with { Sweep = curves.Sweep, SweepUnderMirror = curves.SweepUnderMirror, SweepUnderBareSurface = curves.SweepUnderBareSurface },
            Built = built,
            Bench = hanging.GetAwaiter().GetResult(),
            Loaded = loaded,
            Verdicts = afloat is null ? [] : WaterVerdicts.Of(design, afloat),
            StrengthVerdicts = loaded is null ? [] : StrengthVerdicts.Of(design, loaded, vibration: null),
        };
    }

    /// <summary>A quick answer with curves over leeway of its own.</summary>
    /// <param name="quick">The answer.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static AssessmentResult WithCurves(AssessmentResult quick, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(quick);
        return quick.Afloat is { } afloat ? quick with { Afloat = AfloatWork.WithCurves(afloat, cancellation) } : quick;
    }
}
