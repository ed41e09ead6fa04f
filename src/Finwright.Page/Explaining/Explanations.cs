using System.Collections.Frozen;

namespace Finwright.Page.Explaining;

/// <summary>The explanation of every result that the page shows, by key.</summary>
public static class Explanations
{
    private static readonly FrozenDictionary<string, Explanation> All =
        WaterExplanations.All.Concat(StrengthExplanations.All).Concat(MakingExplanations.All).ToFrozenDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);

    /// <summary>Every key.</summary>
    public static IEnumerable<string> Keys => All.Keys;

    /// <summary>An explanation.</summary>
    /// <param name="key">Its key, for example <c>leeway</c>.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Explanation Of(string key) => All.TryGetValue(key, out Explanation? found) ? found : throw new ArgumentException($"Nothing explains \"{key}\".", nameof(key));
}
