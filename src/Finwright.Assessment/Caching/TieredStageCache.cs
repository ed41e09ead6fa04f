using System.Diagnostics.CodeAnalysis;
using Finwright.Assessment.Stages;

namespace Finwright.Assessment.Caching;

/// <summary>A quick cache before a lasting one: what the lasting one finds, the quick one keeps.</summary>
/// <param name="quick">Asked first.</param>
/// <param name="lasting">Asked second.</param>
public sealed class TieredStageCache(IStageCache quick, IStageCache lasting) : IStageCache
{
    /// <inheritdoc/>
    public bool TryGet<T>(StageKey key, [NotNullWhen(true)] out StageResult<T>? result)
        where T : class
    {
        if (quick.TryGet(key, out result))
            return true;
        if (!lasting.TryGet(key, out result))
            return false;
        quick.Keep(key, result);
        return true;
    }

    /// <inheritdoc/>
    public void Keep<T>(StageKey key, StageResult<T> result)
        where T : class
    {
        quick.Keep(key, result);
        lasting.Keep(key, result);
    }
}
