using Finwright.Strength.Files;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>From the store's records to those of a bundle, and back.</summary>
internal static class BundleParts
{
    /// <summary>A build with all that hangs on it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <param name="revision">Number of its revision in the design.</param>
    public static BundledBuild Of(WorkshopStore store, Build build, int revision) => new(
        revision,
        build.Name,
        build.MadeOn,
        Label(store, build.FilamentId),
        Label(store, build.ResinId),
        build.PlasticGrams,
        build.ResinMl,
        build.MassGrams,
        build.PrintHours,
        build.RoomCelsius,
        build.BathCelsius,
        build.PeakCelsius,
        build.Cost,
        build.Currency,
        build.Problems,
        build.Note,
        [.. store.Builds.Parts(build.Id).Select(part => new BundledPart(part.Part, part.PrintedOn, Label(store, part.FilamentId), part.PlasticGrams, part.PrintHours, part.Note))],
        [.. store.Builds.Photos(build.Id).Select(photo => new BundledPhoto(photo.Path, photo.Caption))],
        [.. store.Stock.Uses(build: build.Id).Select(use => new BundledUse(Label(store, use.ItemId)!, use.Quantity, use.UsedOn, use.Note))],
        [.. store.Bench.List(build.Id).Select(session => new BundledSession(session.TakenOn, session.RootHold, session.Note, [.. session.Readings.Select(Reading)]))],
        [.. store.Outings.List(build.Id).Reverse().Select(outing => Outing(store, outing))]);

    /// <summary>An item of stock.</summary>
    public static BundledItem Of(StockItem item) =>
        new(item.Kind, item.Name, item.Batch, item.Material, item.Quantity, item.Unit, item.Price, item.Currency, item.BoughtOn, item.OpenedOn, item.UseBefore, item.Note);

    /// <summary>An item of stock, back.</summary>
    public static StockItem Item(BundledItem item) => new()
    {
        Kind = item.Kind,
        Name = item.Name,
        Batch = item.Batch,
        Material = item.Material,
        Quantity = item.Quantity,
        Unit = item.Unit,
        Price = item.Price,
        Currency = item.Currency,
        BoughtOn = item.BoughtOn,
        OpenedOn = item.OpenedOn,
        UseBefore = item.UseBefore,
        Note = item.Note,
    };

    /// <summary>A reading.</summary>
    public static BundledReading Reading(BenchReadingLine own) => new(
        own.MassKg, own.AtMm, own.AtChord, own.ReadAtMm, own.ReadChord, own.DeflectionMm?.Value, own.DeflectionMm?.Deviation, own.TwistDegrees?.Value, own.TwistDegrees?.Deviation, own.Note);

    /// <summary>A reading, back; its line is its place in the session.</summary>
    public static BenchReadingLine Line(BundledReading own, int at) => new(
        at + 1, own.MassKg, own.AtMm, own.AtChord, own.ReadAtMm, own.ReadChord, Value(own.DeflectionMm, own.DeflectionDeviationMm), Value(own.TwistDegrees, own.TwistDeviationDegrees), own.Note);

    /// <summary>An outing, back.</summary>
    public static Outing Outing(BundledOuting own, long build) => new()
    {
        SailedOn = own.SailedOn,
        Place = own.Place,
        WindLowKnots = own.WindLowKnots,
        WindHighKnots = own.WindHighKnots,
        Sail = own.Sail,
        SailM2 = own.SailM2,
        Board = own.Board,
        Rider = own.Rider,
        BuildId = build,
        Grip = own.Grip,
        SpinOuts = own.SpinOuts,
        Speed = own.Speed,
        Feel = own.Feel,
        Note = own.Note,
    };

    private static BundledOuting Outing(WorkshopStore store, Outing own) => new(
        own.SailedOn,
        own.Place,
        own.WindLowKnots,
        own.WindHighKnots,
        own.Sail,
        own.SailM2,
        own.Board,
        own.Rider,
        own.Grip,
        own.SpinOuts,
        own.Speed,
        own.Feel,
        own.Note,
        store.Outings.Track(own.Id) is { } track ? new(track.FileName, track.Hash, "") { Points = track.Points } : null);

    private static ReadValue? Value(double? value, double? deviation) => value is double read && deviation is double doubt ? new(read, doubt) : null;

    private static ItemLabel? Label(WorkshopStore store, long? item) => item is long id ? new(store.Stock.Get(id).Name, store.Stock.Get(id).Batch) : null;
}
