using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>One of the fins that "compare" is given, by the word that names it.</summary>
/// <param name="store">The store.</param>
/// <param name="assessor">Works out what is not kept.</param>
/// <param name="isQuick">Whether shape and bench alone are wanted.</param>
/// <param name="progress">Takes reports.</param>
/// <param name="cancellation">Stops the work.</param>
internal sealed class ComparedInput(WorkshopStore store, Assessor assessor, bool isQuick, IProgress<StageProgress> progress, CancellationToken cancellation)
{
    private const string BuildWord = "build:", FileEnding = ".fin.json";

    /// <summary>A build as a person names it, with or without the word before its name.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public static Build BuildOf(WorkshopStore store, string name) =>
        store.Builds.Get(name.StartsWith(BuildWord, StringComparison.OrdinalIgnoreCase) ? name[BuildWord.Length..] : name);

    /// <summary>Works the fin out.</summary>
    /// <param name="word">A design on the shelf, name@number, build:name, or a design file.</param>
    /// <exception cref="WrongInputException">It cannot be compared.</exception>
    /// <exception cref="StoreException">It is not in the store.</exception>
    public ComparedSide Side(string word)
    {
        if (string.IsNullOrWhiteSpace(word))
            throw new WrongInputException("The name of a fin is empty.", "Name a design, NAME@NUMBER, build:NAME, or a design file.");
        if (word.EndsWith(FileEnding, StringComparison.OrdinalIgnoreCase) && (File.Exists(word) || store.Shelf.Find(word) is null))
            return OfFile(word);
        return word.StartsWith(BuildWord, StringComparison.OrdinalIgnoreCase) ? OfBuild(BuildOf(store, word)) : OfRevision(store.Shelf.Get(Reference.Parse(word)));
    }

    /// <summary>Results of a revision without calibrations. Quick ones are worked out anew, so that both sides have the same lines.</summary>
    public FinResults ResultsOf(Revision revision) => isQuick
        ? QuickOf(revision)
        : Predictions.Of(store, revision, assessor, ProgramVersion.Text, progress, cancellation);

    /// <summary>Results of a revision as they are kept, else what is worked out at once.</summary>
    public FinResults KeptOrQuick(Revision revision) =>
        Predictions.KeptOrQuick(store, revision, assessor, ProgramVersion.Text, progress, cancellation);

    private FinResults QuickOf(Revision revision) => FinResults.Of(Assess(store.Shelf.Read(revision.Id), AssessmentDepth.Bench)).Only(Predictions.Quick);

    private ComparedSide OfFile(string file)
    {
        AssessmentResult result = Assess(DesignFile.Read(file), isQuick ? AssessmentDepth.Bench : AssessmentDepth.Everything);
        return new() { Kind = ComparedKind.File, Label = file, Design = Readable(result, file), Blade = result.Blade, Results = Limited(FinResults.Of(result)) };
    }

    private ComparedSide OfRevision(Revision revision)
    {
        AssessmentResult shape = Assess(store.Shelf.Read(revision.Id), AssessmentDepth.Shape);
        return new() { Kind = ComparedKind.Revision, Label = revision.Label, Design = Readable(shape, revision.Label), Blade = shape.Blade, Results = ResultsOf(revision) };
    }

    private ComparedSide OfBuild(Build build)
    {
        Revision revision = store.Shelf.Find(build.RevisionId)!;
        ComparedSide plain = OfRevision(revision);
        Learned learned = Learned.For(store, build.FilamentId, build.ResinId);
        FinDesign design = learned.Into(plain.Design);
        FinResults results = learned.Into(plain.Results);
        if (!ReferenceEquals(design, plain.Design))
            results = results.With(FinResults.Of(Assess(new DesignReading(design, []), AssessmentDepth.Bench)), ResultGroup.Bench);
        return plain with
        {
            Kind = ComparedKind.Build,
            Label = BuildWord + build.Name,
            Results = results,
            Review = BuildReview.Of(store, build, plain.Results, assessor, cancellation),
            Used = learned,
        };
    }

    private AssessmentResult Assess(DesignReading reading, AssessmentDepth depth) => assessor.Assess(reading, depth, progress, cancellation);

    private FinResults Limited(FinResults results) => isQuick ? results.Only(Predictions.Quick) : results;

    private static FinDesign Readable(AssessmentResult result, string label) =>
        result is { InputIsWrong: false, Design: { } design } ? design
        : throw new WrongInputException($"{label} cannot be compared. {result.Findings.First(finding => finding.IsError).Message}", "\"finwright check\" says everything that is wrong with a design.");
}
