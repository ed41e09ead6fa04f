using Finwright.Page.Works;
using Finwright.Workshop.Shelf;

namespace Finwright.Page.Editing;

/// <summary>The designs that are open, one session each.</summary>
public sealed class OpenDesigns(Desk desk, WorkFloor floor, TimeProvider time) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly Dictionary<long, DesignSession> _sessions = [];

    /// <summary>Opens a design, or joins in when it is open.</summary>
    /// <param name="name">Its name on the shelf.</param>
    /// <returns>The session; null when there is no such design.</returns>
    public DesignSession? Open(string name)
    {
        if (desk.Ask(store => store.Shelf.Find(name)) is not ShelvedDesign shelved)
            return null;
        lock (_gate)
        {
            if (!_sessions.TryGetValue(shelved.Id, out DesignSession? session))
                _sessions[shelved.Id] = session = new(desk, floor, time, shelved);
            // Renamed meanwhile: tabs that show it go on with the same session, so that none can overwrite another.
            session.Name = shelved.Name;
            return session;
        }
    }

    /// <summary>Closes a design: after it is gone for good.</summary>
    /// <param name="design">Number of the design.</param>
    public void Close(long design)
    {
        lock (_gate)
        {
            if (_sessions.Remove(design, out DesignSession? session))
                session.Dispose();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            foreach (DesignSession session in _sessions.Values)
                session.Dispose();
            _sessions.Clear();
        }
    }
}
