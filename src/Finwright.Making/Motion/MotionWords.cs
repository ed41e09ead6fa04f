namespace Finwright.Making.Motion;

/// <summary>The words of one line: letters with numbers, after the command they belong to.</summary>
internal sealed class MotionWords
{
    // Powers of ten that a double holds exactly; numbers with more digits are cut there, far below a nanometre.
    private static readonly double[] Tens = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18];

    private readonly double[] _values = new double[26];
    private uint _present;
    private uint _bare;

    /// <summary>Forgets the line before.</summary>
    public void Clear() => (_present, _bare) = (0, 0);

    /// <summary>Whether a letter stands in the line with a number.</summary>
    /// <param name="letter">A capital.</param>
    public bool Has(char letter) => (_present >> letter - 'A' & 1) != 0;

    /// <summary>Whether a letter stands in the line, with or without a number.</summary>
    public bool Names(char letter) => ((_present | _bare) >> letter - 'A' & 1) != 0;

    /// <summary>Whether any letter stands in the line.</summary>
    public bool Any => (_present | _bare) != 0;

    /// <summary>First letter that stands without a number, if any.</summary>
    public char? Bare => _bare == 0 ? null : (char)('A' + System.Numerics.BitOperations.TrailingZeroCount(_bare));

    /// <summary>The number behind a letter.</summary>
    public double this[char letter] => _values[letter - 'A'];

    /// <summary>Takes a word in; false when its letter was there before.</summary>
    public bool Add(int letter, double value)
    {
        uint bit = 1u << letter;
        if (((_present | _bare) & bit) != 0)
            return false;
        _present |= bit;
        _values[letter] = value;
        return true;
    }

    /// <summary>Takes a letter without a number in; false when it was there before.</summary>
    public bool AddBare(int letter)
    {
        uint bit = 1u << letter;
        if (((_present | _bare) & bit) != 0)
            return false;
        _bare |= bit;
        return true;
    }

    /// <summary>Reads a number: sign, digits, point, digits.</summary>
    /// <param name="line">The line.</param>
    /// <param name="at">Where it begins; afterwards where it ended, unmoved when there is none.</param>
    /// <param name="value">The number.</param>
    /// <returns>False when no number stands there.</returns>
    public static bool TryNumber(ReadOnlySpan<byte> line, ref int at, out double value)
    {
        int i = at;
        bool negative = false;
        if (i < line.Length && line[i] is (byte)'-' or (byte)'+')
            negative = line[i++] == (byte)'-';
        ulong digits = 0;
        int count = 0, decimals = 0, skipped = 0, begin = i;
        for (; i < line.Length && (uint)(line[i] - '0') <= 9; i++)
        {
            if (count < 18)
            {
                digits = 10 * digits + (uint)(line[i] - '0');
                count += digits > 0 ? 1 : 0;
            }
            else
            {
                skipped++;
            }
        }

        int whole = i - begin;
        if (i < line.Length && line[i] == (byte)'.')
        {
            i++;
            int first = i;
            for (; i < line.Length && (uint)(line[i] - '0') <= 9; i++)
            {
                if (count < 18 && decimals < 18)
                {
                    digits = 10 * digits + (uint)(line[i] - '0');
                    count += digits > 0 ? 1 : 0;
                    decimals++;
                }
            }

            whole += i - first;
        }

        if (whole is 0)
        {
            value = 0;
            return false;
        }

        at = i;
        value = digits / Tens[decimals];
        // More than 18 digits before the point: far beyond every limit; only that it is large matters.
        if (skipped > 0)
            value = 1e18;
        if (negative)
            value = -value;
        return true;
    }
}
