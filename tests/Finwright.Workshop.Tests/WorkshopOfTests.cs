using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests;

/// <summary>A store with one design in two revisions, some batches, and builds to be measured and to learn from.</summary>
internal sealed class WorkshopOfTests : IDisposable
{
    public const string Version = "1.2.3";

    private readonly TemporaryStore _folder = new();

    public WorkshopOfTests()
    {
        Store = _folder.Open();
        First = Store.Shelf.Add("Fairway", new(Design, null, "", "test"), []);
        Second = Store.Shelf.Revise(First.DesignId, new(Shorter, null, "", "test"));
        Grey = Filament("grey PETG", "B7", "petg-printed");
        OtherBatch = Filament("grey PETG", "B8", "petg-printed");
        Nylon = Filament("nylon", "N1", "");
        Resin = Store.Stock.Add(new() { Kind = StockKind.Resin, Name = "slow epoxy", Batch = "L1", Material = "epoxy-ambient", Quantity = 1000, Unit = StockUnit.Millilitres }).Id;
    }

    public static FinDesign Design { get; } = SampleFins.Design("Fairway");

    public static FinDesign Shorter { get; } = Design with { Shape = Design.Shape with { Outline = Design.Shape.Outline with { SpanMm = 0.94 * Design.Shape.Outline.SpanMm } } };

    public WorkshopStore Store { get; }

    // Shared: most tests look at the same few fins.
    private static readonly MemoryStageCache Worked = new(64);

    public Assessor Assessor { get; } = new(Worked);

    public Revision First { get; }

    public Revision Second { get; }

    public long Grey { get; }

    public long OtherBatch { get; }

    public long Nylon { get; }

    public long Resin { get; }

    public void Dispose()
    {
        Assessor.Dispose();
        Store.Dispose();
        _folder.Dispose();
    }

    public Build Build(string name, Revision revision, long? filament, long? resin) => Store.Builds.Add(new() { RevisionId = revision.Id, Name = name, FilamentId = filament, ResinId = resin });

    public void Calibrate(Build build, LearnedQuantity quantity, double factor, double deviation, params long[] sessions) => Store.Calibrations.Add(
    [
        new(0, DateTimeOffset.UnixEpoch, "test", build.Id, quantity is LearnedQuantity.PrintTime ? null : build.FilamentId, quantity is LearnedQuantity.CoreStiffness or LearnedQuantity.Resin ? build.ResinId : null, quantity,
            factor, factor * Math.Exp(-2 * deviation), factor * Math.Exp(2 * deviation), sessions, ""),
    ]);

    /// <summary>Readings as a fin would show them whose walls and core are so much stiffer than its materials say.</summary>
    /// <param name="design">The design.</param>
    /// <param name="wall">Factor of the walls.</param>
    /// <param name="core">Factor of the core.</param>
    /// <param name="shift">Makes of each number, and of the share of the span where it is read, what is read; null for the number itself.</param>
    public IReadOnlyList<BenchReadingLine> Readings(FinDesign design, double wall, double core, Func<BenchReadingLine, double, double>? shift = null)
    {
        FinDesign truth = design with { Base = design.Base with { RootHold = RootHold.Clamped }, Materials = design.Materials with { WallFactor = wall, CoreFactor = core } };
        AssessmentResult result = Assessor.Assess(truth, AssessmentDepth.Structure);
        double span = 1e3 * result.Blade!.Span;
        BenchReadingLine[] lines =
        [
            .. from load in (double[])[0.5, 0.9]
               from place in (ChordPlace[])[ChordPlace.LeadingEdge, ChordPlace.TrailingEdge]
               from read in (double[])[0.3, 0.6, 0.95]
               select new BenchReadingLine(1, 12, load * span, place, read * span, ChordPlace.MidChord, new(1, 0.03), new(1, 0.03), ""),
        ];
        lines = [.. lines.Select((line, i) => line with { Line = i + 1 })];
        BenchMeasurement[] wanted = [.. lines.SelectMany(line => line.Measurements(1e-3 * span))];
        IReadOnlyList<Ranged> answers = BenchTest.Readings(result.Built!.Structure!, wanted)!;
        return
        [
            .. lines.Select((line, i) => line with
            {
                DeflectionMm = new(shift?.Invoke(line, 1e3 * answers[2 * i].Value) ?? 1e3 * answers[2 * i].Value, 0.03),
                TwistDegrees = new(double.RadiansToDegrees(answers[2 * i + 1].Value), 0.03),
            }),
        ];
    }

    public BenchSession Measure(Build build, IReadOnlyList<BenchReadingLine> lines, RootHold root = RootHold.Clamped) => Store.Bench.Add(new(0, build.Id, new(2026, 5, 4), root, "", lines));

    /// <summary>Results with those numbers that a build is held against.</summary>
    public static FinResults Predicted(double plastic = 200, double resin = 220, double hardware = 40, double hours = 12)
    {
        const double density = 1.1;
        ResultLine[] lines =
        [
            Line(ResultKeys.Plastic, ResultGroup.Print, plastic, 0.04, "g"),
            Line(ResultKeys.PrintTime, ResultGroup.Print, hours, 0.15, "h"),
            Line(ResultKeys.PlasticOf("blade"), ResultGroup.Print, 0.75 * plastic, 0.04, "g"),
            Line(ResultKeys.PlasticOf("base"), ResultGroup.Print, 0.25 * plastic, 0.04, "g"),
            Line(ResultKeys.TimeOf("blade"), ResultGroup.Print, 0.75 * hours, 0.15, "h"),
            Line(ResultKeys.TimeOf("base"), ResultGroup.Print, 0.25 * hours, 0.15, "h"),
            Line(ResultKeys.ResinInFin, ResultGroup.Pour, resin / density, 0.03, "ml"),
            Line(ResultKeys.ResinPoured, ResultGroup.Pour, resin / density + 30, 0.05, "ml"),
            Line(ResultKeys.Peak, ResultGroup.Cure, 45, 0.1, "°C"),
            Line(ResultKeys.ResinMass, ResultGroup.Plan, resin, 0.03, "g"),
            Line(ResultKeys.HardwareMass, ResultGroup.Plan, hardware, 0.2, "g"),
            Line(ResultKeys.FinMass, ResultGroup.Plan, plastic + resin + hardware, 0.03, "g"),
            Line(ResultKeys.Cost, ResultGroup.Plan, 30, 0, "EUR"),
        ];
        return new() { Name = "Fairway", DesignSha256 = "", Groups = [.. lines.Select(line => line.Group).Distinct()], Lines = lines };

        static ResultLine Line(string key, ResultGroup group, double value, double share, string unit) => new(key, group, key, value, null, unit, (1 - share) * value, (1 + share) * value, 0);
    }

    private long Filament(string name, string batch, string material) =>
        Store.Stock.Add(new() { Kind = StockKind.Filament, Name = name, Batch = batch, Material = material, Quantity = 1000, Unit = StockUnit.Grams }).Id;
}
