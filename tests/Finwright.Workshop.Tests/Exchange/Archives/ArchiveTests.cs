using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using CsCheck;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Archives;

namespace Finwright.Workshop.Tests.Exchange.Archives;

public sealed class ArchiveTests
{
    private static readonly ArchiveLimits Limits = new(File: 1 << 20, Entries: 10, Entry: 8 << 20, Total: 12 << 20);

    // ISO 3309 / ITU-T V.42; the check value of "123456789" is widely published, from memory.
    [Fact]
    public void Crc32_of_the_nine_digits_is_the_published_value() => Assert.Equal(0xCBF43926, Crc32.Of("123456789"u8));

    [Fact]
    public void What_is_written_another_reader_of_zip_files_reads_too() => Gen.Byte.Array[0, 3000].Array[0, 5].Hold(contents =>
    {
        byte[] file = Written(contents);
        Assert.Equal(file, Written(contents));
        using ZipArchive other = new(new MemoryStream(file), ZipArchiveMode.Read);
        Assert.Equal(contents.Length, other.Entries.Count);
        ArchiveReader own = new(new MemoryStream(file), Limits);
        for (int i = 0; i < contents.Length; i++)
        {
            using MemoryStream copy = new();
            using (Stream entry = other.GetEntry($"a/{i}.bin")!.Open())
                entry.CopyTo(copy);
            Assert.Equal(contents[i], copy.ToArray());
            Assert.Equal(contents[i], own.Read($"a/{i}.bin"));
        }
    }, iter: 100);

    [Theory]
    [InlineData(CompressionLevel.Optimal)]
    [InlineData(CompressionLevel.NoCompression)]
    public void What_another_packer_writes_is_read(CompressionLevel level)
    {
        byte[] file = Zip(level, ("folder/", ""), ("folder/a.txt", new string('x', 5000)), ("b.txt", ""));
        ArchiveReader own = new(new MemoryStream(file), Limits);
        Assert.Equal(["folder/a.txt", "b.txt"], own.Names);
        Assert.Equal(new string('x', 5000), Encoding.UTF8.GetString(own.Read("folder/a.txt")));
        Assert.Empty(own.Read("b.txt"));
    }

    [Theory]
    [InlineData("../evil.txt", "climb out")]
    [InlineData("a/../../evil.txt", "climb out")]
    [InlineData("..\\evil.txt", "climb out")]
    [InlineData("/etc/evil.txt", "place on the disk")]
    [InlineData("\\evil.txt", "place on the disk")]
    [InlineData("c:/evil.txt", "place on the disk")]
    [InlineData("<script>.txt", "does not belong")]
    [InlineData("Upper.txt", "does not belong")]
    [InlineData("a b.txt", "does not belong")]
    public void Names_that_reach_elsewhere_are_refused(string name, string why) => Refused(Zip(CompressionLevel.Optimal, (name, "x")), why);

    [Fact]
    public void Doubled_names_are_refused_whatever_their_capitals() => Refused(Zip(CompressionLevel.Optimal, ("a.txt", "x"), ("a.txt", "y")), "twice");

    [Fact]
    public void Too_many_entries_are_refused_before_they_are_read() => Refused(Zip(CompressionLevel.Optimal, [.. Enumerable.Range(0, 11).Select(i => ($"{i}.txt", "x"))]), "11 entries");

    [Fact]
    public void A_bomb_is_refused_by_its_ratio() => Refused(Zip(CompressionLevel.Optimal, ("a.txt", new string('x', 4 << 20))), "times its size");

    [Fact]
    public void More_than_the_limits_is_refused_by_what_the_headers_say()
    {
        Refused(Zip(CompressionLevel.NoCompression, ("a.txt", new string('x', 1 << 20))), "at most");
        // Three entries of almost 4.2 MB each that pack by a factor of about 100.
        string wide = string.Concat(Enumerable.Range(0, 42_000).Select(i => $"{i,5}" + new string('x', 95)));
        Refused(Zip(CompressionLevel.Optimal, ("a.txt", wide), ("b.txt", wide), ("c.txt", wide)), "more than 12 MB");
    }

