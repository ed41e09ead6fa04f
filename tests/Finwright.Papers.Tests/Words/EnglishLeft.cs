using System.Text.RegularExpressions;

namespace Finwright.Papers.Tests.Words;

/// <summary>Finds English that was left in a German text: words that German does not have.</summary>
internal static partial class EnglishLeft
{
    public static void None(string text) => Assert.False(Words().IsMatch(text), $"\"{Words().Match(text).Value}\" is left in \"{text}\".");

    [GeneratedRegex(
        @"\b(the|of|and|or|is|are|be|it|its|to|at|for|from|with|without|not|no|than|that|this|which|more|less|when|where|by|above|below|add|up|down|"
        + @"blade|base|gauge|fin|edge|leading|trailing|root|tip|side|front|rear|further|feed|vent|bolt|bolts|nut|pocket|bore|hole|lid|rod|rods|carbon|clamp|box|pin|screw|plate|"
        + @"sheet|wide|thick|round|rim|dowel|across|cut|cuts|slot|tab|stainless|threaded|washer|hexagon|square|cross|socket|way|cavity|tilted)\b",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Words();
}
