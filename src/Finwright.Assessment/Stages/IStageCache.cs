using System.Diagnostics.CodeAnalysis;

namespace Finwright.Assessment.Stages;

/// <summary>Keeps results of stages by key. Losing one costs time, never correctness, so an implementation may drop what it likes. Safe for use from several threads.</summary>
/// <remarks>Typed by result, so that a cache on disk can serve the results that serialise and decline the others.</remarks>
public interface IStageCache
{
    /// <summary>Looks a result up.</summary>
    /// <param name="key">Key of the result.</param>
    /// <param name="result">The result kept under the key; null when there is none.</param>
    /// <returns>Whether there was one.</returns>
    bool TryGet<T>(StageKey key, [NotNullWhen(true)] out StageResult<T>? result)
        where T : class;

    /// <summary>Offers a result for keeping.</summary>
    /// <param name="key">Key of the result.</param>
    /// <param name="result">The result; immutable.</param>
    void Keep<T>(StageKey key, StageResult<T> result)
        where T : class;
}
