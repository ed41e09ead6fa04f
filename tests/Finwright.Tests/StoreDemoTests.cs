using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>The invented season through the command line.</summary>
public sealed class StoreDemoTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_season_is_loaded_once_compared_and_given_away()
    {
        JsonElement loaded = Run("one", "store", "demo", "--json").Json().GetProperty("answer");
        Assert.Equal((3, 8, 6, 13), (Count(loaded, "designs"), Count(loaded, "revisions"), Count(loaded, "builds"), Count(loaded, "tracks")));
        Assert.Contains("Fairway upright", Run("one", "store", "demo").IsRefusal().Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal("second-faster", Run("one", "outing", "compare", "Fairway grey", "Fairway black", "--json").Json().GetProperty("verdict").GetString());
        Assert.Equal("cannot-tell", Run("one", "outing", "compare", "Sandbar one", "Sandbar two", "--json").Json().GetProperty("verdict").GetString());
        string file = _folder["fairway.fin-bundle.zip"];
        Assert.Equal(ExitCode.Good, Run("one", "export", "Fairway upright", "--with-builds", "--to", file).ExitCode);
        Assert.Equal(ExitCode.Good, Run("two", "import", file).ExitCode);
        Assert.Equal(Run("one", "outing", "compare", "Fairway grey", "Fairway black").Out, Run("two", "outing", "compare", "Fairway grey", "Fairway black").Out);
    }

    private static int Count(JsonElement answer, string what) => answer.GetProperty(what).GetInt32();

    private ProgramRun Run(string store, params string[] call) => ProgramRun.Of([.. call, "--store", _folder[$"{store}.finstore"]]);
}
