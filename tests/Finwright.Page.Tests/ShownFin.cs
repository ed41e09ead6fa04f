using Bunit;
using Finwright.Page.Editing;
using Finwright.Page.Works;
using Finwright.Papers;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Finwright.Page.Tests;

/// <summary>An open design and a tab that shows parts of it, without a browser.</summary>
internal sealed class ShownFin : IDisposable
{
    private readonly Workbench _bench = new();
    private readonly BunitContext _context = new();

    public ShownFin(PaperLanguage language = PaperLanguage.English, PaperUnits units = PaperUnits.Metric, Action<IServiceCollection>? give = null)
    {
        Session = _bench.Session();
        _context.Services.AddSingleton(MadeFin.Reader(language, units));
        _context.Services.AddSingleton(_bench.Desk).AddSingleton<Finwright.Page.Libraries.LibraryShelf>();
        give?.Invoke(_context.Services);
        _context.Renderer.SetRendererInfo(new("Server", isInteractive: true));
        _context.JSInterop.Mode = JSRuntimeMode.Loose;
        _context.JSInterop.SetupModule("./_content/Finwright.Page/js/drawings.js").Mode = JSRuntimeMode.Loose;
    }

    public DesignSession Session { get; }

    public SheetView View { get; } = new();

    public Desk Desk => _bench.Desk;

    public BunitJSInterop Browser => _context.JSInterop;

    /// <summary>Shows a part of the page.</summary>
    public IRenderedComponent<T> Show<T>(Action<ComponentParameterCollectionBuilder<T>>? parameters = null)
        where T : IComponent =>
        _context.Render<T>(builder =>
        {
            builder.AddCascadingValue(Session).AddCascadingValue(View);
            parameters?.Invoke(builder);
        });

    public void Dispose()
    {
        _context.Dispose();
        _bench.Dispose();
    }
}
