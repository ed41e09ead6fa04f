using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Works;

namespace Finwright.Page.Tests;

/// <summary>A store, in memory unless another desk is given, with one design on its shelf, and what the page needs to open it.</summary>
internal sealed class Workbench : IDisposable
{
    public Workbench(FinDesign? design = null, Desk? desk = null)
    {
        Design = design ?? new() { Name = "Plain", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } };
        Desk = desk ?? Desk.InMemory();
        Desk.Change(store => store.Shelf.Add(Design.Name, new(Design, Picture: null, "", "test"), []));
        Floor = new(TimeProvider.System) { WorksAhead = () => WorksAhead };
        Open = new(Desk, Floor, TimeProvider.System);
    }

    /// <summary>Whether print, pour and cure are worked out unasked.</summary>
    public bool WorksAhead { get; set; } = true;

    public FinDesign Design { get; }

    public Desk Desk { get; }

    public WorkFloor Floor { get; }

    public OpenDesigns Open { get; }

    public DesignSession Session() => Open.Open(Design.Name)!;

    /// <summary>Opens everything anew on the same store, as after a restart.</summary>
    public OpenDesigns Restarted() => new(Desk, Floor, TimeProvider.System);

    public void Dispose()
    {
        Open.Dispose();
        Floor.Dispose();
        Desk.Dispose();
    }
}
