using System.Text.Json;
using System.Xml.Linq;

namespace Finwright.House.Tests;

/// <summary>Holds docs/licences.md equal to what the restored packages say of themselves.</summary>
/// <remarks>Run the tests with FINWRIGHT_WRITE=1 to write the list anew after a change of packages.</remarks>
public sealed class LicenceTests
{
    private const string List = "docs/licences.md";

    /// <summary>Licences under which a dependency may be used; anything else needs a decision first.</summary>
    private static readonly string[] Accepted = ["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "Unlicense", "PostgreSQL", "MS-PL", "public domain"];

    /// <summary>Licences that are fine for what only tests use. MPL-2.0 (the rules of accessibility): its files stay as they are, and nothing of it is handed on.</summary>
    private static readonly string[] AcceptedForTests = ["MPL-2.0"];

    /// <summary>Packages that name their licence by a file or an address instead of an expression; read in the package itself.</summary>
    private static readonly Dictionary<string, string> ReadByHand = new(StringComparer.OrdinalIgnoreCase)
    {
        ["CommandLineParser"] = "MIT",
        ["Microsoft.ClearScript.Core"] = "MIT",
        ["Microsoft.ClearScript.V8"] = "MIT",
        ["Microsoft.ClearScript.V8.ICUData"] = "MIT",
        ["Microsoft.DotNet.PlatformAbstractions"] = "MIT",
        ["SQLite"] = "public domain",
    };

    [Fact]
    public void List_of_licences_agrees_with_the_restored_packages()
    {
        string expected = Render();
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(Path.Combine(Repository.Root, List), expected);
        Assert.Equal(expected, Repository.Read(List));
    }

    private static string Render()
    {
        SortedDictionary<string, Package> packages = new(StringComparer.OrdinalIgnoreCase);
        foreach (string project in Repository.Projects)
            AddNuGet(packages, project);
        foreach (string manifest in Repository.Files.Where(f => f.EndsWith("package-lock.json", StringComparison.Ordinal)))
            AddNpm(packages, manifest);
        foreach (Package package in packages.Values)
            Assert.True(package.Licence.Split(" OR ").Any(l => Accepted.Contains(l.Trim('(', ')'), StringComparer.Ordinal) || (!package.InProduct && AcceptedForTests.Contains(l, StringComparer.Ordinal))), $"{package.Name} {package.Version} is under {package.Licence}: decide before using it.");
        return $"""
            # Licences of what Finwright uses

            Our own code is under the MIT licence (see LICENSE). Nothing in these tables is part of the repository; the build fetches it
            from the package registries. Written by the tests (`FINWRIGHT_WRITE=1 ./test.sh`), which also fail when it is out of date.
            The native part of the script engine bundles V8 and its own dependencies; their notices stand in the package's `License.txt` and
            have to go along when the program is handed on. Papers are set in Inter, under the SIL Open Font License 1.1, which comes in
            Avalonia.Fonts.Inter (MIT, NuGet; its version stands in Directory.Packages.props) and is embedded; its licence goes along too.

            ## In the product
            {Table(packages.Values.Where(p => p.InProduct))}

            ## Only for building, testing and measuring
            {Table(packages.Values.Where(p => !p.InProduct))}

            """.ReplaceLineEndings("\n");
    }

    private static string Table(IEnumerable<Package> packages) =>
        "| Package | Version | Licence | From |\n| --- | --- | --- | --- |\n"
        + string.Join('\n', packages.Select(p => $"| {p.Name} | {p.Version} | {p.Licence} | {p.Registry} |"));

    private static void AddNuGet(SortedDictionary<string, Package> packages, string project)
    {
        string name = Repository.NameOf(project);
        string assets = Path.Combine(Repository.Root, "artifacts", "obj", name, "project.assets.json");
        Assert.True(File.Exists(assets), $"{assets} is missing: build first.");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(assets));
        string[] folders = [.. document.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name)];
        // Analyzers are development dependencies of every project; they are not in the product.
        HashSet<string> development = new(Repository.ReadXml("Directory.Build.props").Descendants("PackageReference").Select(p => (string)p.Attribute("Include")!), StringComparer.OrdinalIgnoreCase);
        foreach (JsonProperty library in document.RootElement.GetProperty("libraries").EnumerateObject())
        {
            if (library.Value.GetProperty("type").GetString() != "package")
                continue;
            string[] id = library.Name.Split('/');
            // The native part of the script engine differs by machine; the list names it once for all.
            string shown = id[0].Contains(".Native.", StringComparison.Ordinal) ? id[0][..id[0].LastIndexOf('.')] + ".(machine)" : id[0];
            bool inProduct = project.StartsWith("src/", StringComparison.Ordinal) && !development.Contains(id[0]);
            bool before = packages.TryGetValue(shown, out Package? known) && known.InProduct;
            string path = library.Value.GetProperty("path").GetString()!;
            packages[shown] = new(shown, id[1], LicenceOf(id[0], [.. folders.Select(f => Path.Combine(f, path))]), "NuGet", inProduct || before);
        }
    }

    private static string LicenceOf(string id, string[] folders)
    {
        string folder = folders.First(Directory.Exists);
        XElement metadata = XDocument.Load(Directory.GetFiles(folder, "*.nuspec").Single()).Root!.Elements().First();
        XElement? licence = metadata.Elements().FirstOrDefault(e => e.Name.LocalName == "license");
        if (licence is not null && (string?)licence.Attribute("type") == "expression")
            return licence.Value;
        // License.txt of the native part: MIT, with the notices of the script engine (BSD-3-Clause) and its parts behind it.
        if (id.StartsWith("Microsoft.ClearScript.V8.Native.", StringComparison.OrdinalIgnoreCase))
            return "MIT";
        return ReadByHand.TryGetValue(id, out string? read) ? read : $"unknown ({licence?.Value ?? "no licence element"})";
    }

    private static void AddNpm(SortedDictionary<string, Package> packages, string lockFile)
    {
        string folder = Path.GetDirectoryName(Path.Combine(Repository.Root, lockFile))!;
        using JsonDocument wanted = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "package.json")));
        foreach (JsonProperty dependency in wanted.RootElement.GetProperty("dependencies").EnumerateObject())
        {
            string own = Path.Combine(folder, "node_modules", dependency.Name, "package.json");
            Assert.True(File.Exists(own), $"{own} is missing: build first.");
            using JsonDocument package = JsonDocument.Parse(File.ReadAllText(own));
            packages[dependency.Name] = new(dependency.Name, package.RootElement.GetProperty("version").GetString()!, package.RootElement.GetProperty("license").GetString()!, "npm", true);
        }
    }

    private sealed record Package(string Name, string Version, string Licence, string Registry, bool InProduct);
}
