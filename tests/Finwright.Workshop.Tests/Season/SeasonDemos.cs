using Finwright.Design;

namespace Finwright.Workshop.Tests.Season;

/// <summary>The demo designs, read as the program reads them.</summary>
internal static class SeasonDemos
{
    /// <summary>A demo design by its name.</summary>
    public static FinDesign Find(string name) => DesignReader.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, $"{name}.fin.json"))).Design!;
}
