using Finwright.Page.Words;
using Finwright.Page.Works;
using Finwright.Workshop.Storing;
using Microsoft.AspNetCore.Components;

namespace Finwright.Page.Parts;

/// <summary>A part of the page that shows what the store holds and follows its changes.</summary>
public abstract class DeskComponent : ComponentBase, IDisposable
{
    /// <summary>The store.</summary>
    [Inject]
    public Desk Desk { get; set; } = default!;

    /// <summary>The reader's words, numbers and units.</summary>
    [Inject]
    public Reader T { get; set; } = default!;

    /// <summary>Why the last change could not be made; null when it was.</summary>
    protected string? Refusal { get; set; }

    /// <summary>Whether the part is gone.</summary>
    protected bool IsGone { get; private set; }

    /// <inheritdoc/>
    protected override void OnInitialized() => Desk.Changed += Follow;

    /// <summary>The store changed; before it is drawn again.</summary>
    protected virtual void OnDeskChanged()
    {
    }

    /// <summary>Changes the store; a refusal is told, and nothing is lost.</summary>
    /// <returns>Whether it was made.</returns>
    protected bool Try(Action<WorkshopStore> change)
    {
        try
        {
            Desk.Change(change);
            Refusal = null;
            return true;
        }
        catch (StoreException refusal)
        {
            Refusal = $"{T[refusal.Message]} {T[refusal.Remedy]}";
            return false;
        }
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
        IsGone = true;
        Desk.Changed -= Follow;
    }

    private void Follow() => _ = InvokeAsync(() =>
    {
        if (IsGone)
            return;
        OnDeskChanged();
        StateHasChanged();
    });
}
