using System.Text.Json.Nodes;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Making;
using Finwright.Page.Tests.Making;
using Finwright.Page.Works;
using Finwright.Papers;

namespace Finwright.Page.Tests.Works;

/// <summary>What is held does not grow with what was done: a page that stays open for a season takes no more than on its first day.</summary>
[Collection(Alone.Name)]
public sealed class LongUseTests : IDisposable
{
    private const int Changes = 2000, Middle = 400;

    // So many changes a hand makes before it lets go.
    private const int Slide = 8;

    // Where a hand moves, where it begins and by how much it moves at a time, in the file's own unit.
    private static readonly (string Place, double From, double By)[] Moved =
    [
        ("$.shape.outline.span_mm", 300, 0.5),
        ("$.shape.outline.root_chord_mm", 120, 0.25),
        ("$.shape.outline.rake_degrees", 10, 0.5),
        ("$.shape.sections[0].thickness_percent", 12, 0.05),
    ];

    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-long-").FullName;

    private static FinDesign Fin(string name = "Plain") => DesignReader.Read(
        $$"""
        {
          "format": 2,
          "name": "{{name}}",
          "shape": {
            "outline": { "family": "upright", "span_mm": 300, "root_chord_mm": 120, "rake_degrees": 10 },
            "sections": [
              { "at_percent": 0, "section": "naca-0010-34", "thickness_percent": 12 },
              { "at_percent": 100, "section": "naca-0010-34", "thickness_percent": 11 }
            ]
          }
        }
        """).Design!;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    [Trait("Pace", "long")]
    public void Two_thousand_changes_by_hand_leave_no_growth()
    {
        // In a file: the steps that can be undone lie on the disk, not in memory.
        using Workbench bench = OnDisk();
        DesignSession session = bench.Session();
        Rest(session);
        long quick = 0;
        session.Changed += () => quick += session.Now.SailingIsQuick ? 1 : 0;
        Move(session, 0, Middle);
        Footprint middle = Footprint.Now();
        Move(session, Middle, Changes);
        middle.IsNotOutgrown();
        Assert.True(session.Now.Version > Changes);
        // The work in the background took part.
        Assert.True(quick > 0);
        Assert.Null(session.NotKept);
    }

    [Fact]
    public void Two_thousand_shapes_and_two_dozen_fins_in_the_water_fill_no_more_than_the_caches_hold()
    {
        // Full before the middle in both halves of the test.
        const int Room = 12;
        MemoryStageCache stages = new(Room);
        using Assessor assessor = new(stages, curves: CacheFolder.OpenCurves());
        FinDesign fin = Fin();
        Shapes(0, Middle);
        Footprint middle = Footprint.Now();
        Shapes(Middle, Changes);
        middle.IsNotOutgrown();
        Assert.Equal(Room, stages.Count);

        Sail(0, 12);
        middle = Footprint.Now();
        Sail(12, 24);
        middle.IsNotOutgrown();
        Assert.Equal(Room, stages.Count);

        void Shapes(int from, int to)
        {
            for (int i = from; i < to; i++)
                Assert.NotNull(assessor.Assess(With(outline => outline with { SpanMm = 300 + 0.05 * i }), AssessmentDepth.Shape).Blade);
        }

        // Another rider each time on the same blade: its sections, which take seconds, are solved once.
        void Sail(int from, int to)
        {
            for (int i = from; i < to; i++)
            {
                FinDesign other = fin with { Brief = fin.Brief with { RiderMassKg = 60 + 0.5 * i } };
                Assert.NotEmpty(assessor.Assess(other, AssessmentDepth.Water).Verdicts);
            }
        }

        FinDesign With(Func<Outline, Outline> change) => fin with { Shape = fin.Shape with { Outline = change(fin.Shape.Outline) } };
    }

    /// <summary>Takes half an hour.</summary>
    [Fact]
    [Trait("Pace", "long")]
    public void Two_thousand_fins_assessed_down_to_their_strength_leave_no_growth()
    {
        const int Room = 12;
        MemoryStageCache stages = new(Room);
        using Assessor assessor = new(stages, curves: CacheFolder.OpenCurves());
        FinDesign fin = DesignReader.ReadFile(Path.Combine(MadeFin.Root, "examples", "sandbar-delta.fin.json")).Design!;
        Work(0, Middle);
        Footprint middle = Footprint.Now();
        Work(Middle, Changes);
        middle.IsNotOutgrown();
        Assert.Equal(Room, stages.Count);

        // Another rider every time, so other loads, bending and verdicts; another blade now and then, so other sections, plate and bench.
        void Work(int from, int to)
        {
            for (int i = from; i < to; i++)
            {
                Outline outline = fin.Shape.Outline with { SpanMm = fin.Shape.Outline.SpanMm + 0.1 * (i / 50) };
                FinDesign other = fin with { Shape = fin.Shape with { Outline = outline }, Brief = fin.Brief with { RiderMassKg = 60 + 0.01 * i } };
                AssessmentResult result = assessor.Assess(other, AssessmentDepth.Strength);
                Assert.NotNull(result.Bench);
                Assert.NotNull(result.Loaded);
            }
        }
    }

