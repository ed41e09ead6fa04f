using Finwright.Assessment.Caching;

namespace Finwright.Assessment.Tests.Caching;

public sealed class CacheFolderTests
{
    private static string? Folder(string? localData, bool isMac, params (string Name, string Value)[] variables) =>
        CacheFolder.Of(name => variables.FirstOrDefault(variable => variable.Name == name).Value, localData, isMac);

    [Fact]
    public void The_folder_follows_the_convention_of_the_system()
    {
        // XDG Base Directory Specification 0.8, section 3.
        Assert.Equal("/home/ann/.cache/finwright", Folder(null, false, ("HOME", "/home/ann")));
        Assert.Equal("/var/ann/finwright", Folder(null, false, ("HOME", "/home/ann"), ("XDG_CACHE_HOME", "/var/ann")));
        Assert.Equal("/home/ann/.cache/finwright", Folder(null, false, ("HOME", "/home/ann"), ("XDG_CACHE_HOME", "not/absolute")));
        Assert.Equal("/Users/ann/Library/Caches/finwright", Folder(null, true, ("HOME", "/Users/ann")));
        Assert.Equal(Path.Combine("C:/Users/ann/AppData/Local", "finwright", "cache"), Folder("C:/Users/ann/AppData/Local", false));
        Assert.Null(Folder(null, false));
    }

    [Theory]
    [InlineData("off", null)]
    [InlineData("OFF", null)]
    [InlineData("/tmp/elsewhere", "/tmp/elsewhere")]
    [InlineData("", "/home/ann/.cache/finwright")]
    public void The_variable_moves_it_or_switches_it_off(string value, string? expected) =>
        Assert.Equal(expected, Folder(null, false, ("HOME", "/home/ann"), (CacheFolder.Variable, value)));
}
