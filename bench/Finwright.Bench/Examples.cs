using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;

namespace Finwright.Bench;

/// <summary>The demo designs, and what is made of them on the way.</summary>
internal static class Examples
{
    /// <summary>The demos to measure; the first alone in a dry run.</summary>
    public static string[] All => DryRun.IsOn ? ["sandbar-delta"] : ["sandbar-delta", "fairway-upright", "eelgrass-rake"];

    public static DesignReading Read(string demo) => DesignReader.ReadFile(Path.Combine(Folder, demo + ".fin.json"));

    public static (FinDesign Design, Blade Blade) Blade(string demo)
    {
        FinDesign design = Read(demo).Design!;
        return (design, BladeFromDesign.Create(design, [])!);
    }

    public static (FinDesign Design, Blade Blade, FinSolids Solids) Solids(string demo)
    {
        (FinDesign design, Blade blade) = Blade(demo);
        TriangleMesh skin = BladeLoft.Build(blade, BladeFromDesign.Loft(design.Shape)).Mesh;
        return (design, blade, FinSolids.Build(design, blade, skin, [])!);
    }

    /// <summary>The repository's folder.</summary>
    public static string Repository
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
                folder = folder.Parent;
            return folder?.FullName ?? throw new InvalidOperationException("The repository was not found above the benchmark's folder.");
        }
    }

    private static string Folder => Path.Combine(Repository, "examples");
}
