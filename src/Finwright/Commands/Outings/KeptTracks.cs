using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Tracks as they come out of the store.</summary>
internal static class KeptTracks
{
    /// <summary>The track of an outing.</summary>
    /// <exception cref="StoreException">Its bytes are damaged.</exception>
    public static Track Unpacked(KeptTrack kept, Outing outing)
    {
        try
        {
            return TrackForm.Read(kept.Points);
        }
        catch (InvalidDataException damaged)
        {
            throw new StoreException(StoreProblem.Damaged, $"The track of outing {outing.Id} cannot be read: {damaged.Message}", $"Delete the outing with \"finwright outing delete {outing.Id}\", and add {ShelfText.Typed(kept.FileName)} again.", damaged);
        }
    }
}