    [Fact]
    public void A_bomb_that_lies_about_its_size_is_stopped_at_the_size_it_told()
    {
        byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", new string('x', 4 << 20)));
        Patch(file, 24, 22, 1000);
        ArchiveReader own = new(new MemoryStream(file), Limits);
        Assert.Contains("not as large", Assert.Throws<ExchangeException>(() => own.Read("a.txt")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refusing_a_bomb_costs_no_more_than_reading_its_headers()
    {
        byte[] dense = Zip(CompressionLevel.Optimal, ("a.txt", new string('x', 4 << 20))), many = Zip(CompressionLevel.Optimal, [.. Enumerable.Range(0, 20_000).Select(i => ($"{i}.txt", ""))]);
        ArchiveLimits wide = Limits with { File = 8 << 20 };
        foreach (byte[] file in (byte[][])[dense, many])
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Throws<ExchangeException>(() => new ArchiveReader(new MemoryStream(file), wide));
            // The end of the file, up to 64 kB, and the refusal itself.
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1 << 20);
        }
    }

    [Fact]
    public void A_size_above_what_is_there_is_refused()
    {
        byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", "hello hello hello hello hello hello"));
        Patch(file, 24, 22, 1000);
        ArchiveReader own = new(new MemoryStream(file), Limits);
        Assert.Contains("not as large", Assert.Throws<ExchangeException>(() => own.Read("a.txt")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Headers_that_disagree_are_refused()
    {
        byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", "hello hello hello hello hello hello"));
        Patch(file, 24, null, 20);
        Refused(file, "disagree");
    }

    [Theory]
    [InlineData(8, 6, 1, "encrypted")]
    [InlineData(8, 6, 64, "encrypted")]
    [InlineData(10, 8, 12, "method 12")]
    [InlineData(10, 8, 99, "method 99")]
    public void Encryption_and_other_ways_of_packing_are_refused(int central, int local, int value, string why)
    {
        byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", "hello hello hello hello"));
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(CentralOf(file) + central), (ushort)value);
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(local), (ushort)value);
        Refused(file, why);
    }

    [Fact]
    public void Entries_over_each_other_are_refused()
    {
        // The first entry holds, byte for byte, what the second one is; then the directory points into the first.
        byte[] content = new byte[1000];
        for (uint i = 0, state = 1; i < content.Length; i++)
            content[i] = (byte)((state = state * 1664525 + 1013904223) >> 24);
        byte[] single = Written([content]);
        byte[] file = Written([single[..CentralOf(single)], content]);
        // Both are named a/0.bin inside; the outer second entry is a/1.bin: give the inner one that name.
        int inner = file.AsSpan(1).IndexOf("a/0.bin"u8) + 1;
        inner = file.AsSpan(inner + 1).IndexOf("a/0.bin"u8) + inner + 1;
        file[inner + 2] = (byte)'1';
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(CentralOf(file) + 46 + "a/0.bin".Length + 42), (uint)inner - 30);
        Refused(file, "over each other");
    }

    [Fact]
    public void A_changed_byte_of_the_content_is_found_by_the_check_sum()
    {
        byte[] file = Zip(CompressionLevel.NoCompression, ("a.txt", "hello"));
        file[30 + 5] ^= 1;
        ArchiveReader own = new(new MemoryStream(file), Limits);
        Assert.Contains("check sum", Assert.Throws<ExchangeException>(() => own.Read("a.txt")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_was_cut_off_anywhere_is_refused()
    {
        byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", "hello"), ("b.txt", "there"));
        for (int length = 0; length < file.Length; length++)
            Refused(file[..length], "damaged");
    }

    [Fact]
    public void Any_bytes_changed_anywhere_are_read_or_refused_and_nothing_else() =>
        Gen.Select(Gen.Int[0, 10_000], Gen.Byte, Gen.Int[0, 10_000], Gen.Byte).Hold(((int At, byte Value, int Then, byte Other) own) =>
        {
            byte[] file = Zip(CompressionLevel.Optimal, ("a.txt", "hello hello hello hello hello"), ("b/c.txt", "there"));
            file[own.At % file.Length] = own.Value;
            file[own.Then % file.Length] ^= own.Other;
            try
            {
                ArchiveReader reader = new(new MemoryStream(file), Limits);
                foreach (string name in reader.Names)
                    Assert.True(reader.Read(name).Length <= Limits.Entry);
            }
            catch (ExchangeException refusal)
            {
                Assert.NotEmpty(refusal.Remedy);
            }
        }, iter: 3000);

    [Fact]
    public void What_is_dense_is_written_so_that_it_can_be_read_again()
    {
        byte[] dense = new byte[3 << 20];
        ArchiveLimits wide = Limits with { File = 8 << 20 };
        using MemoryStream stream = new();
        ArchiveWriter writer = new(stream, wide, "");
        writer.Add("a.bin", dense);
        writer.Complete();
        Assert.Equal(dense, new ArchiveReader(stream, wide).Read("a.bin"));
    }

    [Fact]
    public void More_than_can_be_read_again_is_not_written()
    {
        ArchiveWriter writer = new(new MemoryStream(), Limits, "Write less.");
        Assert.Equal("Write less.", Assert.Throws<ExchangeException>(() => writer.Add("a.bin", new byte[9 << 20])).Remedy);
    }

    private static byte[] Written(byte[][] contents)
    {
        using MemoryStream stream = new();
        ArchiveWriter writer = new(stream, Limits, "");
        for (int i = 0; i < contents.Length; i++)
            writer.Add($"a/{i}.bin", contents[i]);
        writer.Complete();
        return stream.ToArray();
    }

    private static byte[] Zip(CompressionLevel level, params (string Name, string Text)[] entries)
    {
        using MemoryStream stream = new();
        using (ZipArchive archive = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, string text) in entries)
            {
                using StreamWriter writer = new(archive.CreateEntry(name, level).Open());
                writer.Write(text);
            }
        }

        return stream.ToArray();
    }

    private static void Refused(byte[] file, string why)
    {
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => new ArchiveReader(new MemoryStream(file), Limits));
        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refusal.Remedy);
    }

    private static int CentralOf(byte[] file) => (int)BinaryPrimitives.ReadUInt32LittleEndian(file.AsSpan(file.Length - 22 + 16));

    private static void Patch(byte[] file, int central, int? local, uint value)
    {
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(CentralOf(file) + central), value);
        if (local is int at)
            BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(at), value);
    }
}
