using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.RegularExpressions;
using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Page.Words;

namespace Finwright.Page.Tests.Texts;

/// <summary>The page in German: no text of its sources is left in English, and no place for a number is lost.</summary>
public sealed partial class GermanTextsTests
{
    private static readonly HashSet<string> Known = [.. GermanTexts.Known];

    [Fact]
    public void Every_text_of_the_page_has_a_german_one()
    {
        List<string> missing = [];
        int texts = 0;
        foreach (string file in Sources())
        {
            foreach (Match match in Text().Matches(File.ReadAllText(file)))
            {
                texts++;
                string english = Regex.Unescape(match.Groups[1].Value);
                if (!Known.Contains(english))
                    missing.Add($"{Path.GetFileName(file)}: {english}");
            }
        }

        Assert.True(texts > 100, "The texts of the page were not found.");
        Assert.Empty(missing.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_told_of_work_under_way_has_a_german_text()
    {
        string[] words = [.. typeof(FinStages).GetProperties().Select(stage => ((Stage)stage.GetValue(null)!).Words)];
        Assert.NotEmpty(words);
        Assert.DoesNotContain(words, told => !Known.Contains(told));
    }

    [Fact]
    public void Places_for_numbers_and_names_are_the_same_in_both_languages()
    {
        foreach (string english in Known)
            Assert.Equal(Places(english), Places(GermanTexts.Of(english)), StringComparer.Ordinal);
    }

    [Fact]
    public void No_text_stands_in_two_files_with_two_meanings()
    {
        Dictionary<string, string> seen = new(StringComparer.Ordinal);
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Page(), "Words", "German"), "*.json"))
        {
            foreach ((string english, string german) in JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(file))!)
            {
                Assert.False(string.IsNullOrWhiteSpace(german), $"{english} in {file}");
                Assert.True(seen.TryAdd(english, german) || seen[english] == german, $"\"{english}\" is \"{seen[english]}\" in one file and \"{german}\" in {Path.GetFileName(file)}.");
            }
        }
    }

    private static string[] Places(string text) => [.. Place().Matches(text).Select(match => match.Value).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(Page(), "*.*", SearchOption.AllDirectories)
            .Where(file => (file.EndsWith(".razor", StringComparison.Ordinal) || file.EndsWith(".cs", StringComparison.Ordinal)) && !file.Contains("node_modules", StringComparison.Ordinal));

    private static string Page([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src", "Finwright.Page"));

    [GeneratedRegex("""(?<![A-Za-z])T\[\s*"((?:[^"\\]|\\.)*)""")]
    private static partial Regex Text();

    [GeneratedRegex(@"\{\d+(:[^}]*)?\}")]
    private static partial Regex Place();
}
