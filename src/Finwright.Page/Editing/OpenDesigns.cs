using Finwright.Page.Works;
using Finwright.Workshop.Shelf;

namespace Finwright.Page.Editing;

/// <summary>The designs that are open, one session each. Of those that no tab shows, the ones opened last stay open: coming back finds all results.</summary>
public sealed class OpenDesigns(Desk desk, WorkFloor floor, TimeProvider time) : IDisposable
{
    /// <summary>So many stay open, those that tabs show among them; each holds its meshes and results, some megabytes. Our own choice.</summary>
    public const int MostKept = 20;

    private readonly Lock _gate = new();

    // The one that was opened last comes last.
    private readonly List<DesignSession> _sessions = [];

    /// <summary>How many are open.</summary>
    internal int Count
    {
        get
        {
            lock (_gate)
                return _sessions.Count;
        }
    }

    /// <summary>Opens a design, or joins in when it is open. Who holds on to it watches <see cref="DesignSession.Changed"/>; else another time it is opened anew.</summary>
    /// <param name="name">Its name on the shelf.</param>
    /// <returns>The session; null when there is no such design.</returns>
    public DesignSession? Open(string name)
    {
        if (desk.Ask(store => store.Shelf.Find(name)) is not ShelvedDesign shelved)
            return null;
        lock (_gate)
        {
            DesignSession session = _sessions.Find(own => own.DesignId == shelved.Id) ?? new(desk, floor, time, shelved);
            _sessions.Remove(session);
            _sessions.Add(session);
            // Renamed meanwhile: tabs that show it go on with the same session, so that none can overwrite another.
            session.Name = shelved.Name;
            CloseUnwatched();
            return session;
        }
    }

    /// <summary>Closes a design: after it is gone for good.</summary>
    /// <param name="design">Number of the design.</param>
    public void Close(long design)
    {
        lock (_gate)
        {
            if (_sessions.Find(own => own.DesignId == design) is not { } session)
                return;
            _sessions.Remove(session);
            session.Dispose();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            foreach (DesignSession session in _sessions)
                session.Dispose();
            _sessions.Clear();
        }
    }

    // Never the last: whoever asked for it is about to watch it.
    private void CloseUnwatched()
    {
        for (int i = 0; _sessions.Count > MostKept && i < _sessions.Count - 1;)
        {
            if (_sessions[i].TryClose())
                _sessions.RemoveAt(i);
            else
                i++;
        }
    }
}
