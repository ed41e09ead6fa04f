using Finwright.Design;
using Finwright.Design.Fields;
using Finwright.Making.Files;
using Finwright.Page.Fields;
using Finwright.Page.Help;
using Finwright.Page.Libraries;
using Finwright.Page.Words;
using Finwright.Strength.Files;

namespace Finwright.Page.Tests.Texts;

public sealed class GermanOfFieldsTests
{
    private static readonly HashSet<string> Known = new(GermanTexts.Known, StringComparer.Ordinal);

    [Fact]
    public void Every_name_meaning_reason_and_word_of_the_design_form_has_its_german()
    {
        HashSet<string> missing = new(StringComparer.Ordinal);
        Walk(RecordForm.Of(typeof(FinDesign)), [], text =>
        {
            if (text.Length > 0 && !Known.Contains(text))
                missing.Add(text);
        });
        Assert.Empty(missing);
    }

    [Fact]
    public void Everything_that_the_libraries_and_the_tour_say_has_its_german()
    {
        IEnumerable<string> said =
        [
            .. LibraryShelf.Kinds.SelectMany(kind => new[] { LibraryWords.Title(kind), LibraryWords.About(kind), LibraryWords.One(kind) }),
            .. LibraryShelf.Kinds.SelectMany(kind => LibraryShelf.KnownOf(kind)).SelectMany(content => new[] { content.Name, content.Note, LibraryWords.Form(content) }),
            .. MaterialFile.Subject.Forms.Concat(ResinFile.Subject.Forms).SelectMany(form => form.Fields).SelectMany(field => new[] { SheetUnits.Of(field.Key).Label, ResinFile.MeaningOf(field.Key) }),
            .. TourStop.All.SelectMany(stop => new[] { stop.Title, stop.Text }),
            .. Glossary.All.SelectMany(term => new[] { term.Chapter, term.Name, term.Meaning }).Where(text => text.Any(char.IsLower)),
        ];
        Assert.Empty(said.Where(text => text.Length > 0 && !Known.Contains(text)).Distinct());
    }

    [Fact]
    public void Places_for_numbers_are_the_same_in_both_languages()
    {
        Assert.All(Known, english => Assert.Equal(Places(english), Places(GermanTexts.Of(english))));

        static IEnumerable<string> Places(string text) => System.Text.RegularExpressions.Regex.Matches(text, @"\{\d+\}").Select(match => match.Value).Distinct().Order(StringComparer.Ordinal);
    }

    private static void Walk(RecordForm form, HashSet<Type> done, Action<string> check)
    {
        if (!done.Add(form.Type))
            return;
        foreach (Field field in form.Fields)
        {
            ValueForm value = field.Form.Item ?? field.Form;
            foreach (string text in new[] { FieldAt.LabelOf(field.Key), field.Meaning, field.Reason }.Concat(value.Words.SelectMany(word => new[] { FieldAt.LabelOf(word.Text.Replace('-', '_')), word.Meaning })))
                check(text);
            if (value.Kind is FieldKind.Record)
                Walk(value.Record, done, check);
        }
    }
}
