using System.Globalization;
using System.Text;

namespace Finwright.Making.Motion;

/// <summary>Counts the words of a motion file by name.</summary>
internal sealed class WordCounts
{
    // A file has some dozens; a thousand names are no longer words.
    private const int MostNames = 1000, LongestName = 64;

    /// <summary>Name under which words beyond the thousandth are counted.</summary>
    public const string Others = "(others)";

    // Numbers in tenths, so that G92.1 is a word of its own; up to G999.9 and M9999.9.
    private readonly long[] _g = new long[10_000], _m = new long[100_000];
    private readonly Dictionary<string, long> _named = new(StringComparer.Ordinal);

    public void Add(char letter, int tenths)
    {
        if (letter is 'G')
            _g[tenths]++;
        else
            _m[tenths]++;
    }

    public void Add(ReadOnlySpan<byte> name)
    {
        Span<char> text = stackalloc char[LongestName];
        int length = Math.Min(name.Length, LongestName);
        for (int i = 0; i < length; i++)
            text[i] = char.ToUpperInvariant((char)name[i]);
        ReadOnlySpan<char> key = text[..length];
        Dictionary<string, long>.AlternateLookup<ReadOnlySpan<char>> named = _named.GetAlternateLookup<ReadOnlySpan<char>>();
        if (named.TryGetValue(key, out long count))
            named[key] = count + 1;
        else if (_named.Count < MostNames)
            named[key] = 1;
        else
            _named[Others] = _named.GetValueOrDefault(Others) + 1;
    }

    public long G(int number) => _g[10 * number];

    public long M(int number) => _m[10 * number];

    public SortedDictionary<string, long> ToDictionary()
    {
        SortedDictionary<string, long> all = new(_named, StringComparer.Ordinal);
        Collect('G', _g);
        Collect('M', _m);
        return all;

        void Collect(char letter, long[] counts)
        {
            for (int i = 0; i < counts.Length; i++)
            {
                if (counts[i] > 0)
                    all[Name(letter, i)] = all.GetValueOrDefault(Name(letter, i)) + counts[i];
            }
        }
    }

    /// <summary>The word as people write it.</summary>
    public static string Name(char letter, int tenths)
    {
        StringBuilder name = new();
        name.Append(letter).Append((tenths / 10).ToString(CultureInfo.InvariantCulture));
        if (tenths % 10 != 0)
            name.Append('.').Append((tenths % 10).ToString(CultureInfo.InvariantCulture));
        return name.ToString();
    }
}
