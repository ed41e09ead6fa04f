namespace Finwright.Tests;

/// <summary>What holds of every text about print, pour and cure.</summary>
internal static class MakingText
{
    /// <summary>Holds that a text stays within 80 columns; only the place of a finding, a path, may be longer.</summary>
    public static void Fits(ProgramRun run) =>
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80 || line.Contains("$.", StringComparison.Ordinal) || line.Contains(Path.GetTempPath(), StringComparison.Ordinal), line));

    /// <summary>The text in one line.</summary>
    public static string Words(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
