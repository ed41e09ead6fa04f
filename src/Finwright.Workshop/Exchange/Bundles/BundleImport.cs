using System.Text.Json;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>Takes bundles in: all of a bundle or nothing, and nothing twice.</summary>
public static class BundleImport
{
    private const int LongestWords = 200;

    /// <summary>Takes a bundle in.</summary>
    /// <param name="stream">The file; must be able to seek. Left open.</param>
    /// <param name="store">The store.</param>
    /// <param name="name">Another name for the design; null for its own.</param>
    /// <returns>What came in, and what was there already.</returns>
    /// <exception cref="ExchangeException">The file cannot be taken in; nothing was.</exception>
    /// <exception cref="StoreException">The store cannot be changed; nothing was taken in.</exception>
    public static BundleTaken Read(Stream stream, WorkshopStore store, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(store);
        DesignBundle bundle = BundleForm.Read(stream);
        if (bundle.Revisions.Any(own => own.Note.Length > ShelfTable.LongestNote || own.MadeBy.Length > LongestWords))
            throw new ExchangeException("A revision has a longer note than the shelf takes.", "Have it shortened and exported again. Nothing was taken in.");
        return Take(store, bundle, name);
    }

    /// <summary>Takes a bundle in that is sound.</summary>
    internal static BundleTaken Take(WorkshopStore store, DesignBundle bundle, string? name = null) =>
        store.Connection.Change(() => new Taking(store, bundle, ShelfTable.CheckedName(name ?? bundle.Name)).Run());

    /// <summary>One bundle on its way in.</summary>
    private sealed class Taking(WorkshopStore store, DesignBundle bundle, string name)
    {
        private readonly StoreConnection _rows = store.Connection;
        private readonly Dictionary<int, long> _revisions = [];
        private readonly List<int> _added = [], _known = [];
        private readonly List<string> _builds = [];
        private readonly List<string> _knownBuilds = [];

        public BundleTaken Run()
        {
            ShelvedDesign? there = store.Shelf.Find(name);
            long design = there?.Id ?? _rows.Insert("design", ("name", name), ("tags", JsonSerializer.Serialize(ShelfTable.CheckedTags(bundle.Tags))), ("added_at", bundle.AddedAt));
            Recognise(there);
            foreach (BundledRevision own in bundle.Revisions)
            {
                if (_revisions.TryGetValue(own.Number, out long known))
                    _known.Add(own.Number);
                else
                    Add(design, own, out known);
                Complete(known, own);
            }

            Dictionary<string, long> items = new(StringComparer.OrdinalIgnoreCase);
            foreach (BundledItem item in bundle.Builds?.Stock ?? [])
                items[Key(item.Name, item.Batch)] = Item(item);
            foreach (BundledBuild build in bundle.Builds?.Builds ?? [])
                Take(build, items);
            return new(there?.Name ?? name, there is null, _added, _known, _builds, _knownBuilds);
        }

        // A number that both have must mean the same text; a text that is there under a number of its own is that revision.
        private void Recognise(ShelvedDesign? there)
        {
            if (there is null)
                return;
            IReadOnlyList<Revision> shelved = store.Shelf.Revisions(there.Id);
            HashSet<int> numbers = [.. bundle.Revisions.Select(own => own.Number)];
            foreach (BundledRevision own in bundle.Revisions)
            {
                Revision? same = shelved.FirstOrDefault(other => other.Number == own.Number);
                if (same is not null && !string.Equals(same.Hash, own.Hash, StringComparison.Ordinal))
                    throw new ExchangeException($"\"{there.Name}\" on the shelf has another revision {own.Number} than the bundle: they are not the same design, or each went its own way.", "Take it in under a name of its own with --as NAME. Nothing was taken in.");
                same ??= shelved.FirstOrDefault(other => string.Equals(other.Hash, own.Hash, StringComparison.Ordinal) && !numbers.Contains(other.Number));
                if (same is not null)
                    _revisions.Add(own.Number, same.Id);
            }
        }

        private void Add(long design, BundledRevision own, out long id)
        {
            long? parent = own.Parent is int number ? _revisions[number] : null;
            id = _rows.Insert(
                "revision",
                ("design_id", design), ("number", own.Number), ("parent_id", parent), ("hash", own.Hash), ("note", own.Note), ("made_at", own.MadeAt), ("made_by", own.MadeBy), ("text", own.Text));
            _revisions.Add(own.Number, id);
            _added.Add(own.Number);
        }

