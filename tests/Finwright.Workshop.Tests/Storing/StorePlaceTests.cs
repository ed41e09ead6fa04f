using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

public sealed class StorePlaceTests
{
    // XDG Base Directory Specification, version 0.8: XDG_DATA_HOME, else $HOME/.local/share; relative paths are to be ignored.
    [Theory]
    [InlineData("HOME=/home/kim", null, false, "/home/kim/.local/share/finwright/workshop.finstore")]
    [InlineData("HOME=/home/kim XDG_DATA_HOME=/data", null, false, "/data/finwright/workshop.finstore")]
    [InlineData("HOME=/home/kim XDG_DATA_HOME=data", null, false, "/home/kim/.local/share/finwright/workshop.finstore")]
    [InlineData("HOME=/home/kim XDG_DATA_HOME=", null, false, "/home/kim/.local/share/finwright/workshop.finstore")]
    [InlineData("HOME=/Users/kim", null, true, "/Users/kim/Library/Application Support/finwright/workshop.finstore")]
    [InlineData("", "/local", false, "/local/finwright/workshop.finstore")]
    [InlineData("HOME=/home/kim FINWRIGHT_STORE=mine.finstore", null, false, "mine.finstore")]
    [InlineData("", null, false, null)]
    public void Of_follows_the_system_s_convention(string environment, string? localData, bool isMac, string? expected)
    {
        Dictionary<string, string> values = environment.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=')).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
        Assert.Equal(expected, StorePlace.Of(name => values.GetValueOrDefault(name), localData, isMac));
    }
}
