using Finwright.Geometry.Files;

namespace Finwright.Geometry.Tests.Files;

public sealed class AtomicFileTests
{
    [Fact]
    public void Write_replaces_an_older_file_whole()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder["fin.stl"], "something much longer than the new content");
        AtomicFile.Write(folder["fin.stl"], stream => stream.Write("new"u8));
        Assert.Equal("new", File.ReadAllText(folder["fin.stl"]));
        Assert.Equal(["fin.stl"], folder.Names);
    }

    [Fact]
    public void Write_that_fails_halfway_keeps_the_older_file_and_leaves_nothing_else()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder["fin.stl"], "old");
        IOException problem = Assert.Throws<IOException>(() => AtomicFile.Write(folder["fin.stl"], stream =>
        {
            stream.Write(new byte[100_000]);
            throw new IOException("No space left on device");
        }));
        Assert.Contains(folder["fin.stl"], problem.Message, StringComparison.Ordinal);
        Assert.Contains("No space left on device. Nothing was changed.", problem.Message, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(folder["fin.stl"]));
        Assert.Equal(["fin.stl"], folder.Names);
    }

    [Fact]
    public void Write_passes_on_a_fault_of_its_caller_and_leaves_nothing()
    {
        using TemporaryFolder folder = new();
        Assert.Throws<InvalidOperationException>(() => AtomicFile.Write(folder["fin.stl"], _ => throw new InvalidOperationException()));
        Assert.Empty(folder.Names);
    }

    [Fact]
    public void Write_to_a_folder_says_so()
    {
        using TemporaryFolder folder = new();
        Directory.CreateDirectory(folder["out"]);
        Assert.Contains("is a folder", Assert.Throws<IOException>(() => AtomicFile.Write(folder["out"], Never)).Message, StringComparison.Ordinal);
        Assert.Contains("is a folder", Assert.Throws<IOException>(() => AtomicFile.Write(folder["new"] + "/", Never)).Message, StringComparison.Ordinal);
        Assert.Contains("is a folder", Assert.Throws<IOException>(() => AtomicFile.Write("/", Never)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_into_a_missing_folder_names_it()
    {
        using TemporaryFolder folder = new();
        string message = Assert.Throws<DirectoryNotFoundException>(() => AtomicFile.Write(folder["none/fin.stl"], Never)).Message;
        Assert.Contains(folder["none"] + " does not exist", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_below_a_file_or_with_too_long_a_name_is_an_IOException_that_names_the_path()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder["fin"], "");
        Assert.Contains("fin.stl", Assert.ThrowsAny<IOException>(() => AtomicFile.Write(folder["fin/fin.stl"], Never)).Message, StringComparison.Ordinal);
        string name = new('x', 300);
        Assert.Contains(name, Assert.ThrowsAny<IOException>(() => AtomicFile.Write(folder[name], _ => { })).Message, StringComparison.Ordinal);
        Assert.Equal(["fin"], folder.Names);
    }

    [Fact]
    public void Write_where_the_system_refuses_files_is_an_IOException_that_names_the_path()
    {
        Assert.SkipUnless(Directory.Exists("/proc/self"), "Only Linux has a folder that refuses files even to its administrator.");
        string message = Assert.ThrowsAny<IOException>(() => AtomicFile.Write("/proc/fin.stl", _ => { })).Message;
        Assert.StartsWith("/proc/fin.stl cannot be written", message, StringComparison.Ordinal);
        Assert.DoesNotContain(".partial", message, StringComparison.Ordinal);
    }

    private static void Never(Stream stream) => Assert.Fail("Nothing can be written here.");
}
