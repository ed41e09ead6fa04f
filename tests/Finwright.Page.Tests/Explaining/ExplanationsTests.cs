using System.Text.RegularExpressions;
using Finwright.Page.Explaining;
using Finwright.Page.Words;

namespace Finwright.Page.Tests.Explaining;

public sealed partial class ExplanationsTests
{
    private static readonly string Page = Path.Combine(MadeFin.Root, "src", "Finwright.Page");

    [Fact]
    public void Every_number_that_explains_itself_has_its_explanation()
    {
        string[] used =
        [
            .. Directory.GetFiles(Page, "*.razor", SearchOption.AllDirectories).SelectMany(file => About().Matches(File.ReadAllText(file)).Select(match => match.Groups["key"].Value)),
            .. Directory.GetFiles(Path.Combine(Page, "Answers"), "*.cs").SelectMany(file => Value().Matches(File.ReadAllText(file)).Select(match => match.Groups["key"].Value)),
        ];
        Assert.InRange(used.Distinct(StringComparer.Ordinal).Count(), 20, 200);
        Assert.All(used, key => Assert.Contains(key, Explanations.Keys));
    }

    [Fact]
    public void Every_explanation_says_what_how_and_how_sure_in_both_languages()
    {
        Assert.All(Explanations.Keys, key =>
        {
            Explanation told = Explanations.Of(key);
            Assert.All((string[])[told.What, told.How, told.Sure], text => Assert.Matches(@"^\p{Lu}.*\.$|^0\.18.*\.$", text));
            Assert.All(((string[])[told.Name, told.What, told.How, told.Sure, told.Source]).Where(text => text.Length > 0), text => Assert.Contains(text, GermanTexts.Known));
        });
    }

    [Fact]
    public void What_nothing_explains_is_refused_by_its_key() =>
        Assert.Contains("no-such-number", Assert.Throws<ArgumentException>(() => Explanations.Of("no-such-number")).Message, StringComparison.Ordinal);

    [Fact]
    public void Every_text_of_the_results_has_its_German()
    {
        string[] files =
        [
            .. Directory.GetFiles(Path.Combine(Page, "Answers")), .. Directory.GetFiles(Path.Combine(Page, "Plots")), .. Directory.GetFiles(Path.Combine(Page, "Explaining"), "*.razor"),
            .. ((string[])["Water*", "Strength*", "Where*", "SailingState*"]).SelectMany(name => Directory.GetFiles(Path.Combine(Page, "Sheet"), name)),
            .. ((string[])["Verdict*", "ChapterVerdicts*"]).SelectMany(name => Directory.GetFiles(Path.Combine(Page, "Parts"), name)),
        ];
        string[] texts = [.. files.SelectMany(file => Text().Matches(File.ReadAllText(file)).Select(match => Regex.Unescape(match.Groups["text"].Value))).Distinct(StringComparer.Ordinal)];
        Assert.InRange(texts.Length, 100, 400);
        Assert.DoesNotContain(texts, text => !GermanTexts.Known.Contains(text));
    }

    [GeneratedRegex("""\bAbout="(?<key>[a-z-]+)".""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex About();

    [GeneratedRegex(""", "(?<key>[a-z]+(-[a-z]+)*)"\)""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Value();

    // A text asked of the reader, a sentence with numbers, or the title of an axis.
    [GeneratedRegex("""(\bT\["|\breader\["|Axis\("|new\(\s*"(?=[A-Z][^"]* ))(?<text>([^"\\]|\\.)+)"[\],)]""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Text();
}
