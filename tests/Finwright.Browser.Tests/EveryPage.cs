namespace Finwright.Browser.Tests;

/// <summary>The pages of the invented season, each by a name for its picture. A page that is added is added here.</summary>
internal static class EveryPage
{
    /// <summary>Name and address.</summary>
    public static readonly IReadOnlyDictionary<string, string> Paths = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["shelf"] = "/",
        ["sheet"] = "/design/Sandbar%20delta",
        ["settings"] = "/settings",
        ["not-there"] = "/nowhere",
    };
}
