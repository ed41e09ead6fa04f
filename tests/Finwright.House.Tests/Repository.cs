using System.Diagnostics;
using System.Xml.Linq;

namespace Finwright.House.Tests;

/// <summary>The source tree as files, found from the folder of the running test.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>Every file under version control, with forward slashes, relative to the root.</summary>
    public static IReadOnlyList<string> Files { get; } = ListFiles();

    public static IEnumerable<string> Projects => Files.Where(f => f.EndsWith(".csproj", StringComparison.Ordinal));

    public static string Read(string relative) => File.ReadAllText(Path.Combine(Root, relative));

    public static XDocument ReadXml(string relative) => XDocument.Parse(Read(relative));

    public static string NameOf(string project) => Path.GetFileNameWithoutExtension(project);

    public static IEnumerable<string> ReferencesOf(string project) =>
        ReadXml(project).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(((string)r.Attribute("Include")!).Replace('\\', '/')));

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("finwright.slnx was not found above the test's folder.");
    }

    private static string[] ListFiles()
    {
        ProcessStartInfo start = new("git", "ls-files --cached --others --exclude-standard")
        {
            WorkingDirectory = Root,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        using Process git = Process.Start(start)!;
        string[] files = git.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        git.WaitForExit();
        return [.. files.Where(f => File.Exists(Path.Combine(Root, f))).Order(StringComparer.Ordinal)];
    }
}