        // What is kept here is not replaced by what comes from elsewhere.
        private void Complete(long id, BundledRevision own)
        {
            if (own.Picture is not null && store.Shelf.Picture(id) is null)
                _rows.Insert("picture", ("revision_id", id), ("svg", own.Picture));
            if (own.Results is { } results && store.Shelf.Prediction(id) is null)
                _rows.Insert("prediction", ("revision_id", id), ("made_by", results.MadeBy), ("made_at", results.MadeAt), ("results", results.Results));
        }

        private long Item(BundledItem item)
        {
            StockItem? there = store.Stock.List().FirstOrDefault(own => string.Equals(Key(own.Name, own.Batch), Key(item.Name, item.Batch), StringComparison.OrdinalIgnoreCase));
            return there?.Id ?? store.Stock.Add(BundleParts.Item(item)).Id;
        }

        private void Take(BundledBuild build, Dictionary<string, long> items)
        {
            if (store.Builds.Find(build.Name) is { } there)
            {
                bool same = there.RevisionId == _revisions[build.Revision] && ExchangeJson.Write(Comparable(BundleParts.Of(store, there, build.Revision))).AsSpan().SequenceEqual(ExchangeJson.Write(Comparable(build)));
                if (!same)
                    throw new ExchangeException($"There is a build \"{there.Name}\" here already, with other content.", "Rename one of the two, or have the bundle exported without builds. Nothing was taken in.");
                _knownBuilds.Add(there.Name);
                return;
            }

            long id = store.Builds.Add(new()
            {
                RevisionId = _revisions[build.Revision],
                Name = build.Name,
                MadeOn = build.MadeOn,
                FilamentId = Id(build.Filament),
                ResinId = Id(build.Resin),
                PlasticGrams = build.PlasticG,
                ResinMl = build.ResinMl,
                MassGrams = build.MassG,
                PrintHours = build.PrintHours,
                RoomCelsius = build.RoomCelsius,
                BathCelsius = build.BathCelsius,
                PeakCelsius = build.PeakCelsius,
                Cost = build.Cost,
                Currency = build.Currency,
                Problems = build.Problems,
                Note = build.Note,
            }).Id;
            foreach (BundledPart part in build.Parts)
                store.Builds.Keep(id, new BuildPart(part.Part, part.PrintedOn, Id(part.Filament), part.PlasticG, part.PrintHours, part.Note));
            foreach (BundledPhoto photo in build.Photos)
                store.Builds.Keep(id, new BuildPhoto(photo.Path, photo.Caption));
            foreach (BundledUse use in build.Uses)
                store.Stock.Use(new(0, Id(use.Item)!.Value, id, use.Quantity, use.UsedOn, use.Note));
            foreach (BundledSession session in build.Bench)
                store.Bench.Add(new BenchSession(0, id, session.TakenOn, session.RootHold, session.Note, [.. session.Readings.Select(BundleParts.Line)]));
            foreach (BundledOuting outing in build.Outings)
                store.Outings.Add(BundleParts.Outing(outing, id), outing.Track is { } track ? new KeptTrack(track.FileName, track.Sha256, track.Points) : null);
            _builds.Add(build.Name);

            long? Id(ItemLabel? label) => label is null ? null : items[Key(label.Name, label.Batch)];
        }

        // Where the points lie in a bundle, and capitals of what is in stock, make no difference.
        private static BundledBuild Comparable(BundledBuild build) => build with
        {
            Filament = Lower(build.Filament),
            Resin = Lower(build.Resin),
            Parts = [.. build.Parts.OrderBy(part => part.Part, StringComparer.Ordinal).Select(part => part with { Filament = Lower(part.Filament) })],
            Uses = [.. build.Uses.Select(use => use with { Item = Lower(use.Item)! })],
            Outings = [.. build.Outings.Select(outing => outing.Track is null ? outing : outing with { Track = outing.Track with { Entry = "" } })],
        };

        private static ItemLabel? Lower(ItemLabel? label) => label is null ? null : new(label.Name.ToUpperInvariant(), label.Batch.ToUpperInvariant());

        private static string Key(string name, string batch) => $"{name}\n{batch}";
    }
}

/// <summary>What came of taking a bundle in.</summary>
/// <param name="Name">Name of the design on the shelf.</param>
/// <param name="IsNew">Whether the design was not there before.</param>
/// <param name="Added">Numbers of the revisions that came in.</param>
/// <param name="Known">Numbers of those that were there already.</param>
/// <param name="Builds">Names of the builds that came in.</param>
/// <param name="KnownBuilds">Names of those that were there already.</param>
public sealed record BundleTaken(string Name, bool IsNew, IReadOnlyList<int> Added, IReadOnlyList<int> Known, IReadOnlyList<string> Builds, IReadOnlyList<string> KnownBuilds);
