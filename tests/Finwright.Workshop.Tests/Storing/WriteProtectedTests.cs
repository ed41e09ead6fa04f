using System.Runtime.Versioning;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>A store that may only be read is read; changing it is refused, and nothing is left beside it.</summary>
[UnsupportedOSPlatform("windows")]
public sealed class WriteProtectedTests
{
    private const UnixFileMode Read = UnixFileMode.UserRead, Enter = UnixFileMode.UserExecute, Write = UnixFileMode.UserWrite;

    /// <summary>The system's administrator may write anywhere; the other program is started without that right.</summary>
    private static string[] AsAnyone => Environment.IsPrivilegedProcess
        ? ["setpriv", "--bounding-set=-dac_override,-dac_read_search", "--inh-caps=-dac_override,-dac_read_search"]
        : [];

    [Theory]
    [InlineData(Read, Read | Write | Enter)]
    [InlineData(Read | Write, Read | Enter)]
    [InlineData(Read, Read | Enter)]
    public async Task A_write_protected_store_is_read_and_not_changed(UnixFileMode file, UnixFileMode folder)
    {
        using TemporaryStore place = new();
        using (WorkshopStore store = place.Open())
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
        IReadOnlyList<string> lines = await Look(place, file, folder);
        Assert.Equal(["outings 1", "refusal ReadOnly"], lines.Take(2), StringComparer.Ordinal);
        Assert.StartsWith("ReadOnly: ", lines[2], StringComparison.Ordinal);
        Assert.Contains("write-protected", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Changes_that_a_killed_program_left_beside_a_write_protected_store_are_read()
    {
        using TemporaryStore place = new(), other = new();
        using (WorkshopStore store = other.Open())
        {
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
            File.Copy(other.File, place.File);
            File.Copy(other.File + "-wal", place.File + "-wal");
        }

        IReadOnlyList<string> lines = await Look(place, Read, Read | Enter);
        Assert.Equal(["outings 1", "refusal ReadOnly"], lines.Take(2), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_write_protected_store_of_an_earlier_program_is_brought_up_to_date_in_memory()
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version: 3);
        IReadOnlyList<string> lines = await Look(place, Read, Read | Enter);
        Assert.Equal(["outings 1", "refusal ReadOnly"], lines.Take(2), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_new_store_in_a_write_protected_folder_is_refused()
    {
        using TemporaryStore place = new();
        File.SetUnixFileMode(place.Folder, Read | Enter);
        IReadOnlyList<string> lines = await OtherProgram.Run("look and try to change", place.File, "", AsAnyone);
        Assert.StartsWith("Unreachable: ", lines[0], StringComparison.Ordinal);
        Assert.Contains(place.File, lines[0], StringComparison.Ordinal);
        File.SetUnixFileMode(place.Folder, Read | Write | Enter);
        Assert.Empty(place.Files);
    }

    private static async Task<IReadOnlyList<string>> Look(TemporaryStore place, UnixFileMode file, UnixFileMode folder)
    {
        (byte[] bytes, IReadOnlyList<string> files) = (await File.ReadAllBytesAsync(place.File, TestContext.Current.CancellationToken), place.Files);
        File.SetUnixFileMode(place.File, file);
        File.SetUnixFileMode(place.Folder, folder);
        try
        {
            return await OtherProgram.Run("look and try to change", place.File, "", AsAnyone);
        }
        finally
        {
            File.SetUnixFileMode(place.Folder, Read | Write | Enter);
            Assert.Equal(bytes, await File.ReadAllBytesAsync(place.File, TestContext.Current.CancellationToken));
            Assert.Equal(files, place.Files);
        }
    }
}
