using System.Security.Cryptography;
using System.Text;
using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Numerics;
using Finwright.Strength.Materials;
using Finwright.Water;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Comparing;

/// <summary>
/// Results of the revisions on the shelf, kept so that a minute's work is done once. What is kept is what the design alone says: nothing of it depends on calibrations, which
/// are applied when results are shown (<see cref="Learning.Learned"/>).
/// </summary>
public static class Predictions
{
    private static readonly string Reckoner = ReckonerOf();

    /// <summary>The groups that <see cref="AssessmentDepth.Bench"/> gives at once.</summary>
    public static IReadOnlyList<ResultGroup> Quick { get; } = [ResultGroup.Shape, ResultGroup.Bench];

    /// <summary>What is kept of a revision, if this version of the program made it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <returns>The results; null when there are none, or when they are another version's or cannot be read.</returns>
    public static FinResults? Kept(WorkshopStore store, Revision revision, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(revision);
        return store.Shelf.Prediction(revision.Id) is { } kept && string.Equals(kept.MadeBy, MadeBy(programVersion), StringComparison.Ordinal) ? FinResults.Read(kept.Results) : null;
    }

    /// <summary>Every result of a revision: as kept, else worked out and kept.</summary>
    /// <param name="store">The store; one that may only be read keeps nothing.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="assessor">Works out what is not kept: a minute or two of work.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work; nothing is kept then.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static FinResults Of(WorkshopStore store, Revision revision, Assessor assessor, string programVersion, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(assessor);
        if (Kept(store, revision, programVersion) is { } kept)
            return kept;
        FinResults results = FinResults.Of(assessor.Assess(store.Shelf.Read(revision.Id), AssessmentDepth.Everything, progress, cancellation));
        Keep(store, revision, programVersion, results);
        return results;
    }

    /// <summary>Results of a revision as they are kept, else what is worked out at once.</summary>
    /// <param name="store">The store.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="assessor">Works it out.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static FinResults KeptOrQuick(WorkshopStore store, Revision revision, Assessor assessor, string programVersion, IProgress<StageProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(revision);
        ArgumentNullException.ThrowIfNull(assessor);
        return Kept(store, revision, programVersion) ?? FinResults.Of(assessor.Assess(store.Shelf.Read(revision.Id), AssessmentDepth.Bench, progress, cancellation)).Only(Quick);
    }

    /// <summary>Keeps the results of a revision; a store that may only be read keeps nothing.</summary>
    /// <param name="store">The store.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="results">Every result of the design, without calibrations.</param>
    public static void Keep(WorkshopStore store, Revision revision, string programVersion, FinResults results)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(revision);
        ArgumentNullException.ThrowIfNull(results);
        if (store.Refusal is null)
            store.Shelf.KeepPrediction(revision.Id, MadeBy(programVersion), results.Write());
    }

    private static string MadeBy(string programVersion) => $"Finwright {programVersion} ({Reckoner})";

    /// <summary>Tells apart programs of one version that may reckon otherwise, as while one is worked on: the identity of every module that reckons.</summary>
    private static string ReckonerOf()
    {
        Type[] modules = [typeof(BSplineCurve), typeof(FinDesign), typeof(TriangleMesh), typeof(WaterProperties), typeof(Material), typeof(PrintSettings), typeof(Assessor), typeof(FinResults)];
        string identities = string.Concat(modules.Select(type => type.Module.ModuleVersionId));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(identities)))[..12];
    }
}
