using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace Finwright.Page.Tests.Scene;

/// <summary>A scene file read as the browser reads it.</summary>
internal sealed class SceneReading
{
    private readonly byte[] _file;
    private readonly int _start;

    public SceneReading(byte[] file)
    {
        _file = file;
        Assert.Equal("FWS1", Encoding.ASCII.GetString(file, 0, 4));
        int length = BitConverter.ToInt32(file, 4);
        Assert.Equal(0, length % 4);
        _start = 8 + length;
        Header = JsonDocument.Parse(Encoding.UTF8.GetString(file, 8, length)).RootElement;
    }

    public JsonElement Header { get; }

    public JsonElement About => Header.GetProperty("about");

    public IReadOnlyList<JsonElement> Parts => [.. Header.GetProperty("parts").EnumerateArray()];

    public JsonElement Part(string tone) => Parts.First(part => part.GetProperty("tone").GetString() == tone);

    public float[] Floats(JsonElement part, string array) => MemoryMarshal.Cast<byte, float>(Bytes(part, array)).ToArray();

    public int[] Whole(JsonElement part, string array) => MemoryMarshal.Cast<byte, int>(Bytes(part, array)).ToArray();

    private ReadOnlySpan<byte> Bytes(JsonElement part, string array)
    {
        JsonElement where = part.GetProperty(array);
        return _file.AsSpan(_start + where.GetProperty("at").GetInt32(), 4 * where.GetProperty("count").GetInt32());
    }
}
