using System.Text.RegularExpressions;

namespace Finwright.Papers.Tests.Words;

/// <summary>What the sources of the verdicts say: their codes, grounds, units and keys, so that no language can miss one.</summary>
internal static partial class VerdictSources
{
    private static readonly string[] Texts = [.. Directory.GetFiles(Path.Combine(MadeFins.Root, "src", "Finwright.Assessment", "Verdicts"), "*.cs").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    /// <summary>Every code, however it is given: as a property, a constant, or first in a call.</summary>
    public static IReadOnlySet<string> Codes { get; } = Texts.SelectMany(text => Code().Matches(text).Select(match => match.Groups["code"].Value)).ToHashSet(StringComparer.Ordinal);

    /// <summary>Every ground with the code named last before it.</summary>
    public static IReadOnlyList<(string Code, string Ground)> Grounds { get; } = [.. Texts.SelectMany(OfText).Distinct()];

    /// <summary>Every unit of a number.</summary>
    public static IReadOnlySet<string> Units { get; } = Texts.SelectMany(text => Unit().Matches(text).Select(match => match.Groups["unit"].Value)).ToHashSet(StringComparer.Ordinal);

    /// <summary>Keys of the design file that a change may name.</summary>
    public static IReadOnlySet<string> Keys { get; } = Texts.SelectMany(text => text.Split('\n')).Where(line => !line.Contains("HowSure =", StringComparison.Ordinal))
        .SelectMany(KeysIn).ToHashSet(StringComparer.Ordinal);

    /// <summary>Keys of the design file in a text.</summary>
    public static IEnumerable<string> KeysIn(string text) => Key().Matches(text).Select(match => match.Value);

    private static IEnumerable<(string Code, string Ground)> OfText(string text)
    {
        foreach (Match line in GroundLine().Matches(text))
        {
            // A ground that stands before all codes of its file is shared by them.
            Match[] codes = [.. Code().Matches(text).Cast<Match>()];
            Match[] own = Array.FindLast(codes, match => match.Index < line.Index) is { } last ? [last] : codes;
            // How a part lies is told by a method of its own.
            string[] choice = line.Value.Contains("Choice(", StringComparison.Ordinal) ? ["standing", "lying"] : [];
            foreach (string ground in Literal().Matches(line.Value).Select(match => match.Groups["word"].Value).Concat(choice))
                foreach (Match code in own)
                    yield return (code.Groups["code"].Value, ground);
        }
    }

    [GeneratedRegex(
        @"\b([cC]ode|\w+Code) = ""(?<code>[a-z]+(-[a-z]+)*)""|\b(Unknown|WithoutFlow|OfLump)\(\s*([a-z.A-Z]+, )?""(?<code>[a-z]+(-[a-z]+)*)""|"
        + @"\bTwoOpinions( \w+ = new)?\(""(?<code>[a-z]+(-[a-z]+)*)""|Judge\(\s*afloat,\s*""(?<code>[a-z]+(-[a-z]+)*)""|\[StressedPart[^\]]*\], ""(?<code>[a-z]+(-[a-z]+)*)""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Code();

    [GeneratedRegex("""Ground = [^;}]*?("[a-z-]*"|\))(?=( \}|,\n|;))""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex GroundLine();

    [GeneratedRegex("""
        "(?<word>[a-z]+(-[a-z]+)*)"
        """, RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Literal();

    [GeneratedRegex("""
        , "(?<unit>[^"]*)", \d\)
        """, RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unit();

    [GeneratedRegex(@"\b(pour|print|parts|base|hardware|shape|brief)\.[a-z]+(_[a-z]+)*(\.[a-z]+(_[a-z]+)*)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Key();
}
