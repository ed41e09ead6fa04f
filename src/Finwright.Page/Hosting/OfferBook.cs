using System.Collections.Concurrent;

namespace Finwright.Page.Hosting;

/// <summary>What a browser may fetch for as long as the page that offers it is open, each offer under a name that nobody can guess.</summary>
/// <typeparam name="TOffer">What is offered.</typeparam>
public abstract class OfferBook<TOffer>
    where TOffer : class
{
    private readonly ConcurrentDictionary<string, TOffer> _offers = new(StringComparer.Ordinal);

    /// <summary>Offers something.</summary>
    /// <returns>Its name in addresses; <see cref="Close"/> ends the offer.</returns>
    public string Open(TOffer offer)
    {
        string name = UnguessableName.New();
        _offers[name] = offer;
        return name;
    }

    /// <summary>Offers it no longer.</summary>
    public void Close(string name) => _offers.TryRemove(name, out _);

    internal TOffer? Find(string name) => _offers.GetValueOrDefault(name);
}
