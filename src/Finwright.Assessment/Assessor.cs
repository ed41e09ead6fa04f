using System.Security.Cryptography;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Made;
using Finwright.Assessment.Stages;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Solids;
using Finwright.Making.FromDesign;
using Finwright.Strength.FromDesign;

namespace Finwright.Assessment;

/// <summary>
/// Works designs out: runs the stages, keeps their results, owns the solid kernel. The command line, the page and the tests all
/// go through here.
/// </summary>
/// <remarks>One assessment at a time; the cache may be shared between assessors.</remarks>
public sealed class Assessor : IDisposable
{
    // Curves of some forty fins, in memory.
    private const int CurvesKept = 1024;

    // What needs neither water nor solids.
    private static readonly Stage[] Dry = [FinStages.Bench, FinStages.Vibration];

    private readonly IStageCache _cache;
    private readonly IStageCache _curves;
    private readonly Lazy<ISolidKernel> _kernel;

    /// <summary>Creates an assessor; nothing is loaded yet.</summary>
    /// <param name="cache">Keeps results of stages; a memory of its own when null.</param>
    /// <param name="kernel">Makes the solid kernel on first need; the house's own when null.</param>
    /// <param name="curves">Keeps curves of sections beyond this assessor; see <see cref="CacheFolder.OpenCurves"/>. Null for none.</param>
    public Assessor(IStageCache? cache = null, Func<ISolidKernel>? kernel = null, IStageCache? curves = null)
    {
        MemoryStageCache quick = new(CurvesKept);
        _curves = curves is null ? quick : new TieredStageCache(quick, curves);
        _cache = cache ?? new MemoryStageCache();
        _kernel = new(kernel ?? (() => new ManifoldKernel()));
    }

    /// <summary>Works out a design that was read from text.</summary>
    /// <param name="reading">What came of reading; its findings are part of the answer.</param>
    /// <param name="depth">How far.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>All that could be worked out, and every finding.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public AssessmentResult Assess(DesignReading reading, AssessmentDepth depth, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (reading.Design is not { } design || reading.HasErrors)
            return WrongInput(reading, reading.Design, reading.Findings);
        List<Finding> findings = [.. reading.Findings];
        design = MaterialFiles.Embed(SectionFiles.Embed(design, reading.Folder, findings), reading.Folder, findings);
        design = design with { Pour = ResinFromDesign.Embed(design.Pour, reading.Folder, findings) };
        MaterialsFromDesign.Of(design, findings);
        ResinFromDesign.Of(design.Pour.System, findings);
        if (findings.Exists(finding => finding.IsError))
            return WrongInput(reading, design, findings);
        AssessmentResult result = Run(design, depth, progress, cancellation);
        return result with { Findings = WorstFirst(reading.Locate([.. findings, .. result.Findings])) };
    }

    /// <summary>Works out a design built in code.</summary>
    /// <param name="design">The design.</param>
    /// <param name="depth">How far.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>All that could be worked out, and every finding.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public AssessmentResult Assess(FinDesign design, AssessmentDepth depth, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Assess(new DesignReading(design, DesignValidation.Check(design)), depth, progress, cancellation);
    }

    /// <summary>Works out print, pour and cure of a part that comes as a mesh.</summary>
    /// <param name="name">Name of the part, unless its settings name it.</param>
    /// <param name="mesh">The mesh as it is printed, z up, metres.</param>
    /// <param name="reading">Its settings; their findings are part of the answer.</param>
    /// <param name="depth">Print, pour or cure.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public MakingResult Make(string name, TriangleMesh mesh, PartSettingsReading reading, AssessmentDepth depth, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(reading);
        List<Finding> findings = [.. reading.Findings];
        MakingResult result = reading.Settings is { } settings && !reading.HasErrors
            ? ImportedPart.Make(settings.Name ?? name, mesh, settings, reading.Folder, depth, () => _kernel.Value, findings, progress, cancellation)
            : new() { Name = name, Findings = [], InputIsWrong = true };
        return result with { Findings = WorstFirst(reading.Locate(findings)) };
    }

    /// <summary>Lets go of the kernel.</summary>
    public void Dispose()
    {
        if (_kernel.IsValueCreated)
            _kernel.Value.Dispose();
    }

    private static AssessmentResult WrongInput(DesignReading reading, FinDesign? design, IReadOnlyList<Finding> findings) => new()
    {
        Design = design,
        DesignHash = "",
        Findings = WorstFirst(reading.Locate(findings)),
        InputIsWrong = true,
    };

    private AssessmentResult Run(FinDesign design, AssessmentDepth depth, IProgress<StageProgress>? progress, CancellationToken cancellation)
    {
        StageRun run = new(design, _cache, () => _kernel.Value, progress, cancellation, _curves);
        run.Reach(depth switch
        {
            AssessmentDepth.Shape => [FinStages.Shape],
            AssessmentDepth.Water => [FinStages.Water],
            AssessmentDepth.Structure => [FinStages.Structure],
            AssessmentDepth.Bench => Dry,
            AssessmentDepth.Strength => [.. Dry, FinStages.Loaded],
            AssessmentDepth.Parts => [FinStages.Parts],
            AssessmentDepth.Print => [FinStages.Printed],
            AssessmentDepth.Pour => [FinStages.Poured],
            AssessmentDepth.Cure => [FinStages.Plan],
            AssessmentDepth.Everything => [FinStages.Plan, .. Dry, FinStages.Loaded],
            _ => throw new ArgumentOutOfRangeException(nameof(depth), depth, "Unknown depth."),
        });
        FinAfloat? afloat = run.ValueOf(FinStages.Water);
        Blade? blade = run.ValueOf(FinStages.Shape);
        Planform? planform = blade is null ? null : Planform.Of(blade.SplineOutline);
        return new()
        {
            Design = design,
            DesignHash = HashOf(design),
            Findings = run.Findings,
            InputIsWrong = false,
            Blade = blade,
            Planform = planform,
            Stations = blade is null || planform is null ? [] : SpanStation.Along(blade, planform),
            Skin = run.ValueOf(FinStages.Skin),
            Solids = run.ValueOf(FinStages.Solid),
            Parts = run.ValueOf(FinStages.Parts),
            Polars = run.ValueOf(FinStages.Polars),
            Afloat = afloat,
            Built = run.ValueOf(FinStages.Structure),
            Vibration = run.ValueOf(FinStages.Vibration),
            Bench = run.ValueOf(FinStages.Bench),
            Loaded = run.ValueOf(FinStages.Loaded),
            Printed = run.ValueOf(FinStages.Printed),
            Poured = run.ValueOf(FinStages.Poured),
            Cured = run.ValueOf(FinStages.Cured),
            Plan = run.ValueOf(FinStages.Plan),
            Verdicts = afloat is null ? [] : WaterVerdicts.Of(design, afloat),
            StrengthVerdicts = run.ValueOf(FinStages.Loaded) is { } loaded ? StrengthVerdicts.Of(design, loaded, run.ValueOf(FinStages.Vibration)) : [],
        };
    }

    private static string HashOf(FinDesign design) => Convert.ToHexStringLower(SHA256.HashData(DesignWriter.Canonical(design)));

    // A stable sort: findings of one severity stay in the order of the work.
    private static IReadOnlyList<Finding> WorstFirst(IEnumerable<Finding> findings) => [.. findings.OrderByDescending(finding => finding.Severity)];
}
