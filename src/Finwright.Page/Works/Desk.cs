using Finwright.Page.Hosting;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Works;

/// <summary>The workshop's store as the page uses it: one user at a time, and what they do in one go is done in one go.</summary>
public sealed class Desk : IDisposable
{
    private const string Program = "Finwright ";

    private readonly Lock _gate = new();
    private readonly WorkshopStore _store;

    private Desk(WorkshopStore store, string madeBy) => (_store, MadeBy) = (store, madeBy);

    /// <summary>Program and version, for what is kept.</summary>
    public string MadeBy { get; }

    /// <summary>Version of the program, without its name.</summary>
    public string ProgramVersion => MadeBy.StartsWith(Program, StringComparison.Ordinal) ? MadeBy[Program.Length..] : MadeBy;
    /// <summary>Why nothing can be changed, with what to do; null when everything can.</summary>
    public StoreException? Refusal => Ask(store => store.Refusal);

    /// <summary>Something in the store was changed by the page.</summary>
    public event Action? Changed;

    /// <summary>Opens the store.</summary>
    /// <exception cref="StoreException">It cannot be opened.</exception>
    public static Desk Open(PageSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return new(WorkshopStore.Open(settings.StorePath, time: settings.Time), settings.MadeBy);
    }

    /// <summary>A store without a file, for trying.</summary>
    internal static Desk InMemory(TimeProvider? time = null) => new(WorkshopStore.InMemory(time), "Finwright in trial");

    /// <summary>Looks something up.</summary>
    /// <param name="look">The question; quick, for others wait.</param>
    public T Ask<T>(Func<WorkshopStore, T> look)
    {
        ArgumentNullException.ThrowIfNull(look);
        lock (_gate)
            return look(_store);
    }

    /// <summary>Changes something: all of it or nothing; then tells whoever shows it.</summary>
    /// <param name="change">The change.</param>
    /// <exception cref="StoreException">It cannot be made; nothing was.</exception>
    public T Change<T>(Func<WorkshopStore, T> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        T answer;
        lock (_gate)
            answer = _store.Together(() => change(_store));
        Changed?.Invoke();
        return answer;
    }

    /// <inheritdoc cref="Change{T}(Func{WorkshopStore, T})"/>
    public void Change(Action<WorkshopStore> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        Change(store =>
        {
            change(store);
            return true;
        });
    }

    /// <summary>Keeps what only one page needs to know of: nobody else is told.</summary>
    internal T Note<T>(Func<WorkshopStore, T> change)
    {
        lock (_gate)
            return change(_store);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
            _store.Dispose();
    }
}
