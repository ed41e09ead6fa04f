using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry.Solids;

namespace Finwright.Assessment.Tests;

/// <summary>The stages of a real fin: what a change makes them do again.</summary>
public sealed class AssessorTests : IDisposable
{
    private static readonly FinDesign Design = new()
    {
        Name = "test",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 190, RootChordMm = 110 } },
        Base = new() { Fixing = Fixing.BaseOnly },
    };

    private readonly CountingKernel _kernel = new();
    private readonly Assessor _assessor;

    public AssessorTests() => _assessor = new(kernel: () => _kernel);

    public void Dispose() => _assessor.Dispose();

    [Fact]
    public void Assess_twice_builds_the_solids_once()
    {
        AssessmentResult first = Assess(Design);
        int calls = _kernel.Calls;
        AssessmentResult second = Assess(Design);
        Assert.False(first.HasErrors, string.Join('\n', first.Findings));
        Assert.True(calls > 0);
        Assert.Equal(calls, _kernel.Calls);
        Assert.Same(first.Parts, second.Parts);
    }

    [Fact]
    public void Assess_after_another_bench_weight_rider_resin_or_note_builds_no_solid()
    {
        AssessmentResult first = Assess(Design);
        int calls = _kernel.Calls;
        AssessmentResult second = Assess(Design with
        {
            Prove = new() { MassKg = 22 },
            Brief = new() { RiderMassKg = 64 },
            Pour = new() { RoomCelsius = 24 },
            Note = "softer tip",
        });
        Assert.Equal(calls, _kernel.Calls);
        Assert.Same(first.Parts, second.Parts);
        Assert.NotEqual(first.DesignHash, second.DesignHash, StringComparer.Ordinal);
    }

    [Fact]
    public void Assess_for_another_bed_lofts_no_new_skin_and_places_nothing_anew()
    {
        AssessmentResult first = Assess(Design);
        AssessmentResult second = Assess(Design with { Print = Design.Print with { BedXMm = 300, BedYMm = 300 } });
        Assert.Same(first.Skin, second.Skin);
        Assert.Same(first.Solids, second.Solids);
        Assert.NotSame(first.Parts, second.Parts);
    }

    [Fact]
    public void Assess_of_another_span_lofts_a_new_skin()
    {
        AssessmentResult first = Assess(Design);
        AssessmentResult second = Assess(Design with { Shape = Design.Shape with { Outline = Design.Shape.Outline with { SpanMm = 185 } } });
        Assert.NotSame(first.Skin, second.Skin);
        Assert.Equal(0.185, second.Planform!.Span, 1e-9);
    }

    [Fact]
    public void Assess_to_the_shape_needs_no_kernel()
    {
        AssessmentResult result = _assessor.Assess(Design, AssessmentDepth.Shape, cancellation: TestContext.Current.CancellationToken);
        Assert.NotNull(result.Planform);
        Assert.Null(result.Parts);
        Assert.Equal(0, _kernel.Calls);
    }

    [Fact]
    public void Assess_of_a_design_out_of_range_tries_no_geometry_and_says_why()
    {
        AssessmentResult result = Assess(Design with { Shape = Design.Shape with { TrailingEdgeMm = double.NaN } });
        Assert.True(result.InputIsWrong);
        Assert.True(result.HasErrors);
        Assert.Null(result.Blade);
    }

    [Fact]
    public void Assess_stopped_inside_the_kernel_can_be_run_again()
    {
        using CancellationTokenSource stop = new();
        _kernel.BeforeCall = stop.Cancel;
        Assert.ThrowsAny<OperationCanceledException>(() => _assessor.Assess(Design, AssessmentDepth.Parts, cancellation: stop.Token));
        _kernel.BeforeCall = null;
        Assert.NotNull(Assess(Design).Parts);
    }

    [Fact]
    public void Assess_reports_rising_progress_that_ends_at_1()
    {
        Reports reports = new();
        _assessor.Assess(Design, AssessmentDepth.Parts, reports, TestContext.Current.CancellationToken);
        Assert.Equal(reports.Fractions.Order(), reports.Fractions);
        Assert.Equal(1, reports.Fractions[^1]);
        Assert.True(reports.Fractions.Count > 6);
    }

    private AssessmentResult Assess(FinDesign design) => _assessor.Assess(design, AssessmentDepth.Parts, cancellation: TestContext.Current.CancellationToken);

    private sealed class Reports : IProgress<StageProgress>
    {
        public List<double> Fractions { get; } = [];

        public void Report(StageProgress value) => Fractions.Add(value.Fraction);
    }

    /// <summary>The real kernel with a counter in front.</summary>
    private sealed class CountingKernel : ISolidKernel
    {
        private readonly ManifoldKernel _inner = new();

        public int Calls { get; private set; }

        public Action? BeforeCall { get; set; }

        public IReadOnlyList<SolidResult> Evaluate(IReadOnlyList<SolidExpression> solids, CancellationToken cancellation = default)
        {
            Count();
            return _inner.Evaluate(solids, cancellation);
        }

        public IReadOnlyList<SliceRings> Slice(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default)
        {
            Count();
            return _inner.Slice(solid, heights, cancellation);
        }

        public IReadOnlyList<SliceArea> SliceAreas(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default)
        {
            Count();
            return _inner.SliceAreas(solid, heights, cancellation);
        }

        public void Dispose() => _inner.Dispose();

        private void Count()
        {
            BeforeCall?.Invoke();
            Calls++;
        }
    }
}
