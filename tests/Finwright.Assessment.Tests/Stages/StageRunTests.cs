using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry.Solids;

namespace Finwright.Assessment.Tests.Stages;

/// <summary>A small graph of counting stages: what runs, what is taken from the cache, what is stopped.</summary>
public sealed class StageRunTests
{
    private static readonly FinDesign Design = new() { Name = "test", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, AreaCm2 = 250 } } };

    private readonly MemoryStageCache _cache = new();
    private readonly List<string> _made = [];
    private readonly Stage<string> _span;
    private readonly Stage<string> _box;
    private readonly Stage<string> _both;

    public StageRunTests()
    {
        _span = new("span", 1, "measuring the span", 1, d => new() { Name = "", Shape = d.Shape }, [], work => Make("span", $"{work.Design.Shape.Outline.SpanMm}"));
        _box = new("box", 1, "choosing the box", 1, d => new() { Name = "", Shape = Design.Shape, Base = d.Base }, [], work => Make("box", $"{work.Design.Base.Box}"));
        _both = new("both", 1, "joining", 2, d => new() { Name = "", Shape = Design.Shape }, [_span, _box], work => Make("both", work.Of(_span) + work.Of(_box)));
    }

    [Fact]
    public void Reach_runs_each_stage_once_after_those_it_needs()
    {
        StageRun run = Run(Design);
        run.Reach(_both);
        Assert.Equal(["span", "box", "both"], _made);
        Assert.Equal("300TwoBoltTapered", run.ValueOf(_both));
    }

    [Fact]
    public void Reach_again_takes_everything_from_the_cache()
    {
        Run(Design).Reach(_both);
        _made.Clear();
        StageRun second = Run(Design);
        second.Reach(_both);
        Assert.Empty(_made);
        Assert.Equal("300TwoBoltTapered", second.ValueOf(_both));
    }

    [Fact]
    public void Reach_after_a_change_that_no_stage_reads_runs_nothing()
    {
        Run(Design).Reach(_both);
        _made.Clear();
        Run(Design with { Prove = new() { MassKg = 22 }, Note = "heavier" }).Reach(_both);
        Assert.Empty(_made);
    }

    [Fact]
    public void Reach_after_a_change_runs_only_the_stages_below_it()
    {
        Run(Design).Reach(_both);
        _made.Clear();
        Run(Design with { Base = new() { Box = BoxKind.LongSlot } }).Reach(_both);
        Assert.Equal(["box", "both"], _made);
    }

    [Fact]
    public void A_stage_sees_defaults_where_it_did_not_declare_to_read()
    {
        Stage<string> blind = new("blind", 1, "looking", 1, d => new() { Name = "", Shape = d.Shape }, [], work => $"{work.Design.Prove.MassKg}");
        StageRun run = Run(Design with { Prove = new() { MassKg = 22 } });
        run.Reach(blind);
        Assert.Equal($"{new Prove().MassKg}", run.ValueOf(blind));
    }

    [Fact]
    public void Of_an_undeclared_stage_is_refused()
    {
        Stage<string> cheat = new("cheat", 1, "peeping", 1, d => d, [], work => work.Of(_span));
        Assert.Throws<ArgumentException>(() => Run(Design).Reach(_span, cheat));
    }

    [Fact]
    public void KeyOf_changes_with_the_version_of_a_stage_and_of_those_before_it()
    {
        Stage<string> newer = new("span", 2, "measuring the span", 1, _span.Reads, [], _ => "");
        Stage<string> after1 = new("after", 1, "", 1, d => d, [_span], _ => "");
        Stage<string> after2 = new("after", 1, "", 1, d => d, [newer], _ => "");
        StageRun run = Run(Design);
        Assert.NotEqual(run.KeyOf(_span), run.KeyOf(newer));
        Assert.NotEqual(run.KeyOf(after1), run.KeyOf(after2));
    }

    [Fact]
    public void KeyOf_is_the_same_for_equal_designs()
    {
        FinDesign same = DesignReader.Read(DesignWriter.Write(Design)).Design!;
        Assert.Equal(Run(Design).KeyOf(_both), Run(same).KeyOf(_both));
    }

    [Fact]
    public void Findings_come_along_from_the_cache()
    {
        Stage<string> remark = new("remark", 1, "", 1, d => d, [], work =>
        {
            work.Findings.Add(new("test", Severity.Note, "$", "Seen.", "Nothing."));
            return "done";
        });
        Run(Design).Reach(remark);
        StageRun second = Run(Design);
        second.Reach(remark);
        Assert.Equal("test", Assert.Single(second.Findings).Code);
    }

    [Fact]
    public void A_stage_without_result_stops_those_after_it_but_not_its_neighbours()
    {
        Stage<string> fails = new("fails", 1, "", 1, d => d, [], work =>
        {
            work.Findings.Add(new("test", Severity.Error, "$", "It cannot be.", "Change it."));
            return null;
        });
        Stage<string> after = new("after", 1, "", 1, d => d, [fails], _ => Make("after", ""));
        StageRun run = Run(Design);
        run.Reach(after, _span);
        Assert.Null(run.ValueOf(after));
        Assert.Equal(["span"], _made);
    }

    [Fact]
    public void A_stage_that_makes_nothing_and_does_not_say_why_is_a_fault() =>
        Assert.Throws<InvalidOperationException>(() => Run(Design).Reach(new Stage<string>("mute", 1, "", 1, d => d, [], _ => null)));

    [Fact]
    public void A_solid_that_cannot_be_built_becomes_a_finding_and_is_tried_again_next_time()
    {
        int tries = 0;
        Stage<string> cut = new("cut", 1, "cutting", 1, d => d, [], _ =>
        {
            tries++;
            throw new SolidException("memory ran out");
        });
        StageRun run = Run(Design);
        run.Reach(cut);
        Finding finding = Assert.Single(run.Findings);
        Assert.True(finding.IsError);
        Assert.Contains("memory ran out", finding.Message, StringComparison.Ordinal);
        Run(Design).Reach(cut);
        Assert.Equal(2, tries);
    }

    [Fact]
    public void Cancellation_between_stages_stops_the_run_and_keeps_what_was_finished()
    {
        using CancellationTokenSource stop = new();
        Stage<string> stopper = new("stopper", 1, "", 1, d => d, [_span], _ =>
        {
            stop.Cancel();
            return "done";
        });
        Stage<string> after = new("after", 1, "", 1, d => d, [stopper], _ => Make("after", ""));
        StageRun run = new(Design, _cache, NoKernel, null, stop.Token);
        Assert.Throws<OperationCanceledException>(() => run.Reach(after));
        Assert.Equal(["span"], _made);
        Run(Design).Reach(_span);
        Assert.Equal(["span"], _made);
    }

    [Fact]
    public void Cancellation_inside_a_stage_keeps_nothing_of_it()
    {
        using CancellationTokenSource stop = new();
        Stage<string> halfway = new("halfway", 1, "", 1, d => d, [], work =>
        {
            Make("halfway", "");
            stop.Cancel();
            work.Cancellation.ThrowIfCancellationRequested();
            return "never";
        });
        Assert.Throws<OperationCanceledException>(() => new StageRun(Design, _cache, NoKernel, null, stop.Token).Reach(halfway));
        Assert.Equal(0, _cache.Count);
    }

    [Fact]
    public void Progress_rises_from_0_to_1_in_the_shares_of_the_stages()
    {
        Reports reports = new();
        Stage<string> half = new("half", 1, "working", 2, d => d, [_span, _box], work =>
        {
            work.Progress.Report(0.5);
            return "done";
        });
        new StageRun(Design, _cache, NoKernel, reports, TestContext.Current.CancellationToken).Reach(half);
        Assert.Equal([0, 0.25, 0.5, 0.75, 1], reports.Fractions);
    }

    private string Make(string name, string value)
    {
        _made.Add(name);
        return value;
    }

    private StageRun Run(FinDesign design) => new(design, _cache, NoKernel, null, TestContext.Current.CancellationToken);

    private static ISolidKernel NoKernel() => throw new InvalidOperationException("No stage here needs a kernel.");

    private sealed class Reports : IProgress<StageProgress>
    {
        public List<double> Fractions { get; } = [];

        public void Report(StageProgress value) => Fractions.Add(value.Fraction);
    }
}
