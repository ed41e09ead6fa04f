using System.Text;
using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>The file form of a bundle: docs/bundle.md describes it.</summary>
internal static class BundleForm
{
    /// <summary>What <c>bundle.json</c> says it is.</summary>
    public const string Kind = "finwright-design-bundle";

    /// <summary>Version of the layout that is written, and the only one that is read.</summary>
    public const int Layout = 1;

    /// <summary>The list of contents.</summary>
    public const string List = "bundle.json";

    private const string BuildsEntry = "builds.json", NotesEntry = "notes.md";
    private const int LongestText = 10_000;

    private static readonly ArchiveLimits Limits = new(File: 128L << 20, Entries: 20_000, Entry: 32 << 20, Total: 256L << 20);

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Writes a bundle: the same content gives the same bytes.</summary>
    /// <param name="stream">Where it goes; must be able to tell its position. Left open.</param>
    /// <param name="bundle">The content.</param>
    /// <exception cref="ExchangeException">It is larger than a bundle may be.</exception>
    public static void Write(Stream stream, DesignBundle bundle)
    {
        SealedWriter archive = new(stream, Limits, "Export single revisions (NAME@N), or leave the builds out.");
        foreach (BundledRevision revision in bundle.Revisions)
        {
            archive.Add(TextEntry(revision.Number), Utf8.GetBytes(revision.Text));
            if (revision.Picture is not null)
                archive.Add(PictureEntry(revision.Number), Utf8.GetBytes(revision.Picture));
            if (revision.Results is not null)
                archive.Add(ResultsEntry(revision.Number), Utf8.GetBytes(revision.Results.Results));
        }

        archive.Add(NotesEntry, Utf8.GetBytes(BundleNotes.Of(bundle)));
        if (bundle.Builds is not null)
        {
            archive.Add(BuildsEntry, ExchangeJson.Write(bundle.Builds));
            foreach (BundledTrack track in bundle.Builds.Builds.SelectMany(build => build.Outings).Select(outing => outing.Track).OfType<BundledTrack>())
                archive.Add(track.Entry, track.Points);
        }

        archive.Complete(List, files => new BundleList(Kind, Layout, bundle.MadeBy, bundle.Name, bundle.Tags, bundle.AddedAt, [.. bundle.Revisions.Select(ListedRevision.Of)], files));
    }

    /// <summary>Reads a bundle and checks all of it.</summary>
    /// <param name="stream">The file; must be able to seek. Left open.</param>
    /// <exception cref="ExchangeException">It is no bundle, of another layout, damaged, or not what was exported.</exception>
    public static DesignBundle Read(Stream stream)
    {
        ArchiveReader archive = new(stream, Limits);
        if (!archive.Has(List))
            throw new ExchangeException($"The file holds no {List}: it is no bundle of a design.", "Choose a file that \"finwright export\" made.");
        byte[] listed = archive.Read(List);
        ArchiveHead.Check(listed, List, Kind, Layout);
        BundleList list = ExchangeJson.Read<BundleList>(listed, List);
        CheckOrder(list.Revisions);
        SealedReader files = new(archive, List, list.Files);
        List<string> unknown = [.. files.Names];
        DesignBundle bundle = new(list.MadeBy, list.Name, list.Tags, list.AddedAt, [.. list.Revisions.Select(own => Revision(own, files, unknown))], Builds(list, files, unknown));
        unknown.Remove(NotesEntry);
        return unknown.Count == 0 ? bundle : throw Refused($"The file holds \"{unknown[0]}\", which has no place in a bundle.");
    }

    private static string TextEntry(int number) => $"revisions/{number}.fin.json";

    private static string PictureEntry(int number) => $"pictures/{number}.svg";

    private static string ResultsEntry(int number) => $"results/{number}.json";

    // A parent comes before its child, so that no revision is its own ancestor.
    private static void CheckOrder(IReadOnlyList<ListedRevision> revisions)
    {
        if (revisions.Count == 0)
            throw Refused("The bundle holds no revision.");
        HashSet<int> numbers = [];
        int last = 0;
        foreach (ListedRevision own in revisions)
        {
            if (own.Number <= last)
                throw Refused($"Revision {own.Number} does not come after revision {last}.");
            if (own.Parent is int parent && !numbers.Contains(parent))
                throw Refused(parent >= own.Number ? $"Revision {own.Number} says that it was made from revision {parent}, which came later." : $"Revision {own.Number} was made from revision {parent}, which is not there.");
            numbers.Add(last = own.Number);
        }
    }

    private static BundledRevision Revision(ListedRevision own, SealedReader files, List<string> unknown)
    {
        string name = TextEntry(own.Number), text = Text(name);
        if (!string.Equals(Sha256.Of(Utf8.GetBytes(text)), own.Sha256, StringComparison.Ordinal))
            throw Refused($"Revision {own.Number} is not what was kept: its hash differs.");
        DesignReading reading = DesignReader.Read(text);
        if (reading.Design is null)
            throw new ExchangeException($"Revision {own.Number} cannot be read as a design: {reading.Findings.FirstOrDefault(finding => finding.IsError)?.Message}", "Use the program that exported it, or a later one. Nothing was taken in.");
        string? picture = files.Has(PictureEntry(own.Number)) ? Text(PictureEntry(own.Number)) : null;
        if (picture is not null && PlainPicture.Problem(picture) is string problem)
            throw Refused($"The picture of revision {own.Number} is not taken: {problem}.");
        KeptPrediction? results = null;
        if (own.Results is { } made)
        {
            results = new(made.MadeBy, made.MadeAt, Text(ResultsEntry(own.Number)));
            ExchangeJson.Check(Utf8.GetBytes(results.Results), ResultsEntry(own.Number));
        }

        return new(own.Number, own.Parent, own.MadeFrom, own.Sha256, own.Note, own.MadeAt, own.MadeBy, text, picture, results);

        string Text(string entry)
        {
            unknown.Remove(entry);
            try
            {
                return Utf8.GetString(files.Read(entry));
            }
            catch (DecoderFallbackException inner)
            {
                throw new ExchangeException($"\"{entry}\" is no text in UTF-8.", "Have it exported again. Nothing was taken in.", inner);
            }
        }
    }

