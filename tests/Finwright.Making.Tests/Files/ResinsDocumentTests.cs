using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Finwright.Design.DataFiles;
using Finwright.Making.Files;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Files;

public sealed class ResinsDocumentTests
{
    [Fact]
    public void Document_explains_every_field_and_shows_the_library()
    {
        string text = File.ReadAllText(Document), updated = Put(Put(text, "fields", Fields()), "resins", Library());
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(Document, updated);
        else
            Assert.Equal(updated, text);
    }

    [Fact]
    public void Examples_of_the_document_are_read()
    {
        string text = File.ReadAllText(Document);
        ResinReading resin = ResinFile.Read(Encoding.UTF8.GetBytes(Block(text, "json")));
        Assert.Empty(resin.Findings);
        Assert.NotNull(resin.Resin!.Viscosity);
        Assert.NotNull(resin.Resin.PotLife);
        CupTestReading cup = CupTestFile.Read(Encoding.UTF8.GetBytes(Block(text, "csv")));
        Assert.Empty(cup.Findings);
        Assert.Equal(0.1, cup.Test!.Mass, 1e-12);
    }

    private static string Document => Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "resins.md");

    private static string Block(string text, string language)
    {
        string mark = "```" + language + "\n";
        int begin = text.IndexOf(mark, StringComparison.Ordinal) + mark.Length;
        return text[begin..text.IndexOf("```", begin, StringComparison.Ordinal)];
    }

    private static string Put(string text, string what, string table)
    {
        string first = $"<!-- {what}: written by the tests -->\n", last = $"<!-- end of {what} -->";
        int begin = text.IndexOf(first, StringComparison.Ordinal), end = text.IndexOf(last, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, $"{Document} has lost the marks of its {what}.");
        return string.Concat(text.AsSpan(0, begin + first.Length), table, text.AsSpan(end));
    }

    private static string Fields()
    {
        StringBuilder text = new("| Field | From | To | Needed | Meaning |\n| --- | ---: | ---: | --- | --- |\n");
        foreach (ResinField field in ResinField.All)
        {
            DataField data = field.Data;
            string needed = !data.Optional ? "yes" : ResinField.Groups.Where(g => g.Keys.Contains(data.Key, StringComparer.Ordinal)).Select(g => $"with all of {g.What}").FirstOrDefault("no");
            text.Append(CultureInfo.InvariantCulture, $"| `{data.Key}` | {data.Least} | {data.Greatest} | {needed} | {field.Meaning} |\n");
        }

        return text.ToString();
    }

    private static string Library()
    {
        StringBuilder text = new();
        foreach (ResinSystem resin in ResinLibrary.All)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n### {resin.Title}: `{resin.Name}`\n{resin.Remark}\n\n| Field | Value | Range | How sure | Source |\n| --- | ---: | --- | --- | --- |\n");
            foreach (string key in ResinField.All.Select(f => f.Data.Key).Where(resin.Numbers.ContainsKey))
            {
                ResinNumber number = resin.Numbers[key];
                string range = number.Range.Low < number.Range.High ? $"{number.Range.Low} to {number.Range.High}" : "";
                text.Append(CultureInfo.InvariantCulture, $"| `{key}` | {number.Range.Value} | {range} | {DataSheetFile.Words[(int)number.Certainty]} | {number.Source} |\n");
            }
        }

        return text.Append('\n').ToString();
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
