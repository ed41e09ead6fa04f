using System.Globalization;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;
using Finwright.Workshop.Season;

namespace Finwright.Workshop.Tests.Season;

/// <summary>The invented readings of the demo season come from the fins' own predictions, with factors made up for each pair of batches. FINWRIGHT_WRITE=1 writes them anew.</summary>
public sealed class SeasonReadingsTests
{
    private const string Folder = "src/Finwright.Workshop/Season/data";

    // How stiff walls and core are made to be, against what their materials say: one pair of batches, then the other.
    private static readonly Dictionary<string, (double Walls, double Core)> Factors = new(StringComparer.Ordinal) { ["K14"] = (0.92, 0.9), ["M02"] = (1.05, 0.96) };

    [Fact]
    public void Every_build_has_its_readings()
    {
        foreach ((SeasonBuild build, FinDesign design, int seed) in Builds())
        {
            if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
                File.WriteAllText(Path.Combine(Root(), Folder, build.Readings), Written(build, design, seed));
            else
                Assert.True(build.Bundled().Bench[0].Readings.Count >= 8, build.Name);
        }
    }

    [Fact]
    public void Readings_teach_the_factors_that_they_were_made_with()
    {
        (SeasonBuild build, FinDesign design, _) = Builds().First(own => own.Build.Name == "Sandbar two");
        IReadOnlyList<BenchReadingLine> lines = [.. build.Bundled().Bench[0].Readings.Select(Finwright.Workshop.Exchange.Bundles.BundleParts.Line)];
        using Assessor assessor = new();
        BenchFitSummary learned = BenchFitSummary.Of(assessor.Assess(new DesignReading(Held(design), []), AssessmentDepth.Structure, cancellation: TestContext.Current.CancellationToken), lines, "test");
        (double walls, double core) = Factors[build.Filament.Batch];
        FactorSummary Of(StiffnessPart part) => learned.Factors.Single(own => own.Part == part);
        Assert.InRange(walls, Of(StiffnessPart.Walls).Low, Of(StiffnessPart.Walls).High);
        Assert.InRange(core, Of(StiffnessPart.Core).Low, Of(StiffnessPart.Core).High);
        Assert.All(learned.Readings, own => Assert.False(own.LooksWrong));
    }

    private static IEnumerable<(SeasonBuild Build, FinDesign Design, int Seed)> Builds()
    {
        int seed = 0;
        foreach ((IReadOnlyList<SeasonBuild> builds, IReadOnlyList<SeasonRevision> revisions) in new[]
        {
            (SeasonBuilds.Fairway, SeasonFins.Fairway(SeasonDemos.Find("fairway-upright"))),
            (SeasonBuilds.Sandbar, SeasonFins.Sandbar(SeasonDemos.Find("sandbar-delta"))),
            (SeasonBuilds.Eelgrass, SeasonFins.Eelgrass(SeasonDemos.Find("eelgrass-rake"))),
        })
        {
            foreach (SeasonBuild build in builds)
                yield return (build, revisions[build.Revision - 1].Design, ++seed);
        }
    }

    private static FinDesign Held(FinDesign design) => design with { Base = design.Base with { RootHold = RootHold.Clamped } };

    private static string Written(SeasonBuild build, FinDesign design, int seed)
    {
        (double walls, double core) = Factors[build.Filament.Batch];
        FinDesign made = Held(design) with { Materials = design.Materials with { WallFactor = walls, CoreFactor = core } };
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(new DesignReading(made, []), AssessmentDepth.Structure);
        double span = Math.Round(1e3 * result.Blade!.Span);
        List<BenchReadingLine> asked =
        [
            At(10, 0.85, ChordPlace.LeadingEdge, 0.85, ChordPlace.LeadingEdge),
            At(10, 0.85, ChordPlace.LeadingEdge, 0.85, ChordPlace.TrailingEdge),
            At(10, 0.85, ChordPlace.TrailingEdge, 0.85, ChordPlace.LeadingEdge),
            At(10, 0.85, ChordPlace.TrailingEdge, 0.85, ChordPlace.TrailingEdge),
            At(15, 0.55, ChordPlace.MidChord, 0.95, ChordPlace.MidChord),
            At(15, 0.55, ChordPlace.TrailingEdge, 0.55, ChordPlace.TrailingEdge),
            At(20, 0.4, ChordPlace.MidChord, 0.8, ChordPlace.MidChord),
            At(10, 0.85, ChordPlace.TrailingEdge, 0.6, ChordPlace.MidChord, twists: true),
            At(10, 0.85, ChordPlace.LeadingEdge, 0.6, ChordPlace.MidChord, twists: true),
        ];
        BenchFitSummary predicted = BenchFitSummary.Of(result, asked, "test");
        SeasonNoise noise = new(20 + (ulong)seed);
        List<BenchReadingLine> read = [];
        foreach ((BenchReadingLine line, ReadingSummary own) in asked.Zip(predicted.Readings))
        {
            bool twist = own.Quantity is BenchQuantity.Twist;
            // A dial gauge read by eye, and an electronic level.
            double step = 0.05, usual = twist ? BenchReadings.UsualDegrees : BenchReadings.UsualMillimetres;
            double off = (twist ? 0.3 : 0.6) * noise.Normal() * Math.Sqrt(usual * usual + BenchReadings.UsualShare * BenchReadings.UsualShare * own.Before * own.Before);
            double value = Math.Round(Math.Round((own.Before + off) / step) * step, 2);
            ReadValue reading = new(value, Math.Round(Math.Sqrt(usual * usual + BenchReadings.UsualShare * BenchReadings.UsualShare * value * value), 3));
            read.Add(line with { DeflectionMm = twist ? null : reading, TwistDegrees = twist ? reading : null });
        }

        string comment = string.Create(CultureInfo.InvariantCulture, $"Invented: made from the prediction with walls {walls} and core {core} times as stiff, and errors of reading. No fin was measured.");
        return BenchReadings.Write([new BenchReadingsBlock(comment, read)]);

        BenchReadingLine At(double mass, double at, ChordPlace chord, double readAt, ChordPlace readChord, bool twists = false) => new(
            1, mass, Math.Round(at * span), chord, Math.Round(readAt * span), readChord, twists ? null : new(1, 1), twists ? new(1, 1) : null, "");
    }

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "finwright.slnx")))
            folder = Path.GetDirectoryName(folder);
        return folder ?? throw new DirectoryNotFoundException("finwright.slnx");
    }
}
