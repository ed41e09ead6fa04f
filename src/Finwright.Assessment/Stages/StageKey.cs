using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Finwright.Assessment.Stages;

/// <summary>
/// Names the result of a stage by everything that went into it: SHA-256 over the stage's name and version, the part of the
/// design that it may read, and the keys of the stages before it. Equal keys mean equal results.
/// </summary>
/// <param name="Hex">Lower-case hexadecimal digest, 64 characters.</param>
public readonly record struct StageKey(string Hex)
{
    /// <summary>Digest of fields; each is written with its length, so that no two different lists look alike.</summary>
    /// <param name="fields">The fields, in order.</param>
    public static StageKey Of(params IReadOnlyList<string> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> length = stackalloc byte[sizeof(int)];
        foreach (string field in fields)
        {
            byte[] bytes = Encoding.UTF8.GetBytes(field);
            BinaryPrimitives.WriteInt32LittleEndian(length, bytes.Length);
            hash.AppendData(length);
            hash.AppendData(bytes);
        }

        return new(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    /// <inheritdoc/>
    public override string ToString() => Hex;
}
