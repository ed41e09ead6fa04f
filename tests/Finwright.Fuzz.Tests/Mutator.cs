using System.Globalization;
using System.Text;

namespace Finwright.Fuzz.Tests;

/// <summary>Spoils good files as disks, mails and hostile hands do: bits, cuts, doubled and swapped pieces, numbers out of all range, pieces of other files.</summary>
/// <param name="seeds">Good files of one kind.</param>
/// <param name="random">Where chance comes from: the same number gives the same files.</param>
internal sealed class Mutator(IReadOnlyList<byte[]> seeds, Random random)
{
    private const int MostChanges = 6, LongestPiece = 64;

    private static readonly byte[][] Words = [.. new[]
    {
        "0", "-1", "1e999", "-1e-999", "NaN", "Infinity", "2147483648", "-9223372036854775809", "1.7976931348623157e308", "4.9e-324", "null", "true", "\"\"", "[]", "{}", "[[[[[[[[[[[[[[[[", "{\"a\":{\"a\":{\"a\":",
        "\\u0000", "\uFEFF", "\u202E", "../../../../etc/passwd", "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]>", "&b;", "<![CDATA[", "]]>", ";", ",", "\t", "\r\n", "G2 X1e9 I1e-9", "M82", "\0", "%00", "'", "\"",
    }.Select(Encoding.UTF8.GetBytes)];

    /// <summary>One spoilt file.</summary>
    /// <returns>The file, and which seed it was made from.</returns>
    public (byte[] File, int Seed) Next()
    {
        int seed = random.Next(seeds.Count);
        List<byte> file = [.. seeds[seed]];
        // A part of the files is spoilt so that its form stays whole: readers come to the end of it, and what works with it gets strange numbers.
        bool isGentle = random.Next(3) == 0;
        for (int changes = random.Next(1, MostChanges); changes > 0; changes--)
            if (isGentle)
                Number(file, random.Next(file.Count + 1));
            else
                Change(file);
        return ([.. file], seed);
    }

    private void Change(List<byte> file)
    {
        int at = random.Next(file.Count + 1), length = Math.Min(random.Next(1, LongestPiece), file.Count - at);
        switch (random.Next(10))
        {
            case 0 when at < file.Count:
                file[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1 when at < file.Count:
                file[at] = (byte)random.Next(byte.MaxValue + 1);
                break;
            case 2:
                file.RemoveRange(at, file.Count - at);
                break;
            case 3:
                file.RemoveRange(at, length);
                break;
            case 4:
                file.InsertRange(at, file.GetRange(at, length));
                break;
            case 5:
                file.InsertRange(at, Words[random.Next(Words.Length)]);
                break;
            case 6:
                Number(file, at);
                break;
            case 7:
                List<byte> piece = file.GetRange(at, length);
                file.RemoveRange(at, length);
                file.InsertRange(random.Next(file.Count + 1), piece);
                break;
            case 8:
                byte[] other = seeds[random.Next(seeds.Count)];
                int from = random.Next(other.Length + 1);
                file.RemoveRange(at, file.Count - at);
                file.AddRange(other[from..]);
                break;
            default:
                for (int i = at; i < at + length; i++)
                    file[i] = 0xFF;
                break;
        }
    }

    // A number that stands in the text becomes another one, with as many or more digits.
    private void Number(List<byte> file, int at)
    {
        int begin = file.FindIndex(at, letter => letter is >= (byte)'0' and <= (byte)'9');
        if (begin < 0)
            return;
        int end = begin;
        while (end < file.Count && file[end] is (>= (byte)'0' and <= (byte)'9') or (byte)'.')
            end++;
        double old = double.TryParse(Encoding.ASCII.GetString([.. file[begin..end]]), NumberStyles.Float, CultureInfo.InvariantCulture, out double there) ? there : 1;
        file.RemoveRange(begin, end - begin);
        double value = random.Next(6) switch
        {
            0 => random.NextDouble(),
            1 => Math.Pow(10, random.Next(-30, 30)),
            2 => -random.Next(),
            3 => random.NextInt64(),
            4 => Math.Round(old * 3 * random.NextDouble(), 3),
            _ => Math.Round(old) + random.Next(-2, 3),
        };
        file.InsertRange(begin, Encoding.ASCII.GetBytes(value.ToString("R", CultureInfo.InvariantCulture)));
    }
}
