using System.Text.Json.Serialization;
using Finwright.Design;
using Finwright.Workshop.Stock;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>What was built of the revisions in a bundle, measured and sailed. Names of fields carry their units.</summary>
/// <param name="Stock">The items of stock that the builds name.</param>
/// <param name="Builds">The builds, the first first.</param>
internal sealed record BundledBuilds(IReadOnlyList<BundledItem> Stock, IReadOnlyList<BundledBuild> Builds);

/// <summary>An item of stock.</summary>
internal sealed record BundledItem(
    StockKind Kind, string Name, string Batch, string Material, double Quantity, StockUnit Unit, double? Price, string Currency, DateOnly? BoughtOn, DateOnly? OpenedOn, DateOnly? UseBefore, string Note);

/// <summary>An item of stock, as builds name it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Batch">Its batch; empty when it has none.</param>
internal sealed record ItemLabel(string Name, string Batch);

/// <summary>A build.</summary>
internal sealed record BundledBuild(
    int Revision,
    string Name,
    DateOnly? MadeOn,
    ItemLabel? Filament,
    ItemLabel? Resin,
    double? PlasticG,
    double? ResinMl,
    double? MassG,
    double? PrintHours,
    double? RoomCelsius,
    double? BathCelsius,
    double? PeakCelsius,
    double? Cost,
    string Currency,
    string Problems,
    string Note,
    IReadOnlyList<BundledPart> Parts,
    IReadOnlyList<BundledPhoto> Photos,
    IReadOnlyList<BundledUse> Uses,
    IReadOnlyList<BundledSession> Bench,
    IReadOnlyList<BundledOuting> Outings);

/// <summary>A printed part of a build.</summary>
internal sealed record BundledPart(string Part, DateOnly? PrintedOn, ItemLabel? Filament, double? PlasticG, double? PrintHours, string Note);

/// <summary>Where a photo of a build lies: the photo itself is neither read nor sent.</summary>
internal sealed record BundledPhoto(string Path, string Caption);

/// <summary>What was taken from stock for a build, in the item's unit.</summary>
internal sealed record BundledUse(ItemLabel Item, double Quantity, DateOnly? UsedOn, string Note);

/// <summary>Readings of one day.</summary>
internal sealed record BundledSession(DateOnly TakenOn, RootHold RootHold, string Note, IReadOnlyList<BundledReading> Readings);

/// <summary>One hung weight and what was read under it.</summary>
internal sealed record BundledReading(
    double MassKg,
    double AtMm,
    ChordPlace AtChord,
    double ReadAtMm,
    ChordPlace ReadChord,
    double? DeflectionMm,
    double? DeflectionDeviationMm,
    double? TwistDegrees,
    double? TwistDeviationDegrees,
    string Note);

/// <summary>An outing.</summary>
internal sealed record BundledOuting(
    DateOnly SailedOn,
    string Place,
    double? WindLowKnots,
    double? WindHighKnots,
    string Sail,
    double? SailM2,
    string Board,
    string Rider,
    int? Grip,
    int? SpinOuts,
    int? Speed,
    int? Feel,
    string Note,
    BundledTrack? Track);

/// <summary>The track of an outing, in the form in which the store keeps it.</summary>
/// <param name="FileName">The file that it came from.</param>
/// <param name="Sha256">SHA-256 of that file, lower-case hexadecimal.</param>
/// <param name="Entry">The entry of the bundle that holds the points.</param>
internal sealed record BundledTrack(string FileName, string Sha256, string Entry)
{
    /// <summary>The packed points: what the entry holds.</summary>
    [JsonIgnore]
    public byte[] Points { get; init; } = [];
}