    private static BundledBuilds? Builds(BundleList list, SealedReader files, List<string> unknown)
    {
        if (!unknown.Remove(BuildsEntry))
            return null;
        BundledBuilds builds = ExchangeJson.Read<BundledBuilds>(files.Read(BuildsEntry), BuildsEntry);
        HashSet<int> numbers = [.. list.Revisions.Select(own => own.Number)];
        HashSet<string> items = new(StringComparer.OrdinalIgnoreCase);
        foreach (BundledItem item in builds.Stock)
        {
            if (!items.Add(Key(item.Name, item.Batch)))
                throw Refused($"\"{BuildsEntry}\" has \"{item.Name}\" of the same batch twice.");
            Sound(item.Name, item.Quantity, item.Price);
        }

        foreach (BundledBuild build in builds.Builds)
        {
            if (!numbers.Contains(build.Revision))
                throw Refused($"The build \"{build.Name}\" is of revision {build.Revision}, which is not in the bundle.");
            foreach (ItemLabel label in ((ItemLabel?[])[build.Filament, build.Resin, .. build.Parts.Select(part => part.Filament), .. build.Uses.Select(use => use.Item)]).OfType<ItemLabel>())
            {
                if (!items.Contains(Key(label.Name, label.Batch)))
                    throw Refused($"The build \"{build.Name}\" names \"{label.Name}\", which is not among the items of stock.");
            }

            Sound(build.Name, [build.PlasticG, build.ResinMl, build.MassG, build.PrintHours, build.RoomCelsius, build.BathCelsius, build.PeakCelsius, build.Cost, .. build.Parts.SelectMany(part => (double?[])[part.PlasticG, part.PrintHours]), .. build.Uses.Select(use => (double?)use.Quantity)]);
            foreach (BundledSession session in build.Bench)
                CheckReadings(build, session);
        }

        return builds with { Builds = [.. builds.Builds.Select(build => build with { Outings = [.. build.Outings.Select(outing => WithTrack(build, outing, files, unknown))] })] };
    }

    // The reader of readings knows what a reading may be; it is asked rather than copied.
    private static void CheckReadings(BundledBuild build, BundledSession session)
    {
        if (session.Readings.Count == 0)
            throw Refused($"The build \"{build.Name}\" has a day on the bench without readings.");
        BenchReadingLine[] lines = [.. session.Readings.Select(BundleParts.Line)];
        if (Array.Exists(lines, line => line.DeflectionMm is null && line.TwistDegrees is null))
            throw Refused($"A reading of \"{build.Name}\" has neither a deflection nor a twist.");
        if (BenchReadings.Problem(lines) is { } problem)
            throw Refused($"A reading of \"{build.Name}\" cannot be right: {problem.Message}");
    }

    private static BundledOuting WithTrack(BundledBuild build, BundledOuting outing, SealedReader files, List<string> unknown)
    {
        Sound(build.Name, outing.WindLowKnots, outing.WindHighKnots, outing.SailM2);
        if (outing.Grip is < 1 or > 5 || outing.Speed is < 1 or > 5 || outing.Feel is < 1 or > 5 || outing.SpinOuts < 0)
            throw Refused($"An outing with \"{build.Name}\" has a rating outside 1 to 5, or fewer spin-outs than none.");
        if (outing.Track is not { } track)
            return outing;
        if (!Sha256.IsOne(track.Sha256) || track.FileName.Length > LongestText || !unknown.Remove(track.Entry))
            throw Refused($"A track of \"{build.Name}\" is not named as it should be.");
        byte[] points = files.Read(track.Entry);
        try
        {
            TrackForm.Read(points);
        }
        catch (InvalidDataException problem)
        {
            throw new ExchangeException($"The track \"{track.FileName}\" of \"{build.Name}\" is damaged.", "Have it exported again. Nothing was taken in.", problem);
        }

        return outing with { Track = track with { Points = points } };
    }

    private static void Sound(string name, params ReadOnlySpan<double?> numbers)
    {
        foreach (double? number in numbers)
        {
            if (number is double value && !double.IsFinite(value))
                throw Refused($"\"{name}\" has a number that cannot be.");
        }
    }

    private static string Key(string name, string batch) => $"{name}\n{batch}";

    private static ExchangeException Refused(string why) => new(why, "Have it exported again. Nothing was taken in.");

    /// <summary>The list of contents as it is written.</summary>
    private sealed record BundleList(string Kind, int Layout, string MadeBy, string Name, IReadOnlyList<string> Tags, DateTimeOffset AddedAt, IReadOnlyList<ListedRevision> Revisions, IReadOnlyList<SealedFile> Files);

    /// <summary>A revision in the list.</summary>
    private sealed record ListedRevision(int Number, int? Parent, string MadeFrom, string Sha256, string Note, DateTimeOffset MadeAt, string MadeBy, ListedResults? Results)
    {
        public static ListedRevision Of(BundledRevision own) =>
            new(own.Number, own.Parent, own.MadeFrom, own.Hash, own.Note, own.MadeAt, own.MadeBy, own.Results is { } results ? new(results.MadeBy, results.MadeAt) : null);
    }

    /// <summary>Who worked results out, and when.</summary>
    private sealed record ListedResults(string MadeBy, DateTimeOffset MadeAt);
}
