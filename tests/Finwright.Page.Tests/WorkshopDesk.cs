using Bunit;
using Finwright.Page.Bench;
using Finwright.Page.Works;
using Finwright.Papers;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Stock;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Finwright.Page.Tests;

/// <summary>A store in memory with one design, a spool, a can and one build of them, and a tab that shows pages of the workshop.</summary>
internal sealed class WorkshopDesk : IDisposable
{
    // Stiff enough that a weight bends it as far as the method reaches.
    private readonly Workbench _bench = new(Scene.KnownFin.Design with { Name = "Plain" });
    private readonly BunitContext _context = new();
    private readonly BenchRoom _room;

    public WorkshopDesk(PaperLanguage language = PaperLanguage.English)
    {
        _room = new(Desk, TimeProvider.System);
        Reader = MadeFin.Reader(language, PaperUnits.Metric);
        (Filament, Build) = Desk.Change(store =>
        {
            StockItem spool = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey PETG", Quantity = 1000, Unit = StockUnit.Grams, Price = 20, Currency = "EUR" });
            return (spool, store.Builds.Add(new() { Name = "Plain one", RevisionId = store.Shelf.Find(_bench.Design.Name)!.Latest.Id, FilamentId = spool.Id }));
        });
        _context.Services.AddSingleton(Desk).AddSingleton(Reader).AddSingleton(TimeProvider.System).AddSingleton(_room).AddSingleton(_bench.Open);
        _context.JSInterop.Mode = JSRuntimeMode.Loose;
        _context.Renderer.SetRendererInfo(new("Server", isInteractive: true));
    }

    public Desk Desk => _bench.Desk;

    public Words.Reader Reader { get; }

    public StockItem Filament { get; }

    public Build Build { get; }

    public BenchRoom Room => _room;

    public IRenderedComponent<T> Show<T>(Action<ComponentParameterCollectionBuilder<T>>? parameters = null)
        where T : IComponent => parameters is null ? _context.Render<T>() : _context.Render(parameters);

    public void Dispose()
    {
        _context.Dispose();
        _room.Dispose();
        _bench.Dispose();
    }
}
