using System.Security.Cryptography;
using System.Text;
using Finwright.Assessment.Stages;
using Finwright.Design;

namespace Finwright.Assessment.Caching;

/// <summary>
/// The bytes of one kept result: mark, key, kind, findings, the result, and a SHA-256 over all of it. What is damaged, cut short or not
/// ours reads as nothing.
/// </summary>
internal static class KeptFile
{
    private const int MostFindings = 10_000;
    private static readonly byte[] Mark = "FINWRIGHT-KEPT-1"u8.ToArray();

    /// <summary>Writes a result.</summary>
    public static byte[] Write<T>(StageKey key, ResultForm<T> form, StageResult<T> result)
        where T : class
    {
        using MemoryStream stream = new();
        using (BinaryWriter writer = new(stream, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write(Mark);
            writer.Write(key.Hex);
            writer.Write(form.Name);
            writer.Write(result.Findings.Count);
            foreach (Finding finding in result.Findings)
                Write(writer, finding);
            writer.Write(result.Value is not null);
            if (result.Value is not null)
                form.Write(writer, result.Value);
        }

        byte[] content = stream.ToArray();
        return [.. content, .. SHA256.HashData(content)];
    }

    /// <summary>Reads a result; null when the bytes are not that result.</summary>
    public static StageResult<T>? Read<T>(StageKey key, ResultForm<T> form, byte[] bytes)
        where T : class
    {
        if (bytes.Length < Mark.Length + SHA256.HashSizeInBytes || !bytes.AsSpan(0, Mark.Length).SequenceEqual(Mark))
            return null;
        int length = bytes.Length - SHA256.HashSizeInBytes;
        if (!SHA256.HashData(bytes.AsSpan(0, length)).AsSpan().SequenceEqual(bytes.AsSpan(length)))
            return null;
        try
        {
            using MemoryStream stream = new(bytes, Mark.Length, length - Mark.Length, writable: false);
            using BinaryReader reader = new(stream, Encoding.UTF8);
            if (!string.Equals(reader.ReadString(), key.Hex, StringComparison.Ordinal) || !string.Equals(reader.ReadString(), form.Name, StringComparison.Ordinal))
                return null;
            int count = reader.ReadInt32();
            if (count is < 0 or > MostFindings)
                return null;
            List<Finding> findings = [];
            for (int i = 0; i < count; i++)
                findings.Add(ReadFinding(reader));
            T? value = reader.ReadBoolean() ? form.Read(reader) : null;
            return stream.Position == stream.Length ? new(value, findings) : null;
        }
        catch (Exception problem) when (problem is EndOfStreamException or InvalidDataException or FormatException or ArgumentException or IOException)
        {
            return null;
        }
    }

    private static void Write(BinaryWriter writer, Finding finding)
    {
        writer.Write(finding.Code);
        writer.Write((int)finding.Severity);
        writer.Write(finding.Path);
        writer.Write(finding.Message);
        writer.Write(finding.Remedy);
        writer.Write(finding.Line ?? 0);
        WriteOptional(writer, finding.Value);
        WriteOptional(writer, finding.Limit);
    }

    private static Finding ReadFinding(BinaryReader reader)
    {
        string code = reader.ReadString();
        Severity severity = (Severity)reader.ReadInt32();
        if (!Enum.IsDefined(severity))
            throw new InvalidDataException("There is no such severity.");
        Finding finding = new(code, severity, reader.ReadString(), reader.ReadString(), reader.ReadString());
        int line = reader.ReadInt32();
        return finding with { Line = line == 0 ? null : line, Value = ReadOptional(reader), Limit = ReadOptional(reader) };
    }

    private static void WriteOptional(BinaryWriter writer, string? text)
    {
        writer.Write(text is not null);
        writer.Write(text ?? "");
    }

    private static string? ReadOptional(BinaryReader reader)
    {
        bool given = reader.ReadBoolean();
        string text = reader.ReadString();
        return given ? text : null;
    }
}