    [Fact]
    public void Two_hundred_times_opened_changed_and_closed_leaves_no_growth()
    {
        using Workbench bench = OnDisk();
        Use(0, 40);
        Footprint before = Footprint.Now();
        Use(40, 200);
        before.IsNotOutgrown();
        Assert.Equal(0, bench.Open.Count);

        void Use(int from, int to)
        {
            for (int i = from; i < to; i++)
            {
                DesignSession session = bench.Session();
                // What the last one changed was on the disk when it was closed.
                Assert.Equal(i == 0 ? 300 : 300 + 0.1 * i, session.Now.Design.Shape.Outline.SpanMm!.Value, 1e-9);
                Assert.Empty(session.Set(Moved[0].Place, JsonValue.Create(300 + 0.1 * (i + 1)), "span", goesOn: true));
                bench.Open.Close(session.DesignId);
            }
        }
    }

    [Fact]
    public void Designs_that_nobody_looks_at_any_more_are_closed_and_come_back_as_they_were()
    {
        using Workbench bench = OnDisk();
        string[] names = [.. Enumerable.Range(1, 2 * OpenDesigns.MostKept).Select(i => $"Fin {i}")];
        bench.Desk.Change(store =>
        {
            foreach (string name in names)
                store.Shelf.Add(name, new(Fin(name), Picture: null, "", "test"), []);
        });
        DesignSession watched = bench.Session();
        watched.Changed += Seen;
        WeakReference first = OpenAndChange(names[0]);
        foreach (string name in names.Skip(1))
            OpenAndChange(name);
        Assert.Equal(OpenDesigns.MostKept, bench.Open.Count);
        // The one that a tab shows is the oldest, and is still the same.
        Assert.Same(watched, bench.Session());
        watched.Changed -= Seen;
        // The worker lets go of what it had in its hands when it takes the next.
        watched.GoOn();
        Assert.True(SpinWait.SpinUntil(() => IsGone(first), TimeSpan.FromSeconds(20)));

        DesignSession again = bench.Open.Open(names[0])!;
        Assert.Equal(310, again.Now.Design.Shape.Outline.SpanMm);
        again.Undo();
        Assert.Equal(300, again.Now.Design.Shape.Outline.SpanMm);

        void Seen()
        {
        }

        [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.NoInlining)]
        WeakReference OpenAndChange(string name)
        {
            DesignSession session = bench.Open.Open(name)!;
            session.Set(Moved[0].Place, JsonValue.Create(310.0), "span", goesOn: true);
            return new(session);
        }

        static bool IsGone(WeakReference session)
        {
            GC.Collect();
            return !session.IsAlive;
        }
    }

    [Fact]
    public void Five_thousand_sets_of_files_asked_for_leave_no_growth()
    {
        using WorkFloor floor = new(TimeProvider.System);
        using Handouts handouts = new(floor, new() { StorePath = Path.Combine(_folder, "store"), MadeBy = "Finwright 1.2.3" }, TimeProvider.System);
        // Refused at once: what is measured is what asking itself leaves behind.
        FinDesign impossible = SmallFin.Design with { Shape = SmallFin.Design.Shape with { Outline = SmallFin.Design.Shape.Outline with { SpanMm = 5000 } } };
        PaperSettings papers = new() { Date = new(2027, 1, 1), ProgramVersion = "" };
        Ask(500);
        Footprint before = Footprint.Now();
        Ask(5000);
        // A source of stopping that stays behind takes some 400 bytes with its place in the list: 2 MB for all.
        before.IsNotOutgrown(marginBytes: 1L << 19);

        void Ask(int times)
        {
            for (int i = 0; i < times; i++)
            {
                string key = handouts.Ask(1, impossible, HandoutKind.Parts, papers).Key;
                Assert.True(SpinWait.SpinUntil(() => handouts.Find(key)?.State is HandoutState.Refused, TimeSpan.FromSeconds(20)));
                handouts.Drop(key);
            }
        }
    }

    private Workbench OnDisk() => new(Fin(), Desk.Open(new() { StorePath = Path.Combine(_folder, "store"), MadeBy = "Finwright in trial" })) { WorksAhead = false };

    // As a hand does: out and back again, place by place, now and then a step back. It ends where it began.
    private static void Move(DesignSession session, int from, int to)
    {
        for (int change = from; change < to; change++)
        {
            int slide = change / Slide, at = change % Slide;
            (string place, double start, double by) = Moved[slide % Moved.Length];
            // Typed, not dragged.
            bool isTyped = slide % 7 == 6;
            double away = at < Slide / 2 ? at + 1 : Slide - 1 - at;
            Assert.Empty(session.Set(place, JsonValue.Create(start + by * away), place, goesOn: !isTyped));
            if (at < Slide - 1)
                continue;
            session.LetGo();
            Assert.False(session.Differs);
            if (slide % 5 != 4)
                continue;
            session.Undo();
            session.Redo();
        }

        Assert.False(session.Differs);
        Rest(session);
    }

    private static void Rest(DesignSession session) => Assert.True(
        SpinWait.SpinUntil(() => session.Now is { Reach: Reach.Sailing, IsMakingOnRequest: true, Work: null }, TimeSpan.FromMinutes(3)),
        session.Now.Fault);
}
