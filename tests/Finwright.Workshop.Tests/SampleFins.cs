using Finwright.Design;
using Finwright.Workshop.Shelf;

namespace Finwright.Workshop.Tests;

/// <summary>Small designs to put onto a shelf: what they are worth is no matter here.</summary>
internal static class SampleFins
{
    private static readonly Lazy<FinDesign> Demo = new(() => DesignReader.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fairway-upright.fin.json"))).Design!);

    private static readonly FinDesign Bare = new() { Name = "Bare", Shape = new() { Outline = new() { Family = OutlineFamily.Upright } } };

    /// <summary>The smallest entry that makes sense, made without reading a file: for programs that are killed soon after they start.</summary>
    public static ShelfEntry BareEntry(string name, double massKg = 15) => new(Bare with { Name = name, Prove = Bare.Prove with { MassKg = massKg } }, "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "", "Finwright test");

    /// <summary>A design that differs from others in its name and its bench weight.</summary>
    public static FinDesign Design(string name = "Sample", double massKg = 15) => Demo.Value with { Name = name, Prove = Demo.Value.Prove with { MassKg = massKg } };

    /// <summary>Such a design as it comes onto the shelf.</summary>
    public static ShelfEntry Entry(string name = "Sample", double massKg = 15, string note = "") => new(Design(name, massKg), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", note, "Finwright test");
}
