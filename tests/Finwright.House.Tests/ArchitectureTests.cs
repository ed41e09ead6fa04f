using System.Xml.Linq;

namespace Finwright.House.Tests;

public sealed class ArchitectureTests
{
    /// <summary>What each module may reference directly: dependencies point down only.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Finwright.Numerics"] = [],
        ["Finwright.Design"] = ["Finwright.Numerics"],
        ["Finwright.Geometry"] = ["Finwright.Numerics", "Finwright.Design"],
        ["Finwright.Water"] = ["Finwright.Numerics", "Finwright.Design", "Finwright.Geometry"],
        ["Finwright.Strength"] = ["Finwright.Numerics", "Finwright.Design", "Finwright.Geometry"],
        ["Finwright.Making"] = ["Finwright.Numerics", "Finwright.Design", "Finwright.Geometry"],
        ["Finwright.Assessment"] = ["Finwright.Numerics", "Finwright.Design", "Finwright.Geometry", "Finwright.Water", "Finwright.Strength", "Finwright.Making"],
        ["Finwright.Papers"] = ["Finwright.Assessment"],
        ["Finwright.Workshop"] = ["Finwright.Assessment"],
        ["Finwright.Page"] = ["Finwright.Papers", "Finwright.Workshop"],
        ["Finwright"] = ["Finwright.Numerics", "Finwright.Design", "Finwright.Geometry", "Finwright.Water", "Finwright.Strength", "Finwright.Making", "Finwright.Assessment", "Finwright.Papers", "Finwright.Workshop", "Finwright.Page"],
    };

    [Fact]
    public void Modules_reference_only_what_lies_below_them()
    {
        foreach (string project in Repository.Projects.Where(p => p.StartsWith("src/", StringComparison.Ordinal)))
        {
            string name = Repository.NameOf(project);
            Assert.True(Allowed.ContainsKey(name), $"{name} has no rule here: say what it may reference.");
            foreach (string reference in Repository.ReferencesOf(project))
                Assert.True(Allowed[name].Contains(reference, StringComparer.Ordinal), $"{name} must not reference {reference}.");
        }
    }

    [Fact]
    public void Every_rule_belongs_to_a_module()
    {
        string[] modules = [.. Repository.Projects.Where(p => p.StartsWith("src/", StringComparison.Ordinal)).Select(Repository.NameOf)];
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), modules.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Package_versions_stand_in_one_file()
    {
        foreach (string project in Repository.Projects)
            foreach (XElement package in Repository.ReadXml(project).Descendants("PackageReference"))
                Assert.True(package.Attribute("Version") is null, $"{project}: the version of {(string?)package.Attribute("Include")} belongs in Directory.Packages.props.");
    }

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        string[] listed = [.. Repository.ReadXml("finwright.slnx").Descendants("Project").Select(p => (string)p.Attribute("Path")!)];
        Assert.Equal(Repository.Projects, listed.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Every_program_formats_numbers_the_same_in_every_country()
    {
        string props = Repository.Read("Directory.Build.props");
        Assert.Contains("<InvariantGlobalization>true</InvariantGlobalization>", props, StringComparison.Ordinal);
        foreach (string project in Repository.Projects)
            Assert.Empty(Repository.ReadXml(project).Descendants("InvariantGlobalization"));
        Assert.Equal("1.5", $"{1.5}");
    }

    [Fact]
    public void Numeric_kernels_do_not_know_files_screens_or_the_design_file()
    {
        // The mapping from the design file and the readers and writers are the edges; everything else is kernel.
        string[] kernels = ["src/Finwright.Numerics/", "src/Finwright.Geometry/", "src/Finwright.Water/", "src/Finwright.Strength/", "src/Finwright.Making/"];
        string[] edges = ["/FromDesign/", "/Files/", "/Pictures/"];
        string[] files = [.. Repository.Files.Where(f => f.EndsWith(".cs", StringComparison.Ordinal)
            && kernels.Any(k => f.StartsWith(k, StringComparison.Ordinal))
            && !edges.Any(e => f.Contains(e, StringComparison.Ordinal)))];
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            string text = Repository.Read(file);
            foreach (string word in new[] { "System.Text.Json", "System.Xml", "Console." })
                Assert.False(text.Contains(word, StringComparison.Ordinal), $"{file} uses {word}.");
        }
    }

    [Fact]
    public void The_map_names_every_folder_of_every_module()
    {
        string map = Repository.Read("docs/map.md");
        IEnumerable<string> folders = Repository.Files
            .Where(f => f.StartsWith("src/", StringComparison.Ordinal) && f.EndsWith(".cs", StringComparison.Ordinal))
            .Select(f => f[4..f.LastIndexOf('/')])
            .Distinct(StringComparer.Ordinal);
        foreach (string folder in folders)
            Assert.True(map.Contains($"`{folder}`", StringComparison.Ordinal), $"docs/map.md does not name `{folder}`.");
    }
}
