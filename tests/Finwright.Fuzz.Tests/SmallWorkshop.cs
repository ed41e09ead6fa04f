using System.Text;
using Finwright.Design;
using Finwright.Page.RunSheets;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.Outings;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Fuzz.Tests;

/// <summary>A workshop with one or two things of every kind: a small file is spoilt in many more ways than a long one.</summary>
internal static class SmallWorkshop
{
    /// <summary>What made it.</summary>
    public const string MadeBy = "Finwright in trial";

    /// <summary>Name of its only design.</summary>
    public const string DesignName = "Sandbar delta";

    /// <summary>The steps of its run sheet.</summary>
    public static RunPlan Plan { get; } = new()
    {
        Language = "en",
        Origin = DesignName,
        Danger = new("80 °C", ["Into the bath."]),
        Chapters =
        [
            new("Make ready", "", [new() { Id = "s1", Text = "Lay out the cups.", Notes = ["Two of them."], Facts = [new("Cup", "85 mm")] }]),
            new("Pour", "Slowly.", [new() { Id = "s2", Text = "Pour.", Timer = new("Poured", 1800, "Top up", 1500, "Soon") }, new() { Id = "s3", Text = "Watch.", Due = new("s2", 60, 90, 120), Thermometer = new("blade", "s2", 340, [new(0, 290, 293, 296)]) }]),
        ],
    };

    /// <summary>Things that a phone sends for that sheet.</summary>
    public static byte[] Sent { get; } =
        """[{"key":"s1:tick","value":"yes","at":1784037600000},{"key":"s2:timer","value":"2026-07-14T14:00:00.000Z","at":1784037601000},{"key":"s1:note","value":"Cup 2 leaks.","at":1784037602000},{"key":"reading:00c0ffee","value":"{\"part\":\"blade\",\"kelvin\":301.5,\"at\":\"2026-07-14T14:10:00Z\"}","at":1784037603000}]"""u8.ToArray();

    /// <summary>Fills an empty store.</summary>
    /// <param name="store">The store.</param>
    /// <param name="design">The design.</param>
    /// <param name="track">The track that is kept.</param>
    /// <param name="readings">Readings of the bench.</param>
    public static void Fill(WorkshopStore store, FinDesign design, KeptTrack track, BenchSession readings)
    {
        Revision first = store.Shelf.Add(DesignName, new(design, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0 L10 10\" fill=\"none\"/></svg>", "as drawn", MadeBy), ["low water"]);
        Revision second = store.Shelf.Revise(first.DesignId, new(design with { Name = DesignName + " 2" }, null, "stiffer", MadeBy), first.Id);
        store.Shelf.KeepPrediction(second.Id, MadeBy, new FinResults { Name = DesignName, DesignSha256 = second.Hash, Groups = [ResultGroup.Shape], Lines = [] }.Write());
        long filament = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "PETG grey", Batch = "7", Quantity = 1000, Unit = StockUnit.Grams, Price = 20, Currency = "EUR", BoughtOn = new(2026, 5, 2) }).Id;
        long resin = store.Stock.Add(new() { Kind = StockKind.Resin, Name = "Slow laminating", Quantity = 800, Unit = StockUnit.Millilitres }).Id;
        Build build = store.Builds.Add(new() { RevisionId = second.Id, Name = "Sandbar one", MadeOn = new(2026, 6, 1), FilamentId = filament, ResinId = resin, PlasticGrams = 180, ResinMl = 120, MassGrams = 330, PrintHours = 11, RoomCelsius = 20, PeakCelsius = 48 });
        store.Builds.Keep(build.Id, new BuildPart("blade", new(2026, 5, 30), filament, 150, 9, ""));
        store.Builds.Keep(build.Id, new BuildPhoto("/photos/sandbar.jpg", "after sanding"));
        store.Stock.Use(new(0, filament, build.Id, 180, new(2026, 5, 30), ""));
        BenchSession session = store.Bench.Add(readings with { BuildId = build.Id });
        store.Outings.Add(new() { SailedOn = new(2026, 7, 14), Place = "Lagoon", WindLowKnots = 14, WindHighKnots = 22, SailM2 = 5.4, BuildId = build.Id, Grip = 4, SpinOuts = 1, Speed = 3, Feel = 5, Note = "chop" }, track);
        store.Calibrations.Add([new(0, new(2026, 6, 3, 18, 0, 0, TimeSpan.Zero), MadeBy, build.Id, filament, null, LearnedQuantity.WallStiffness, 0.9, 0.8, 1, [session.Id], "")]);
        store.Drafts.Begin(first.DesignId, second.Id, DesignWriter.Write(design));
        store.Drafts.Keep(first.DesignId, new(1, "Rake", "$.shape.outline.rake_degrees", DesignWriter.Write(design with { Name = "in work" })));
        RunSheet sheet = store.RunSheets.Add(new() { DesignId = first.DesignId, BuildId = build.Id, Kind = RunKind.Pour, Title = "Pour of Sandbar one", MadeBy = MadeBy, Plan = Plan.ToJson() });
        store.RunSheets.Enter(sheet.Id, RunEntries.Read(Plan, Sent)!);
        store.Library.Add(DesignPart.Of(LibraryKind.Board, "Slalom board", "", design));
        store.Library.Add(DesignPart.Of(LibraryKind.Rider, "Guest", "left us", design));
        store.Library.Delete(store.Library.List(LibraryKind.Rider)[0].Id);
    }

    /// <summary>Looks at everything in a store, as the program's lists and pages do.</summary>
    /// <param name="store">The store.</param>
    /// <returns>How much text was seen.</returns>
    public static long LookAtAll(WorkshopStore store)
    {
        StringBuilder seen = new();
        foreach (ShelvedDesign design in store.Shelf.List())
        {
            foreach (Revision revision in store.Shelf.Revisions(design.Id))
                seen.Append(revision).Append(store.Shelf.Read(revision.Id).HasErrors).Append(store.Shelf.Picture(revision.Id)).Append(store.Shelf.Prediction(revision.Id) is { } kept ? FinResults.Read(kept.Results)?.Lines.Count : 0);
            seen.Append(store.Drafts.Find(design.Id)).Append(store.Drafts.Read(design.Id)?.HasErrors);
        }

        foreach (Build build in store.Builds.List())
            seen.Append(build).AppendJoin(' ', store.Builds.Parts(build.Id)).AppendJoin(' ', store.Builds.Photos(build.Id));
        foreach (Outing outing in store.Outings.List())
            seen.Append(outing).Append(OutingTracks.Of(store, outing)?.Points.Count);
        foreach (RunSheet sheet in store.RunSheets.List())
            seen.Append(sheet).Append(StepsOf(store.RunSheets.Get(sheet.Id).Plan)).AppendJoin(' ', store.RunSheets.Entries(sheet.Id)).AppendJoin(' ', store.RunSheets.Readings(sheet.Id));
        foreach (LibraryItem item in store.Library.List())
            seen.Append(item).Append(LibraryFile.Read(item.Kind, item.Text).Findings.Count);
        seen.AppendJoin(' ', store.Stock.List()).AppendJoin(' ', store.Stock.Uses()).AppendJoin(' ', store.Bench.List()).AppendJoin(' ', store.Calibrations.List()).AppendJoin(' ', store.Bin.List()).Append(StoreContents.Of(store));
        return seen.Length;
    }

    // The page says so when the steps of a sheet cannot be read.
    private static int StepsOf(string plan)
    {
        try
        {
            return RunPlan.Of(plan).Steps().Count();
        }
        catch (InvalidDataException)
        {
            return 0;
        }
    }
}
