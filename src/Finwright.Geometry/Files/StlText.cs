using System.Globalization;
using System.Text;

namespace Finwright.Geometry.Files;

/// <summary>The text form of stereolithography files: <c>solid, facet normal, outer loop, vertex …, endloop, endfacet, endsolid</c>.</summary>
internal static class StlText
{
    /// <summary>Whether the file begins with the word that marks the text form.</summary>
    public static bool IsLikely(ReadOnlySpan<byte> bytes)
    {
        Words words = new(bytes);
        return words.Next() && words.Is("solid");
    }

    /// <summary>Reads all triangles of all solids of the file.</summary>
    /// <exception cref="FileFormatException">A word or number is not what must stand there; the message gives the line.</exception>
    public static void Read(ReadOnlySpan<byte> bytes, StlFile.StlCollector found)
    {
        Words words = new(bytes);
        Span<float> corners = stackalloc float[9];
        while (words.Next())
        {
            words.Expect("solid");
            words.SkipLine();
            while (words.Require("facet").Is("facet"))
            {
                words.Require("normal").Expect("normal");
                // The normal is implied by the corners; many writers leave zeros or worse.
                for (int k = 0; k < 3; k++)
                    words.Require("a number");
                words.Require("outer").Expect("outer");
                words.Require("loop").Expect("loop");
                for (int k = 0; k < 9; k++)
                {
                    if (k % 3 == 0)
                        words.Require("vertex").Expect("vertex");
                    corners[k] = words.Require("a number").Number();
                }

                found.Add(corners, $"Line {words.Line} of the STL file");
                words.Require("endloop").Expect("endloop");
                words.Require("endfacet").Expect("endfacet");
            }

            words.Expect("endsolid");
            words.SkipLine();
        }
    }

    /// <summary>Walks through words separated by white space, counting lines.</summary>
    private ref struct Words(ReadOnlySpan<byte> bytes)
    {
        private const int LongestWordShown = 24;
        private readonly ReadOnlySpan<byte> _bytes = bytes;
        private ReadOnlySpan<byte> _word;
        private int _position;

        public int Line { get; private set; } = 1;

        /// <summary>Steps to the next word; false at the end.</summary>
        public bool Next()
        {
            while (_position < _bytes.Length && IsBlank(_bytes[_position]))
                if (_bytes[_position++] == '\n')
                    Line++;
            int start = _position;
            while (_position < _bytes.Length && !IsBlank(_bytes[_position]))
                _position++;
            _word = _bytes[start.._position];
            return _word.Length > 0;
        }

        /// <summary>Steps to the next word, which must be there.</summary>
        public Words Require(string wanted)
        {
            if (!Next())
                throw new FileFormatException($"Line {Line} of the STL file: it ends where \"{wanted}\" must stand. It is cut short.");
            return this;
        }

        public readonly bool Is(string word) => Ascii.EqualsIgnoreCase(_word, word);

        public readonly void Expect(string word)
        {
            if (!Is(word))
                throw new FileFormatException($"Line {Line} of the STL file: \"{Shown()}\" stands where \"{word}\" must stand.");
        }

        public readonly float Number() => float.TryParse(_word, NumberStyles.Float, CultureInfo.InvariantCulture, out float value)
            ? value
            : throw new FileFormatException($"Line {Line} of the STL file: \"{Shown()}\" is not a number.");

        /// <summary>Steps over the rest of the line, which holds a free name.</summary>
        public void SkipLine()
        {
            while (_position < _bytes.Length && _bytes[_position] != '\n')
                _position++;
        }

        private readonly string Shown() =>
            string.Concat(Encoding.ASCII.GetString(_word[..Math.Min(_word.Length, LongestWordShown)]).Select(c => c is >= ' ' and <= '~' ? c : '?'));

        private static bool IsBlank(byte b) => b is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n';
    }
}
