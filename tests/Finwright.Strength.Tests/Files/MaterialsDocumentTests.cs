using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Files;

public sealed class MaterialsDocumentTests
{
    private const string Begin = "<!-- materials: written by the tests -->\n", End = "<!-- end of materials -->";

    [Fact]
    public void Document_shows_the_library()
    {
        string path = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "materials.md"), text = File.ReadAllText(path);
        int begin = text.IndexOf(Begin, StringComparison.Ordinal), end = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, $"{path} has lost the marks between which the library stands.");
        string updated = string.Concat(text.AsSpan(0, begin + Begin.Length), Table(), text.AsSpan(end));
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(path, updated);
        else
            Assert.Equal(updated, text);
    }

    private static string Table()
    {
        StringBuilder text = new();
        foreach (Material material in MaterialLibrary.All)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n### {material.Title}: `{material.Name}`\n{material.Remark}\n\n| Field | Value | Range | How sure | Source |\n| --- | ---: | --- | --- | --- |\n");
            foreach (MaterialNumber number in MaterialNumber.Of(material))
            {
                string range = number.Low < number.High ? $"{number.Low} to {number.High}" : "";
                text.Append(CultureInfo.InvariantCulture, $"| `{number.Field}` | {number.Value} | {range} | {number.Certainty} | {number.Source} |\n");
            }
        }

        return text.Append('\n').ToString();
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
