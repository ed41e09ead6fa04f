namespace Finwright.Design.Tests;

/// <summary>Files of the repository that are written from the types.</summary>
internal static class Repository
{
    /// <summary>When set to 1, the tests write the files instead of comparing them.</summary>
    private const string WriteVariable = "FINWRIGHT_WRITE";

    public static string Root { get; } = FindRoot();

    /// <summary>Asserts that a committed text is what the types say, or writes it when asked to.</summary>
    public static void Holds(string path, string expected)
    {
        string full = Path.Combine(Root, path);
        if (Environment.GetEnvironmentVariable(WriteVariable) == "1")
            File.WriteAllText(full, expected);
        string committed = File.ReadAllText(full);
        Assert.True(committed == expected, $"{path} is not what the types say. Run: {WriteVariable}=1 dotnet test --project tests/Finwright.Design.Tests");
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
