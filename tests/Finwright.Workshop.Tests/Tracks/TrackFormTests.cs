using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Tracks;

public sealed class TrackFormTests
{
    [Fact]
    public void A_recorded_track_takes_a_few_bytes_a_point_and_comes_back_the_same()
    {
        // As a recorder tells it: positions to 1e-7 degrees, speeds to a centimetre a second.
        TrackMaker maker = new(5);
        Random random = new(3);
        for (int i = 0; i < 4000; i++)
            maker.Sail(10 + random.NextDouble(), 0.2, 90 + 10 * random.NextDouble());
        for (int i = 0; i < maker.Count; i++)
        {
            maker[i] = maker[i] with
            {
                Latitude = Math.Round(maker[i].Latitude * 180 / Math.PI * 1e7) / 1e7 * (Math.PI / 180),
                Longitude = Math.Round(maker[i].Longitude * 180 / Math.PI * 1e7) / 1e7 * (Math.PI / 180),
                Speed = Math.Round(maker[i].Speed * 100) / 100,
                Satellites = (byte)(9 + i % 3),
                Dilution = 1.25f,
            };
        }

        Track track = maker.Track;
        byte[] bytes = TrackForm.Write(track);
        Assert.True(bytes.Length < 7 * maker.Count, $"{bytes.Length} bytes for {maker.Count} points");
        Assert.Equal(track.Points, TrackForm.Read(bytes).Points);
        Assert.Equal(bytes, TrackForm.Write(TrackForm.Read(bytes)));
    }

    [Fact]
    public void Numbers_that_are_no_decimals_come_back_to_the_last_bit()
    {
        Track track = new(TrackMaker.Start.ToOffset(TimeSpan.FromHours(2)), [new(0, Math.PI / 7, -Math.E, Math.Sqrt(2)) { StartsSegment = true }, new(Math.PI, -1.1, 3.1, double.NaN), new(-0.0, 0, 0, 1e-300)]);
        Track read = TrackForm.Read(TrackForm.Write(track));
        Assert.Equal(track.Points, read.Points);
        Assert.Equal(track.Start.Offset, read.Start.Offset);
        Assert.Equal(BitConverter.DoubleToInt64Bits(-0.0), BitConverter.DoubleToInt64Bits(read.Points[2].Time));
    }

    [Fact]
    public void Empty_cut_and_foreign_bytes_are_refused()
    {
        byte[] bytes = TrackForm.Write(new TrackMaker().Sail(10, 60).Track);
        Assert.Throws<InvalidDataException>(() => TrackForm.Read([]));
        Assert.Throws<InvalidDataException>(() => TrackForm.Read("not a track at all"u8));
        Assert.Throws<InvalidDataException>(() => TrackForm.Read([.. bytes[..4], 9, .. bytes[5..]]));
        for (int length = 0; length < bytes.Length; length++)
            Assert.Throws<InvalidDataException>(() => TrackForm.Read(bytes.AsSpan(0, length)));
        Assert.Throws<InvalidDataException>(() => TrackForm.Read([.. bytes, 0]));
    }

    [Fact]
    public void Damaged_bytes_are_refused()
    {
        byte[] good = TrackForm.Write(new TrackMaker(1, tellsSpeed: false).Sail(10, 200).Track);
        const int Rounds = 2000;
        Random random = new(2);
        int refused = 0;
        for (int round = 0; round < Rounds; round++)
        {
            byte[] bytes = [.. good];
            // Any byte to any other value; the check sum finds what the form itself does not.
            bytes[random.Next(bytes.Length)] ^= (byte)random.Next(1, 256);
            try
            {
                Assert.Equal(good, TrackForm.Write(TrackForm.Read(bytes)));
            }
            catch (InvalidDataException)
            {
                refused++;
            }
        }

        // A few bits say nothing of the content: how hard the packer tried.
        Assert.True(refused > 0.95 * Rounds, $"{refused} of {Rounds}");
    }

    [Fact]
    public void A_few_bytes_that_promise_millions_of_points_take_no_memory()
    {
        using MemoryStream stream = new();
        stream.Write("FWTR\u0001\0\0\0\0"u8);
        using (System.IO.Compression.ZLibStream packed = new(stream, System.IO.Compression.CompressionLevel.Optimal, leaveOpen: true))
        using (BinaryWriter writer = new(packed))
        {
            writer.Write(TrackMaker.Start.UtcTicks);
            writer.Write((short)0);
            writer.Write7BitEncodedInt(Track.MostPoints);
            writer.Write((byte)0);
        }

        byte[] bytes = stream.ToArray();
        bytes[5] = (byte)(bytes.Length - 9);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Throws<InvalidDataException>(() => TrackForm.Read(bytes));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 500_000);
    }

    [Fact]
    public void What_cannot_be_read_back_is_not_written()
    {
        Assert.Throws<ArgumentException>(() => TrackForm.Write(new(TrackMaker.Start, [new(0, double.NaN, 0, 0)])));
        Assert.Throws<ArgumentException>(() => TrackForm.Write(new(TrackMaker.Start, [new(0, 0, 4, 0)])));
        Assert.Throws<ArgumentException>(() => TrackForm.Write(new(TrackMaker.Start, [new(double.PositiveInfinity, 0, 0, 0)])));
        Assert.Throws<ArgumentException>(() => TrackForm.Write(new(TrackMaker.Start, [new(3e11, 0, 0, 0)])));
        Assert.Throws<ArgumentException>(() => TrackForm.Write(new(TrackMaker.Start, [new(0, 0, 0, -1)])));
    }
}
