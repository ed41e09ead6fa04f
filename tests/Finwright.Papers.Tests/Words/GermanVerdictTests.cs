using System.Reflection;
using System.Text.RegularExpressions;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Making.Quantities;
using Finwright.Numerics;
using Finwright.Papers.Words;
using Finwright.Papers.Words.German;
using Finwright.Water.Sailing;

namespace Finwright.Papers.Tests.Words;

public sealed class GermanVerdictTests
{
    private static readonly VerdictWords German = Tongues.German.Words.Verdicts;

    private static readonly Saying[] Sayings = [.. WaterSayings.All, .. StrengthSayings.All, .. MakingSayings.All];

    [Fact]
    public void Every_code_has_its_saying_and_every_saying_its_code()
    {
        // Water, strength, print, pour and cure have some forty checks; fewer means that the sources were not understood.
        Assert.InRange(VerdictSources.Codes.Count, 40, 80);
        Assert.Equal(VerdictSources.Codes.Order(StringComparer.Ordinal), Sayings.Select(saying => saying.Code.Split('/')[0]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_ground_has_its_change_and_every_change_its_ground()
    {
        Assert.Equal(
            VerdictSources.Grounds.Select(pair => pair.Ground).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            GermanVerdicts.Grounds.Order(StringComparer.Ordinal));
        foreach ((string code, string ground) in VerdictSources.Grounds)
        {
            Verdict verdict = Verdict(code) with { Ground = ground, Change = "something" };
            Assert.NotEmpty(German.Checked(verdict));
            Assert.NotEmpty(German.Why(verdict));
            Assert.NotEmpty(German.Change(verdict));
            Assert.Empty(German.Change(verdict with { Change = "" }));
        }
    }

    [Fact]
    public void Unknown_codes_and_cautions_are_refused_by_name()
    {
        ArgumentException exception = Assert.Throws<ArgumentException>(() => German.Checked(Verdict("no-such-check")));
        Assert.Contains("no-such-check", exception.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => German.Caution("Do as you like."));
        Assert.Throws<ArgumentException>(() => German.Change(Verdict("twist") with { Ground = "no-such-ground", Change = "something" }));
    }

    [Fact]
    public void Units_are_those_of_the_verdicts_and_all_have_German_words()
    {
        Assert.Equal(VerdictSources.Units.Order(StringComparer.Ordinal), UnitScale.OfVerdicts.Order(StringComparer.Ordinal));
        foreach (string unit in UnitScale.Shown)
            EnglishLeft.None(German.Unit(unit));
    }

    [Fact]
    public void Changes_name_the_same_keys_of_the_design_file()
    {
        Assert.NotEmpty(VerdictSources.Keys);
        Assert.Equal(
            VerdictSources.Keys.Order(StringComparer.Ordinal),
            Sayings.SelectMany(saying => saying.Changes.Values).SelectMany(VerdictSources.KeysIn).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Sayings_are_German_and_end_as_sentences()
    {
        foreach (Saying saying in Sayings)
        {
            // Keys and commands stay as the design file and the program have them.
            string[] sentences = [saying.Why, .. saying.Changes.Values];
            Assert.All(sentences, sentence => Assert.Matches(@"^\p{Lu}[^!]+\.$", sentence));
            EnglishLeft.None(saying.Checked);
            Assert.All(sentences, sentence => EnglishLeft.None(WithoutKeys(sentence)));
            Assert.DoesNotMatch(@"[.!]$", saying.Checked);
        }
    }

    [Fact]
    public void Every_caution_is_said_in_German()
    {
        string[] cautions = [.. typeof(Cautions).GetProperties(BindingFlags.Public | BindingFlags.Static).Where(property => property.PropertyType == typeof(string)).Select(property => (string)property.GetValue(null)!)];
        Assert.InRange(cautions.Length, 10, 40);
        foreach (string caution in cautions)
        {
            string german = German.Caution(caution);
            EnglishLeft.None(german);
            Assert.Matches(@"^\p{Lu}[^!]+\.$", german);
            // About as much is said: neither a warning dropped nor a sermon.
            Assert.InRange(german.Length, 0.75 * caution.Length, 1.6 * caution.Length);
        }

        Assert.Equal(cautions.Length, cautions.Select(German.Caution).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Checked_tells_part_and_load_case()
    {
        Assert.Equal("Luft, die in den Poren bleibt: Blatt 1 von 2", German.Checked(Verdict("trapped-air") with { Part = "blade 1 of 2" }));
        Assert.Equal("Reserve bis zum Strömungsabriss beim Angleiten", German.Checked(Verdict("stall-reserve") with { Case = LoadCaseKind.GettingGoing }));
        Assert.Equal("Luft, die an der Wurzel angesaugt wird (Dichtung am Finnenkasten) bei Höchstgeschwindigkeit", German.Checked(Verdict("ventilation") with { Ground = "seal", Case = LoadCaseKind.TopSpeed }));
    }

    [Theory]
    [InlineData("sandbar")]
    [InlineData("fairway")]
    public void Demos_are_judged_in_German_from_end_to_end(string demo)
    {
        AssessmentResult result = demo == "sandbar" ? MadeFins.Sandbar : MadeFins.Fairway;
        MakingResult making = MakingResult.Of(result);
        Verdict[] ofFin = [.. result.Verdicts, .. result.StrengthVerdicts], ofParts = [.. making.PrintVerdicts, .. making.PourVerdicts, .. making.CureVerdicts];
        Assert.InRange(ofFin.Length + ofParts.Length, 25, 60);
        foreach (Verdict verdict in (Verdict[])[.. ofFin, .. ofParts])
        {
            EnglishLeft.None(German.Checked(verdict));
            EnglishLeft.None(German.Why(verdict));
            EnglishLeft.None(WithoutKeys(German.Change(verdict)));
            Assert.Equal(verdict.Change.Length == 0, German.Change(verdict).Length == 0);
            EnglishLeft.None(Tongues.German.Numbers(verdict));
            // The house tells the same numbers in English, but for the true minus.
            Assert.Equal(verdict.Numbers.Replace('-', Tongue.Minus), Tongues.English.Numbers(verdict));
            // A load case that is told apart stands at the end of the English words.
            if (verdict.Case is { } load)
                Assert.EndsWith(CaseWords.When(load), verdict.Checked, StringComparison.Ordinal);
        }

        // Part by part: where the English words name a part, it is told apart.
        string[] parts = [.. result.Printed!.Parts.Select(part => part.Part.Name)];
        Assert.All(ofFin, verdict => Assert.Empty(verdict.Part));
        foreach (Verdict verdict in ofParts)
            Assert.Equal(Array.Exists(parts, part => Regex.IsMatch(verdict.Checked, $@"\b{part}\b", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1))), verdict.Part.Length > 0 && verdict.Code != "ports-open-both");
    }

    private static string WithoutKeys(string text) => VerdictSources.KeysIn(text).Append("finwright strength").Append("--against").Aggregate(text, (left, key) => left.Replace(key, "", StringComparison.Ordinal));

    private static Verdict Verdict(string code) => new()
    {
        Code = code,
        Checked = "",
        State = VerdictState.Tight,
        Certainty = Certainty.Judgement,
        HowSure = "",
        Found = "",
        Why = "",
    };
}
