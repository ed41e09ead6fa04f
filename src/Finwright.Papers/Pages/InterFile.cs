using System.Buffers.Binary;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;

namespace Finwright.Papers.Pages;

/// <summary>The type of the papers as font files. They lie in the resources of a library, which is read as a file and never loaded.</summary>
internal static class InterFile
{
    private const string Library = "Inter.dll", Resources = "!AvaloniaResources";

    /// <summary>How the resource is laid out: length of the index, version, number of entries; then each entry with its path, place and size.</summary>
    private const int KnownVersion = 2, IndexStart = 4;

    /// <summary>Reads a font file.</summary>
    /// <param name="path">Its path in the library, for example "/Assets/Inter-Regular.ttf".</param>
    /// <returns>The bytes of an OpenType font.</returns>
    /// <exception cref="InvalidDataException">The library is laid out in another way, or has no such font.</exception>
    public static byte[] Read(string path)
    {
        using Stream library = typeof(InterFile).Assembly.GetManifestResourceStream(Library) ?? throw new InvalidDataException("The program was built without its type.");
        ReadOnlySpan<byte> resource = Resource(library);
        int index = BinaryPrimitives.ReadInt32LittleEndian(resource), version = BinaryPrimitives.ReadInt32LittleEndian(resource[4..]), count = BinaryPrimitives.ReadInt32LittleEndian(resource[8..]);
        if (version != KnownVersion)
            throw new InvalidDataException($"The library of the type is laid out in version {version}; only version {KnownVersion} is known.");

        int at = 12;
        for (int i = 0; i < count; i++)
        {
            int length = resource[at];
            string name = Encoding.UTF8.GetString(resource.Slice(at + 1, length));
            at += 1 + length;
            int start = IndexStart + index + BinaryPrimitives.ReadInt32LittleEndian(resource[at..]), size = BinaryPrimitives.ReadInt32LittleEndian(resource[(at + 4)..]);
            at += 8;
            if (name == path)
                return resource.Slice(start, size).ToArray();
        }

        throw new InvalidDataException($"The library of the type holds no \"{path}\".");
    }

    private static byte[] Resource(Stream library)
    {
        using PEReader file = new(library);
        MetadataReader metadata = file.GetMetadataReader();
        ManifestResource found = metadata.ManifestResources.Select(metadata.GetManifestResource).FirstOrDefault(entry => metadata.StringComparer.Equals(entry.Name, Resources));
        if (found.Name.IsNil || file.PEHeaders.CorHeader is not { } header)
            throw new InvalidDataException($"The library of the type holds no \"{Resources}\".");
        PEMemoryBlock block = file.GetSectionData(header.ResourcesDirectory.RelativeVirtualAddress);
        BlobReader reader = block.GetReader((int)found.Offset, block.Length - (int)found.Offset);
        return reader.ReadBytes(reader.ReadInt32());
    }
}
