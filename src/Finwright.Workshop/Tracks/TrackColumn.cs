namespace Finwright.Workshop.Tracks;

/// <summary>One number of each point of a track, packed without loss.</summary>
/// <remarks>
/// Recorders tell decimal numbers. Where all of a column are whole multiples of a power of ten, times the column's unit, their differences are written as whole numbers of as few bytes as they need;
/// else the eight bytes of each number.
/// </remarks>
internal static class TrackColumn
{
    private const int MostDecimals = 12;
    private const byte Exact = 255;
    private const double LargestWhole = 9e15;
    private const int Chunk = 8192;

    /// <summary>Writes a column.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="numbers">The numbers; not a number stands for none told.</param>
    /// <param name="unit">What one is in the recorder's own unit, for example π/180 for degrees.</param>
    public static void Write(BinaryWriter writer, double[] numbers, double unit)
    {
        int decimals = Decimals(numbers, unit);
        writer.Write(decimals < 0 ? Exact : (byte)decimals);
        if (decimals < 0)
        {
            foreach (double number in numbers)
                writer.Write(number);
            return;
        }

        double scale = Math.Pow(10, decimals);
        long before = 0;
        foreach (double number in numbers)
        {
            if (double.IsNaN(number))
            {
                writer.Write7BitEncodedInt64(0);
                continue;
            }

            long whole = (long)Math.Round(number / unit * scale), step = whole - before;
            // Signs fold into the lowest bit, so that small steps either way are short; 0 is none told.
            writer.Write7BitEncodedInt64(((step << 1) ^ (step >> 63)) + 1);
            before = whole;
        }
    }

    /// <summary>Reads a column.</summary>
    /// <param name="reader">Where from.</param>
    /// <param name="count">How many numbers.</param>
    /// <param name="unit">As written.</param>
    /// <exception cref="InvalidDataException">The column is damaged.</exception>
    public static double[] Read(BinaryReader reader, int count, double unit)
    {
        byte decimals = reader.ReadByte();
        if (decimals is > MostDecimals and not Exact)
            throw new InvalidDataException($"A column of the track kept has {decimals} decimals; there are {MostDecimals} at most.");
        // Grows with what is really there: the count alone, from damaged bytes, takes no memory.
        List<double> numbers = new(Math.Min(count, Chunk));
        double scale = Math.Pow(10, decimals);
        long before = 0;
        for (int i = 0; i < count; i++)
        {
            if (decimals == Exact)
            {
                numbers.Add(reader.ReadDouble());
                continue;
            }

            long folded = reader.Read7BitEncodedInt64();
            if (folded == 0)
            {
                numbers.Add(double.NaN);
                continue;
            }

            ulong step = (ulong)folded - 1;
            before = unchecked(before + ((long)(step >> 1) ^ -(long)(step & 1)));
            numbers.Add(Number(before, scale, unit));
        }

        return [.. numbers];
    }

    private static double Number(long whole, double scale, double unit) => whole / scale * unit;

    /// <summary>Fewest decimals at which every number comes back as it was; -1 when there are none.</summary>
    private static int Decimals(double[] numbers, double unit)
    {
        int decimals = 0;
        double scale = 1;
        foreach (double number in numbers)
        {
            while (!Comes(number, unit, scale))
            {
                if (++decimals > MostDecimals)
                    return -1;
                scale = Math.Pow(10, decimals);
            }
        }

        // What came back at fewer decimals does at more, but for rounding: make sure.
        return Array.TrueForAll(numbers, number => Comes(number, unit, scale)) ? decimals : -1;
    }

    private static bool Comes(double number, double unit, double scale)
    {
        if (double.IsNaN(number))
            return true;
        double whole = Math.Round(number / unit * scale);
        return Math.Abs(whole) <= LargestWhole && BitConverter.DoubleToInt64Bits(Number((long)whole, scale, unit)) == BitConverter.DoubleToInt64Bits(number);
    }
}
