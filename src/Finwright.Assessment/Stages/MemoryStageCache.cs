using System.Diagnostics.CodeAnalysis;

namespace Finwright.Assessment.Stages;

/// <summary>Keeps the latest used results in memory and drops the one longest unused when full.</summary>
public sealed class MemoryStageCache : IStageCache
{
    /// <summary>Results kept unless said otherwise: some ten designs with all their stages, tens of megabytes of meshes.</summary>
    public const int DefaultCapacity = 64;

    private readonly int _capacity;
    private readonly Lock _gate = new();
    private readonly Dictionary<StageKey, LinkedListNode<(StageKey Key, object Result)>> _places = [];
    private readonly LinkedList<(StageKey Key, object Result)> _latestFirst = [];

    /// <summary>Creates an empty cache.</summary>
    /// <param name="capacity">Results kept at most, at least 1.</param>
    public MemoryStageCache(int capacity = DefaultCapacity)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(capacity, 1);
        _capacity = capacity;
    }

    /// <summary>Results kept now.</summary>
    public int Count
    {
        get
        {
            lock (_gate)
                return _places.Count;
        }
    }

    /// <inheritdoc/>
    public bool TryGet<T>(StageKey key, [NotNullWhen(true)] out StageResult<T>? result)
        where T : class
    {
        lock (_gate)
        {
            if (!_places.TryGetValue(key, out LinkedListNode<(StageKey Key, object Result)>? place))
            {
                result = null;
                return false;
            }

            _latestFirst.Remove(place);
            _latestFirst.AddFirst(place);
            result = place.Value.Result as StageResult<T>;
            return result is not null;
        }
    }

    /// <inheritdoc/>
    public void Keep<T>(StageKey key, StageResult<T> result)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(result);
        lock (_gate)
        {
            if (_places.Remove(key, out LinkedListNode<(StageKey Key, object Result)>? old))
                _latestFirst.Remove(old);
            _places[key] = _latestFirst.AddFirst((key, result));
            if (_places.Count > _capacity)
            {
                _places.Remove(_latestFirst.Last!.Value.Key);
                _latestFirst.RemoveLast();
            }
        }
    }
}
