using System.Security.Cryptography;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Outings;

/// <summary>Tracks on their way into the store and out of it.</summary>
public static class OutingTracks
{
    /// <summary>Reads a file of positions as it is to be kept.</summary>
    /// <param name="file">The file, from its start; it must be one that can be read again.</param>
    /// <param name="fileName">Its name without its folder.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>What was read, and what to keep: null when there is no track in it.</returns>
    public static (TrackReading Reading, KeptTrack? Kept) Read(Stream file, string fileName, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        long start = file.Position;
        TrackReading reading = GpxFile.Read(file, cancellation);
        if (reading.Track is not { } track)
            return (reading, null);
        file.Position = start;
        return (reading, new(fileName, Convert.ToHexStringLower(SHA256.HashData(file)), TrackForm.Write(track)));
    }

    /// <summary>The track of an outing, unpacked; null when it has none.</summary>
    /// <param name="store">The store.</param>
    /// <param name="outing">The outing.</param>
    /// <exception cref="StoreException">What is kept of it is damaged.</exception>
    public static Track? Of(WorkshopStore store, Outing outing)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(outing);
        if (!outing.HasTrack || store.Outings.Track(outing.Id) is not { } kept)
            return null;
        try
        {
            return TrackForm.Read(kept.Points);
        }
        catch (InvalidDataException damaged)
        {
            throw new StoreException(StoreProblem.Damaged, $"The track of outing {outing.Id} cannot be read: {damaged.Message}", $"Delete the outing with \"finwright outing delete {outing.Id}\", and add \"{kept.FileName}\" again.", damaged);
        }
    }
}
