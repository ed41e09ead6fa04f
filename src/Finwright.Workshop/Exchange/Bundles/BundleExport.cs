using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>Writes designs into bundles.</summary>
public static class BundleExport
{
    /// <summary>How names of bundles end.</summary>
    public const string Ending = ".fin-bundle.zip";

    /// <summary>Writes a design with its revisions, or one revision.</summary>
    /// <param name="store">The store.</param>
    /// <param name="reference">The design for all of its revisions, or one revision of it.</param>
    /// <param name="withBuilds">Whether builds go along, with what was measured and sailed; tracks tell where someone was.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <param name="stream">Where it goes; must be able to tell its position. Left open.</param>
    /// <returns>How much went along.</returns>
    /// <exception cref="StoreException">There is no such design or revision.</exception>
    /// <exception cref="ExchangeException">It is larger than a bundle may be.</exception>
    public static BundleContents Write(WorkshopStore store, Reference reference, bool withBuilds, string madeBy, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(stream);
        DesignBundle bundle = Of(store, reference, withBuilds, madeBy);
        BundleForm.Write(stream, bundle);
        return new(bundle.Name, bundle.Revisions.Count, bundle.Builds?.Builds.Count ?? 0);
    }

    /// <summary>A bundle of what is on the shelf.</summary>
    internal static DesignBundle Of(WorkshopStore store, Reference reference, bool withBuilds, string madeBy)
    {
        Revision named = store.Shelf.Get(reference);
        ShelvedDesign design = store.Shelf.Find(named.DesignName)!;
        Revision[] revisions = reference.Number is null ? [.. store.Shelf.Revisions(design.Id)] : [named];
        Dictionary<string, int> numbers = revisions.ToDictionary(own => own.Label, own => own.Number, StringComparer.Ordinal);
        BundledRevision[] bundled =
        [
            .. revisions.Select(own => new BundledRevision(
                own.Number, numbers.TryGetValue(own.Parent, out int parent) ? parent : null, own.Parent, own.Hash, own.Note, own.MadeAt, own.MadeBy, store.Shelf.Text(own.Id), store.Shelf.Picture(own.Id), store.Shelf.Prediction(own.Id))),
        ];
        return new(madeBy, design.Name, design.Tags, design.AddedAt, bundled, withBuilds ? Builds(store, design.Id, revisions) : null);
    }

    private static BundledBuilds Builds(WorkshopStore store, long design, Revision[] revisions)
    {
        Dictionary<long, int> numbers = revisions.ToDictionary(own => own.Id, own => own.Number);
        Build[] builds = [.. store.Builds.List(design).Where(build => numbers.ContainsKey(build.RevisionId)).OrderBy(build => build.Id)];
        long[] items =
        [
            .. builds.SelectMany(build => ((long?[])[build.FilamentId, build.ResinId, .. store.Builds.Parts(build.Id).Select(part => part.FilamentId), .. store.Stock.Uses(build: build.Id).Select(use => (long?)use.ItemId)]).OfType<long>())
                .Distinct(),
        ];
        int tracks = 0;
        return new(
            [.. items.Select(store.Stock.Get).Select(BundleParts.Of).DistinctBy(item => $"{item.Name}\n{item.Batch}", StringComparer.OrdinalIgnoreCase).OrderBy(item => item.Name, StringComparer.Ordinal).ThenBy(item => item.Batch, StringComparer.Ordinal)],
            [.. builds.Select(build => Numbered(BundleParts.Of(store, build, numbers[build.RevisionId])))]);

        BundledBuild Numbered(BundledBuild build) => build with
        {
            Outings = [.. build.Outings.Select(outing => outing.Track is null ? outing : outing with { Track = outing.Track with { Entry = $"tracks/{++tracks}.track" } })],
        };
    }
}

/// <summary>What a bundle holds.</summary>
/// <param name="Name">Name of the design.</param>
/// <param name="Revisions">How many revisions.</param>
/// <param name="Builds">How many builds.</param>
public sealed record BundleContents(string Name, int Revisions, int Builds);
