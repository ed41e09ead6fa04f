using System.Text;
using CsCheck;
using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

/// <summary>Whatever the bytes: an answer or one refusal, finite numbers, nothing thrown.</summary>
public sealed class MotionFuzzTests
{
    private static readonly string[] Pieces =
    [
        "G0", "G1", "G2", "G3", "G28", "G92", "G90", "G91", "M82", "M83", "M200", "M0", "G4", "T1", "N5", " ", " ", "\n", "\n", "\r\n", "X", "Y", "Z", "E", "F", "I", "J", "R", "P",
        "-", ".", "0", "1", "10", "9999", "0.2", "-3.25", ";", "(", ")", "*", "e", "%", "/", "@", "_", "\t", "1e5", "99999999999999999999", "ä", "START",
    ];

    [Fact]
    public void Random_bytes_are_answered() =>
        Gen.Byte.Array[0, 4000].Hold(bytes => Answered(bytes), iter: 300);

    [Fact]
    public void Random_words_are_answered() =>
        Gen.Int[0, Pieces.Length - 1].Array[0, 200].Hold(picks => Answered(Encoding.UTF8.GetBytes(string.Concat(picks.Select(p => Pieces[p])))), iter: 3000);

    [Fact]
    public void Valid_files_with_a_few_bytes_changed_are_answered()
    {
        byte[] valid = Encoding.ASCII.GetBytes("G21\nG90\nM83\n" + string.Concat(Enumerable.Range(1, 8).Select(i => MotionText.Square(0.2 * i))) + "G2 I5 E1\nG3 X10 Y10 R50 E2\n");
        Gen.Select(Gen.Int[0, valid.Length - 1].Array[1, 6], Gen.Byte.Array[6]).Hold((places, values) =>
        {
            byte[] changed = [.. valid];
            for (int i = 0; i < places.Length; i++)
                changed[places[i]] = values[i];
            Answered(changed);
        }, iter: 2000);
    }

    [Fact]
    public void Valid_files_cut_anywhere_are_answered()
    {
        string valid = "G21\nG90\nM83\n" + string.Concat(Enumerable.Range(1, 3).Select(i => MotionText.Square(0.2 * i)));
        for (int length = 0; length < valid.Length; length++)
            Answered(Encoding.ASCII.GetBytes(valid[..length]));
    }

    [Fact]
    public void Long_file_takes_no_more_memory_than_a_short_one()
    {
        // The reader's own room is buffers and counts (under 2 MB), and the footprint; ten times the lines add nothing.
        long few = Room(5), many = Room(50);
        Assert.InRange(many - few, -1_000_000, 1_000_000);

        static long Room(int rounds)
        {
            using RepeatedStream stream = new(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("G1 X10 Y10 Z0.2 E1 F1200\nG1 X20 Y10 E1\nG1 X20 Y20 E1\n", 5000))), rounds);
            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.NotNull(MotionFile.Read(stream).Summary);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    private static void Answered(byte[] bytes)
    {
        using MemoryStream stream = new(bytes);
        MotionReading reading = MotionFile.Read(stream);
        if (reading.Summary is not MotionSummary s)
        {
            Assert.True(Assert.Single(reading.Findings).IsError);
            return;
        }

        Assert.DoesNotContain(reading.Findings, f => f.IsError);
        foreach (double number in new[] { s.PlasticVolume, s.PartVolume, s.StandingVolume, s.LaidLength, s.TravelLength, s.LeastTime, s.Time, s.GreatestFlow, s.GreatestRetraction })
            Assert.True(double.IsFinite(number) && number >= -1e-12, $"{number}");
        Assert.Equal(bytes.Length, s.Bytes);
        for (int i = 1; i < s.Layers.Count; i++)
            Assert.True(s.Layers[i].Height > s.Layers[i - 1].Height);
        // What is laid is in the part or apart; a sum of many terms keeps ten digits.
        double parts = s.PartVolume + s.StandingVolume + (s.Apart?.Volume ?? 0);
        Assert.Equal(1, (parts + 1e-9) / (s.PlasticVolume + 1e-9), 1e-9);
    }

    private sealed class RepeatedStream(byte[] bytes, int rounds) : MemoryStream(bytes)
    {
        private int _left = rounds;

        public override int Read(byte[] buffer, int offset, int count)
        {
            int read = base.Read(buffer, offset, count);
            if (read > 0 || --_left <= 0)
                return read;
            Position = 0;
            return base.Read(buffer, offset, count);
        }
    }
}
