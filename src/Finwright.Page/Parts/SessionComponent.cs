using Finwright.Page.Editing;
using Finwright.Page.Words;
using Microsoft.AspNetCore.Components;

namespace Finwright.Page.Parts;

/// <summary>A part of the page that shows the open design and follows it: with all others under one <see cref="Following"/>, else by itself.</summary>
public abstract class SessionComponent : ComponentBase, IDisposable
{
    private int _isDue;
    private Moment? _seen;
    private Standing? _now;
    private object? _shown;

    /// <summary>The open design.</summary>
    [CascadingParameter]
    public DesignSession Session { get; set; } = default!;

    /// <summary>What this tab shows of it.</summary>
    [CascadingParameter]
    public SheetView View { get; set; } = default!;

    /// <summary>When all parts are drawn again; null where this one follows by itself.</summary>
    [CascadingParameter]
    public Moment? Moment { get; set; }

    /// <summary>The reader's words, numbers and units.</summary>
    [Inject]
    public Reader T { get; set; } = default!;

    /// <summary>What is known now: one state for a whole drawing, while others work on the next.</summary>
    protected Standing Now => _now ?? Session.Now;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        (_seen, _now) = (Moment, Session.Now);
        if (Moment is not null)
            return;
        Session.Changed += Follow;
        View.Changed += Follow;
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_seen == Moment)
            return;
        _seen = Moment;
        TakeUp();
    }

    /// <summary>What the part shows, as one value: while it stays equal the part is not drawn again. Null when that cannot be told.</summary>
    protected virtual object? Shown() => null;

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        // An event of this part may draw it before it was told of the change that it made.
        if (!ReferenceEquals(_now, Session.Now))
            TakeUp();
        object? shown = Shown();
        bool isOther = shown is null || !shown.Equals(_shown);
        _shown = shown;
        return isOther;
    }

    /// <summary>The design changed, or what is known of it; before it is drawn again.</summary>
    protected virtual void OnSessionChanged()
    {
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets go of what the part holds.</summary>
    protected virtual void Dispose(bool disposing)
    {
        Session.Changed -= Follow;
        View.Changed -= Follow;
    }

    private void TakeUp()
    {
        _now = Session.Now;
        OnSessionChanged();
    }

    // Changes come faster than a browser draws: one drawing stands for all that came before it.
    private void Follow()
    {
        if (Interlocked.Exchange(ref _isDue, 1) == 0)
        {
            _ = InvokeAsync(async () =>
            {
                _isDue = 0;
                try
                {
                    TakeUp();
                    StateHasChanged();
                }
#pragma warning disable CA1031 // Handed on to whoever tells the reader; unseen it would be lost.
                catch (Exception fault)
#pragma warning restore CA1031
                {
                    await DispatchExceptionAsync(fault);
                }
            });
        }
    }
}
