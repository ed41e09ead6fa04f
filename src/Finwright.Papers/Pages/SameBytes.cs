using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Finwright.Papers.Pages;

/// <summary>
/// Takes chance and the clock out of a PDF file: dates, identifiers (ISO 32000-1, 14.4; also those in the metadata stream) and tags of font subsets (9.6.4) become what the
/// date of the paper and the content make them. No length changes, so that every offset stays true.
/// </summary>
internal static partial class SameBytes
{
    /// <summary>The file, the same for the same content.</summary>
    /// <param name="file">The file as it was written.</param>
    /// <param name="date">Date of the paper.</param>
    public static byte[] Of(byte[] file, DateOnly date)
    {
        string moment = string.Create(CultureInfo.InvariantCulture, $"(D:{date:yyyyMMdd}120000+00'00')");
        // Once without chance, to see what the content is; then marked by it.
        string plain = Marked(Encoding.Latin1.GetString(file), moment, []);
        return Encoding.Latin1.GetBytes(Marked(plain, moment, SHA256.HashData(Encoding.Latin1.GetBytes(plain))));
    }

    private static string Marked(string file, string moment, byte[] content)
    {
        List<string> tags = [];
        byte[] digest = SHA256.HashData(content).AsSpan(0, 16).ToArray();
        string identifier = Convert.ToHexString(digest), uuid = new Guid(digest).ToString();
        StringBuilder marked = new(file.Length);
        int done = 0;
        foreach (Match stream in Streams().Matches(file))
        {
            Outside(file[done..stream.Index]);
            marked.Append(stream.ValueSpan.Contains("<x:xmpmeta", StringComparison.Ordinal) ? Uuids().Replace(stream.Value, uuid) : stream.Value);
            done = stream.Index + stream.Length;
        }

        Outside(file[done..]);
        return marked.ToString();

        void Outside(string part)
        {
            part = Dates().Replace(part, match => match.Length == moment.Length ? moment : throw new InvalidDataException($"A date in the file is laid out in another way than expected: {match.Value}."));
            part = Identifiers().Replace(part, match => HexString().Replace(match.Value, identifier));
            marked.Append(Tags().Replace(part, match => Tag(match.Value)));
        }

        string Tag(string chance)
        {
            int known = tags.IndexOf(chance);
            if (known < 0)
            {
                known = tags.Count;
                tags.Add(chance);
            }

            byte[] letters = SHA256.HashData([.. content, (byte)known]);
            return new([.. chance.Select((_, i) => (char)('A' + letters[i] % 26))]);
        }
    }

    [GeneratedRegex(@"\bstream\r?\n.*?\bendstream\b", RegexOptions.Singleline, 10000)]
    private static partial Regex Streams();

    [GeneratedRegex(@"\(D:\d[^)]*\)", RegexOptions.None, 10000)]
    private static partial Regex Dates();

    [GeneratedRegex(@"/ID\s*\[\s*<[0-9A-Fa-f]{32}>\s*<[0-9A-Fa-f]{32}>\s*\]", RegexOptions.None, 10000)]
    private static partial Regex Identifiers();

    [GeneratedRegex("(?<=uuid:)[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", RegexOptions.ExplicitCapture, 10000)]
    private static partial Regex Uuids();

    [GeneratedRegex("[0-9A-Fa-f]{32}", RegexOptions.None, 10000)]
    private static partial Regex HexString();

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+)", RegexOptions.None, 10000)]
    private static partial Regex Tags();
}
