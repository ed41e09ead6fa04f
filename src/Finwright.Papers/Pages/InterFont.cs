using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Finwright.Papers.Pages;

/// <summary>
/// A face of the papers' type: Inter, with figures of one width. Reads of the font file (ISO/IEC 14496-22, Open Font Format: tables head, hhea, hmtx,
/// cmap format 4, GSUB single substitution) what is needed to lay out text.
/// </summary>
internal sealed class InterFont
{
    /// <summary>Height of capitals over the size of the type.</summary>
    public const double CapitalHeight = 0.727;

    private const char Missing = '?';
    private static readonly Lazy<InterFont> RegularRead = new(() => new("/Assets/Inter-Regular.ttf")), BoldRead = new(() => new("/Assets/Inter-SemiBold.ttf"));
    private readonly ushort[] _glyphs = new ushort[char.MaxValue + 1];
    private readonly int _unitsPerEm, _widths, _widthCount;

    private InterFont(string path)
    {
        Data = InterFile.Read(path);
        _unitsPerEm = Word(Table("head") + 18);
        _widths = Table("hmtx");
        _widthCount = Word(Table("hhea") + 34);
        ReadCharacters(TabularFigures());
    }

    /// <summary>The face of running text.</summary>
    public static InterFont Regular => RegularRead.Value;

    /// <summary>The face of heads.</summary>
    public static InterFont Bold => BoldRead.Value;

    /// <summary>The font file; its characters 0 to 9 are the figures of one width.</summary>
    public byte[] Data { get; }

    /// <summary>The face, bold or not.</summary>
    public static InterFont Of(bool bold) => bold ? Bold : Regular;

    /// <summary>Whether the face has a glyph for a character.</summary>
    public bool Covers(Rune character) => character.IsBmp && _glyphs[character.Value] != 0;

    /// <summary>How far a character moves on, over the size of the type.</summary>
    public double Advance(Rune character)
    {
        int glyph = character.IsBmp ? _glyphs[character.Value] : 0;
        return (double)Word(_widths + 4 * Math.Min(glyph, _widthCount - 1)) / _unitsPerEm;
    }

    /// <summary>A text as it can be drawn: one line; a sign that the type lacks becomes a question mark.</summary>
    public static string Printable(string text)
    {
        StringBuilder printable = new(text.Length);
        TextElementEnumerator signs = StringInfo.GetTextElementEnumerator(text);
        while (signs.MoveNext())
        {
            // A sign of several characters, for example a flag, is one question mark.
            Rune[] runes = [.. signs.GetTextElement().EnumerateRunes().Where(IsSeen)];
            if (runes.Length == 0)
                continue;
            if (runes.All(rune => Rune.IsWhiteSpace(rune) || Rune.IsControl(rune)))
                printable.Append(' ');
            else if (runes.All(rune => Regular.Covers(rune) && Bold.Covers(rune)))
                printable.AppendJoin("", runes);
            else
                printable.Append(Missing);
        }

        return printable.ToString();
    }

    // What joins, hides or only picks a shape takes no room of its own.
    private static bool IsSeen(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.Format => false,
        UnicodeCategory.NonSpacingMark => Regular.Covers(rune),
        _ => true,
    };

    private ushort Word(int at) => BinaryPrimitives.ReadUInt16BigEndian(Data.AsSpan(at));

    private int Table(string name)
    {
        for (int i = 0; i < Word(4); i++)
            if (Encoding.ASCII.GetString(Data, 12 + 16 * i, 4) == name)
                return BinaryPrimitives.ReadInt32BigEndian(Data.AsSpan(12 + 16 * i + 8));
        throw new InvalidDataException($"The type has no table \"{name}\".");
    }

    private void ReadCharacters(Dictionary<ushort, ushort> figures)
    {
        int map = CharacterMap(), segments = Word(map + 6) / 2;
        int ends = map + 14, starts = ends + 2 * segments + 2, deltas = starts + 2 * segments, offsets = deltas + 2 * segments;
        for (int i = 0; i < segments; i++)
        {
            int start = Word(starts + 2 * i), delta = Word(deltas + 2 * i), offset = Word(offsets + 2 * i);
            for (int c = start; c <= Word(ends + 2 * i) && c < char.MaxValue; c++)
            {
                int at = offsets + 2 * i + offset + 2 * (c - start);
                int listed = offset == 0 ? c : Word(at);
                if (char.IsAsciiDigit((char)c))
                {
                    if (offset == 0 || delta != 0 || !figures.TryGetValue((ushort)listed, out ushort figure))
                        throw new InvalidDataException("The type's figures of one width are not where they are expected.");
                    BinaryPrimitives.WriteUInt16BigEndian(Data.AsSpan(at), figure);
                    listed = figure;
                }

                _glyphs[c] = (ushort)(listed == 0 ? 0 : listed + delta);
            }
        }
    }

    // The map for characters of the basic plane: platform 3, encoding 1, format 4.
    private int CharacterMap()
    {
        int table = Table("cmap");
        for (int i = 0; i < Word(table + 2); i++)
        {
            int entry = table + 4 + 8 * i, map = table + BinaryPrimitives.ReadInt32BigEndian(Data.AsSpan(entry + 4));
            if (Word(entry) == 3 && Word(entry + 2) == 1 && Word(map) == 4)
                return map;
        }

        throw new InvalidDataException("The type has no character map of format 4.");
    }

    // Feature "tnum": glyph by glyph, a list of glyphs and a list of what stands in for them.
    private Dictionary<ushort, ushort> TabularFigures()
    {
        int table = Table("GSUB"), features = table + Word(table + 6), lookups = table + Word(table + 8);
        int feature = Enumerable.Range(0, Word(features)).Select(i => features + 2 + 6 * i).First(at => Encoding.ASCII.GetString(Data, at, 4) == "tnum");
        int lookup = lookups + Word(lookups + 2 + 2 * Word(features + Word(feature + 4) + 4));
        int substitution = lookup + Word(lookup + 6), covered = substitution + Word(substitution + 2);
        if (Word(lookup) != 1 || Word(substitution) != 2 || Word(covered) != 1)
            throw new InvalidDataException("The type's figures of one width are listed in another way than expected.");
        return Enumerable.Range(0, Word(covered + 2)).ToDictionary(i => Word(covered + 4 + 2 * i), i => Word(substitution + 6 + 2 * i));
    }
}
