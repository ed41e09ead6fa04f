using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;

namespace Finwright.Page.Words;

/// <summary>The page's texts in German, by their English: the files in <c>Words/German</c>, one for each room of the page.</summary>
internal static class GermanTexts
{
    private static readonly FrozenDictionary<string, string> Texts = Read();

    /// <summary>Every English text that has a German one.</summary>
    public static IEnumerable<string> Known => Texts.Keys;

    /// <summary>A text in German; the English one when it has none.</summary>
    public static string Of(string english) => Texts.GetValueOrDefault(english, english);

    private static FrozenDictionary<string, string> Read()
    {
        Assembly assembly = typeof(GermanTexts).Assembly;
        Dictionary<string, string> all = new(StringComparer.Ordinal);
        foreach (string file in assembly.GetManifestResourceNames().Where(name => name.StartsWith("german/", StringComparison.Ordinal)))
        {
            using Stream stream = assembly.GetManifestResourceStream(file)!;
            foreach ((string english, string german) in JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!)
                all[english] = german;
        }

        return all.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
