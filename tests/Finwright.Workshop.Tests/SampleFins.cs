using Finwright.Design;
using Finwright.Workshop.Shelf;

namespace Finwright.Workshop.Tests;

/// <summary>Small designs to put onto a shelf: what they are worth is no matter here.</summary>
internal static class SampleFins
{
    private static readonly FinDesign Demo = DesignReader.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fairway-upright.fin.json"))).Design!;

    /// <summary>A design that differs from others in its name and its bench weight.</summary>
    public static FinDesign Design(string name = "Sample", double massKg = 15) => Demo with { Name = name, Prove = Demo.Prove with { MassKg = massKg } };

    /// <summary>Such a design as it comes onto the shelf.</summary>
    public static ShelfEntry Entry(string name = "Sample", double massKg = 15, string note = "") => new(Design(name, massKg), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", note, "Finwright test");
}
