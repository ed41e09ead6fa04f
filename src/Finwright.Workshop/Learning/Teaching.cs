using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Learning;

/// <summary>What one build teaches: stiffness from its readings, and ratios from what was measured while it was made.</summary>
/// <remarks>
/// The bench is fitted against the design's materials by themselves, whatever factors the design holds and whatever was learned before: so every calibration says what one build says, and they can be
/// joined (<see cref="Learned"/>). Readings under several holds of the root are fitted one hold after the other, the best known first, each beginning with what the one before has taught; what walls
/// and core have in common in the first answer is not carried over.
/// </remarks>
public sealed record Teaching
{
    /// <summary>The build.</summary>
    public required Build Build { get; init; }

    /// <summary>What it teaches, ready to be kept; numbers are given when it is.</summary>
    public required IReadOnlyList<Calibration> Calibrations { get; init; }

    /// <summary>What readings leave open, and which look wrong.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>What it does not teach, and why.</summary>
    public required IReadOnlyList<string> NotTaught { get; init; }

    /// <summary>What the readings say of walls and core; null when they say nothing. It is there even where the build does not say of which batches it is.</summary>
    public BenchFitSummary? Bench { get; init; }

    /// <summary>What teaching needs to know of a build's design: what is kept, else print and pour where something was measured. Water and cure teach nothing.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <param name="assessor">Works out what is not kept: seconds.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static FinResults Predicted(WorkshopStore store, Build build, Assessor assessor, string programVersion, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(assessor);
        Revision revision = store.Shelf.Find(build.RevisionId)!;
        if (Predictions.Kept(store, revision, programVersion) is { } known)
            return known;
        return FinResults.Of(assessor.Assess(store.Shelf.Read(revision.Id), DepthFor(build, store.Builds.Parts(build.Id)), progress, cancellation));
    }

    /// <summary>How far a build's design must be worked out for teaching.</summary>
    /// <param name="build">The build.</param>
    /// <param name="parts">Its parts.</param>
    public static AssessmentDepth DepthFor(Build build, IReadOnlyList<BuildPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return build is not { PlasticGrams: null, ResinMl: null, MassGrams: null, PrintHours: null } || parts.Count > 0 ? AssessmentDepth.Pour : AssessmentDepth.Shape;
    }

    /// <summary>Learns from a build; nothing is kept yet.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <param name="predicted">Results of its design without calibrations, print and pour among them.</param>
    /// <param name="assessor">Works out the structure.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="madeAt">When.</param>
    /// <param name="note">The maker's own words.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Teaching Of(WorkshopStore store, Build build, FinResults predicted, Assessor assessor, string programVersion, DateTimeOffset madeAt, string note = "", CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(predicted);
        ArgumentNullException.ThrowIfNull(assessor);
        Lesson lesson = new(build, $"Finwright {programVersion}", madeAt, note);
        lesson.FromBench(store, assessor, programVersion, cancellation);
        lesson.FromMaking(predicted, store.Builds.Parts(build.Id));
        return new() { Build = build, Calibrations = lesson.Calibrations, Remarks = lesson.Remarks, NotTaught = lesson.NotTaught, Bench = lesson.Bench };
    }

    /// <summary>Keeps what the build teaches in place of what it taught before, all of it or nothing.</summary>
    /// <param name="store">The store.</param>
    /// <returns>The calibrations with their numbers.</returns>
    /// <exception cref="StoreException">The build teaches nothing, or the store may not be changed.</exception>
    public IReadOnlyList<Calibration> Keep(WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        if (Calibrations.Count == 0)
            throw new StoreException(StoreProblem.Wrong, $"The build \"{Build.Name}\" teaches nothing yet. {string.Join(" ", NotTaught)}", "Add readings (\"finwright bench add\"), or what was measured while it was made. Nothing was changed.");
        IReadOnlyList<Calibration> kept = [];
        store.Together(() =>
        {
            foreach (Calibration earlier in store.Calibrations.List(Build.Id))
                store.Calibrations.Delete(earlier.Id);
            kept = store.Calibrations.Add(Calibrations);
        });
        return kept;
    }

    /// <summary>One run of learning.</summary>
    private sealed class Lesson(Build build, string madeBy, DateTimeOffset madeAt, string note)
    {
        public List<Calibration> Calibrations { get; } = [];

        public List<string> Remarks { get; } = [];

        public List<string> NotTaught { get; } = [];

        public BenchFitSummary? Bench { get; private set; }

        public void FromBench(WorkshopStore store, Assessor assessor, string programVersion, CancellationToken cancellation)
        {
            IReadOnlyList<BenchSession> sessions = store.Bench.List(build.Id);
            if (sessions.Count == 0)
            {
                NotTaught.Add("Stiffness: there are no readings of the bench.");
                return;
            }

            DesignReading reading = store.Shelf.Read(build.RevisionId);
            if (reading is not { HasErrors: false, Design: { } design })
            {
                NotTaught.Add($"Stiffness: the design {build.Revision} cannot be worked out.");
                return;
            }

            design = Learned.Plain(design);
            BenchFitSummary? last = null;
            foreach (IGrouping<RootHold, BenchSession> held in sessions.GroupBy(session => session.RootHold).OrderByDescending(group => group.Key))
            {
                AssessmentResult result = assessor.Assess(design with { Base = design.Base with { RootHold = held.Key } }, AssessmentDepth.Structure, cancellation: cancellation);
                BenchFitSummary fit = BenchFitSummary.Of(result, Numbered(held), programVersion);
                if (fit.Factors.Count == 0)
                {
                    NotTaught.Add($"Stiffness, from readings with the root {HeldWords.Of(held.Key)}: {fit.Problem ?? fit.Sentence}");
                    continue;
                }

                Remarks.AddRange(fit.Remarks);
                design = fit.Into(design);
                last = fit;
            }

            Bench = last;
            foreach (FactorSummary own in last?.Factors ?? [])
            {
                switch (own.Part)
                {
                    case StiffnessPart.Walls:
                        Add(LearnedQuantity.WallStiffness, own.Factor, own.Low, own.High, sessions);
                        break;
                    case StiffnessPart.Core:
                        Add(LearnedQuantity.CoreStiffness, own.Factor, own.Low, own.High, sessions);
                        break;
                }
            }
        }

        public void FromMaking(FinResults predicted, IReadOnlyList<BuildPart> parts)
        {
            Measured measured = Measured.Of(build, parts, predicted);
            Ratio(LearnedQuantity.Plastic, "Plastic", measured.PlasticGrams, predicted[ResultKeys.Plastic], MeasuringDoubt.Plastic);
            Ratio(LearnedQuantity.PrintTime, "Time on the printer", measured.PrintHours, predicted[ResultKeys.PrintTime], MeasuringDoubt.Time);
            Resin(predicted, measured);
        }

        // By weight where fin and plastic were weighed: what stood in reservoirs and ran out does not count then.
        private void Resin(FinResults predicted, Measured measured)
        {
            if (predicted[ResultKeys.ResinMass] is { Value: double mass } && predicted[ResultKeys.HardwareMass] is { Value: double hardware } && measured is { MassGrams: double fin, PlasticGrams: double plastic })
            {
                double doubt = Math.Sqrt(Square(MeasuringDoubt.Mass(fin)) + Square(MeasuringDoubt.Plastic(plastic)) + Square(EmbeddedMass.Spread * hardware));
                Ratio(LearnedQuantity.Resin, "Resin", fin - plastic - hardware, mass, doubt);
            }
            else if (predicted[ResultKeys.ResinPoured] is { Value: double poured, High: double high } && predicted[ResultKeys.ResinInFin] is { Value: double inFin, High: double most } && measured.ResinMl is double read)
            {
                // What stands in the reservoirs is known only so well; it is neither the pores' nor the resin's.
                double reservoirs = poured - inFin, loose = Math.Sqrt(Math.Max(0, Square(high - poured) - Square(most - inFin)));
                Ratio(LearnedQuantity.Resin, "Resin", read - reservoirs, inFin, double.Hypot(MeasuringDoubt.Resin(read), loose));
            }
            else
            {
                NotTaught.Add("Resin: not measured, or not predicted.");
            }
        }

        private void Ratio(LearnedQuantity quantity, string name, double? measured, ResultLine? predicted, Func<double, double> doubt)
        {
            if (measured is double own && predicted?.Value is double expected)
                Ratio(quantity, name, own, expected, doubt(own));
            else
                NotTaught.Add($"{name}: not measured, or not predicted.");
        }

        private void Ratio(LearnedQuantity quantity, string name, double measured, double predicted, double doubt)
        {
            double factor = measured / predicted;
            // Beyond a half or twice something else is wrong than what a factor stands for.
            if (!(factor is >= 0.5 and <= 2))
            {
                NotTaught.Add($"{name}: {measured:0.#} was measured where {predicted:0.#} was expected, too far off for a factor. Look for a wrong number or unit.");
                return;
            }

            double log = doubt / measured;
            Add(quantity, factor, factor * Math.Exp(-log), factor * Math.Exp(log), []);
        }

        private void Add(LearnedQuantity quantity, double factor, double low, double high, IReadOnlyList<BenchSession> sessions)
        {
            bool byResin = quantity is LearnedQuantity.CoreStiffness or LearnedQuantity.Resin, byFilament = quantity is not LearnedQuantity.PrintTime;
            if ((byFilament && build.FilamentId is null) || (byResin && build.ResinId is null))
            {
                NotTaught.Add($"{LearnedWords.Name(quantity)}: the build does not say of which {(byFilament && build.FilamentId is null ? "filament" : "resin")} it is, so nobody would know for which fins it holds.");
                return;
            }

            Calibrations.Add(new(0, madeAt, madeBy, build.Id, byFilament ? build.FilamentId : null, byResin ? build.ResinId : null, quantity, factor, low, high, [.. sessions.Select(session => session.Id)], note));
        }

        // Lines of several sessions follow one another, so that a remark on "line 7" can be found.
        private static BenchReadingLine[] Numbered(IEnumerable<BenchSession> sessions) => [.. sessions.SelectMany(session => session.Readings).Select((line, i) => line with { Line = i + 1 })];

        private static double Square(double value) => value * value;
    }
}
