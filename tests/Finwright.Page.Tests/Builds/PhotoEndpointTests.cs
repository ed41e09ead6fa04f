using Finwright.Page.Builds;

namespace Finwright.Page.Tests.Builds;

public sealed class PhotoEndpointTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-photos-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_picture_is_known_by_its_first_bytes_whatever_its_name()
    {
        string path = Write("photo.txt", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13]);
        (Stream stream, string type) = PhotoEndpoint.Open(path)!.Value;
        using (stream)
            Assert.Equal("image/png", type);
    }

    [Fact]
    public void What_is_no_picture_is_never_opened()
    {
        Assert.Null(PhotoEndpoint.Open(Write("photo.jpg", "<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray())));
        Assert.Null(PhotoEndpoint.Open(Write("short.png", [0x89])));
        Assert.Null(PhotoEndpoint.Open(Path.Combine(_folder, "none.png")));
        Assert.Null(PhotoEndpoint.Open(_folder));
    }

    private string Write(string name, byte[] content)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllBytes(path, content);
        return path;
    }
}
