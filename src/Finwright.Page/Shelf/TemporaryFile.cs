namespace Finwright.Page.Shelf;

/// <summary>Files that are gone when they are closed.</summary>
internal static class TemporaryFile
{
    /// <summary>Opens one; only its owner may read it.</summary>
    public static FileStream Open()
    {
        FileStreamOptions options = new()
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous,
        };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return new(Path.Combine(Path.GetTempPath(), $"finwright-{Guid.NewGuid():N}"), options);
    }
}
