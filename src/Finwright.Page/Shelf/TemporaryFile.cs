namespace Finwright.Page.Shelf;

/// <summary>Files that are gone when they are closed.</summary>
internal static class TemporaryFile
{
    /// <summary>Opens one; only its owner may read it.</summary>
    public static FileStream Open() => new(
        Path.Combine(Path.GetTempPath(), $"finwright-{Guid.NewGuid():N}"),
        new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous,
            UnixCreateMode = OperatingSystem.IsWindows() ? null : UnixFileMode.UserRead | UnixFileMode.UserWrite,
        });
}
