using System.Reflection;
using System.Runtime.CompilerServices;
using Finwright.Making.Quantities;

namespace Finwright.Making.Tests.Quantities;

public sealed class CautionsTests
{
    public static TheoryData<string> Names => [.. typeof(Cautions).GetProperties(BindingFlags.Public | BindingFlags.Static).Where(own => own.PropertyType == typeof(string)).Select(own => own.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_stands_in_the_page_on_safety_word_for_word(string name)
    {
        string page = File.ReadAllText(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "safety.md"));
        Assert.Contains((string)typeof(Cautions).GetProperty(name)!.GetValue(null)!, page, StringComparison.Ordinal);
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
