using System.Text.RegularExpressions;
using Finwright.Assessment;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Making.Quantities;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Sheet;

public sealed partial class BuildSheetTests
{
    [Theory]
    [InlineData(PaperLanguage.English)]
    [InlineData(PaperLanguage.German)]
    public void Chapters_stand_in_the_order_of_the_job(PaperLanguage language)
    {
        SheetWords words = PaperWords.Of(language).Sheet;
        ReadSheet sheet = Of(language);
        string[] expected = [words.Needs, words.Print, words.Bonding, words.Sealing, words.Pour, words.Cure, words.Join, words.Sand, words.Fit, words.Prove, words.Sail];
        Assert.Equal(expected.Select(ReadSheet.Bare), sheet.Heads.Select(head => head.TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9')), StringComparer.Ordinal);
        Assert.Equal(Enumerable.Range(1, expected.Length).Select(number => $"{number}"), sheet.Heads.Select(head => string.Concat(head.TakeWhile(char.IsAsciiDigit))), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(PaperLanguage.English, 210, 297)]
    [InlineData(PaperLanguage.German, 215.9, 279.4)]
    public void Pages_have_the_size_of_the_paper_and_nothing_stands_in_the_margin(PaperLanguage language, double width, double height)
    {
        ReadSheet sheet = Of(language);
        Assert.All(sheet.Sizes, size =>
        {
            Assert.Equal(width / 25.4 * 72, size.Width, 0.1);
            Assert.Equal(height / 25.4 * 72, size.Height, 0.1);
        });
        Assert.True(sheet.Beyond < 0, $"A letter stands {sheet.Beyond} points in the margin.");
    }

    [Theory]
    [InlineData(PaperLanguage.English)]
    [InlineData(PaperLanguage.German)]
    public void First_page_says_what_to_take_care_of(PaperLanguage language)
    {
        PaperWords words = PaperWords.Of(language);
        foreach (string caution in (string[])[Cautions.Skin, Cautions.Runaway, Cautions.Dust, Cautions.Edges, Cautions.Proof])
            ReadSheet.Stands(words.Verdicts.Caution(caution), Of(language).Pages[0]);
        ReadSheet.Stands(words.Sheet.SheetsFirst, Of(language).Pages[0]);
        ReadSheet.Stands(words.Sheet.Estimates, Of(language).Pages[0]);
    }

    [Theory]
    [InlineData(PaperLanguage.English)]
    [InlineData(PaperLanguage.German)]
    public void Every_step_has_a_box_to_tick(PaperLanguage language)
    {
        ReadSheet sheet = Of(language);
        Assert.True(sheet.Written > 50);
        Assert.Equal(sheet.Written, sheet.Ticks);
    }

    [Fact]
    public void A_check_that_fails_stands_framed_on_the_first_page_and_again_at_its_step()
    {
        PaperWords words = PaperWords.Of(PaperLanguage.English);
        Verdict failing = MadeFins.Fairway.StrengthVerdicts.First(verdict => verdict.Code == "base") with { State = VerdictState.Fails, Change = "Take a base of another kind." };
        AssessmentResult worse = MadeFins.Fairway with { Verdicts = [], StrengthVerdicts = [failing] };
        ReadSheet sheet = ReadSheet.Of(worse);
        ReadSheet.Stands(words.Sheet.Failing(1), sheet.Pages[0]);
        foreach (string place in (string[])[sheet.Chapter(""), sheet.Chapter(words.Sheet.Fit)])
        {
            ReadSheet.Stands(failing.Checked, place);
            ReadSheet.Stands(failing.Change, place);
        }
    }

    [Fact]
    public void Every_verdict_that_does_not_hold_stands_on_the_cover_and_at_one_step()
    {
        PaperWords words = PaperWords.Of(PaperLanguage.English);
        ReadSheet sheet = Sheets.Fairway;
        string cover = sheet.Chapter("");
        Verdict[] heeded = [.. MadeFins.Fairway.Verdicts.Concat(MadeFins.Fairway.StrengthVerdicts).Where(verdict => verdict.State != VerdictState.Holds)];
        foreach (Verdict verdict in heeded)
        {
            string what = words.Verdicts.Checked(verdict), numbers = new Tongue(ReadSheet.Settings()).Numbers(verdict);
            Assert.True(Tells(cover), what);
            Assert.Single(sheet.Heads, head => Tells(sheet.Chapter(head)));

            bool Tells(string text) => ReadSheet.StandsWrapped(what, text) && text.Contains(ReadSheet.Bare(numbers), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void German_sheet_has_no_English_words()
    {
        string text = string.Join(' ', Sheets.FairwayGerman.Words);
        Assert.Empty(EnglishWord().Matches(text).Select(match => text[Math.Max(0, match.Index - 30)..Math.Min(text.Length, match.Index + 30)]));
    }

    [Fact]
    public void Same_fin_gives_the_same_bytes()
    {
        Assert.Equal(Sheets.Fairway.Pdf, ReadSheet.Of(MadeFins.Fairway).Pdf);
    }

    [Fact]
    public void A_fin_of_which_little_is_known_still_has_a_sheet_with_sentences_for_numbers()
    {
        AssessmentResult little = MadeFins.Fairway with
        {
            Printed = null,
            Poured = null,
            Cured = null,
            Plan = null,
            Loaded = null,
            Vibration = null,
            Bench = new() { Problem = "The blade would bend too far." },
            Verdicts = [],
            StrengthVerdicts = [],
        };
        SheetWords words = PaperWords.Of(PaperLanguage.English).Sheet;
        string all = ReadSheet.Of(little).All;
        ReadSheet.Stands(words.PrintNotPlanned, all);
        ReadSheet.Stands(words.PourNotPlanned, all);
        ReadSheet.Stands(words.CureNotWorkedOut, all);
        ReadSheet.Stands("The blade would bend too far.", all);
        ReadSheet.Stands(words.TorqueUnknown, all);
    }

    [Fact]
    public void Long_names_are_wrapped_and_kept_whole()
    {
        string name = "Schwertfischflossenähnliche Hochwasserfahrwasserfinne Nr. 77";
        AssessmentResult named = MadeFins.Fairway with { Design = MadeFins.Fairway.Design! with { Name = name } };
        ReadSheet sheet = ReadSheet.Of(named);
        ReadSheet.Stands(name, sheet.Pages[0]);
        Assert.True(sheet.Beyond < 0);
    }

    [Fact]
    public void A_fin_with_errors_has_no_sheet()
    {
        AssessmentResult wrong = MadeFins.Fairway with { Findings = [new("wrong", Severity.Error, "$", "Wrong.", "Right it.")] };
        Assert.Throws<ArgumentException>(() => ReadSheet.Of(wrong));
    }

    private static ReadSheet Of(PaperLanguage language) => language == PaperLanguage.German ? Sheets.FairwayGerman : Sheets.Fairway;

    [GeneratedRegex(@"\b(the|of|and|with|is|are|from|into|not|when|which|every|each|at least|at most|blade|box|bolt|nut|rod|part|plate|feed|vent)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex EnglishWord();
}
