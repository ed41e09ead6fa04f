using System.Numerics;
using System.Runtime.InteropServices;

namespace Finwright.Numerics;

/// <summary>A symmetric matrix whose entries all lie near the diagonal: its lower half, row after row.</summary>
/// <remarks>The matrices of structured meshes are of this kind. Entry (i, j) with j ≤ i and i − j ≤ <see cref="Bandwidth"/> is kept; all others are zero.</remarks>
public sealed class BandMatrix
{
    private readonly double[] _rows;

    /// <summary>A matrix of zeros.</summary>
    /// <param name="order">Number of rows, at least 1.</param>
    /// <param name="bandwidth">Greatest distance of an entry from the diagonal, 0 to order − 1.</param>
    public BandMatrix(int order, int bandwidth)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(order);
        ArgumentOutOfRangeException.ThrowIfNegative(bandwidth);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(bandwidth, order);
        (Order, Bandwidth) = (order, bandwidth);
        _rows = new double[order * (bandwidth + 1)];
    }

    /// <summary>Number of rows.</summary>
    public int Order { get; }

    /// <summary>Greatest distance of an entry from the diagonal.</summary>
    public int Bandwidth { get; }

    /// <summary>An entry, from either half; zero outside the band.</summary>
    public double this[int row, int column]
    {
        get
        {
            (int i, int j) = row >= column ? (row, column) : (column, row);
            return i - j > Bandwidth ? 0 : _rows[i * (Bandwidth + 1) + Bandwidth - i + j];
        }
    }

    /// <summary>Adds to an entry and so to its mirror image; call it once for each pair.</summary>
    /// <param name="row">Row.</param>
    /// <param name="column">Column, within the band.</param>
    /// <param name="value">What is added.</param>
    public void Add(int row, int column, double value)
    {
        (int i, int j) = row >= column ? (row, column) : (column, row);
        if (i - j > Bandwidth)
            throw new ArgumentOutOfRangeException(nameof(column), column, $"Row {row} keeps columns within {Bandwidth} of it.");
        _rows[i * (Bandwidth + 1) + Bandwidth - i + j] += value;
    }

    /// <summary>Adds a multiple of another matrix of the same order and band.</summary>
    public void Add(BandMatrix other, double factor)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Order != Order || other.Bandwidth != Bandwidth)
            throw new ArgumentException($"The other matrix has order {other.Order} and band {other.Bandwidth}; this one {Order} and {Bandwidth}.", nameof(other));
        for (int k = 0; k < _rows.Length; k++)
            _rows[k] += factor * other._rows[k];
    }

    /// <summary>Product with a vector.</summary>
    /// <param name="vector">One value a column.</param>
    /// <param name="product">Receives one value a row; not the same memory.</param>
    public void Multiply(ReadOnlySpan<double> vector, Span<double> product)
    {
        if (vector.Length != Order || product.Length != Order)
            throw new ArgumentException($"Vector and product must have {Order} values.", nameof(vector));
        product.Clear();
        for (int i = 0; i < Order; i++)
        {
            int first = Math.Max(0, i - Bandwidth);
            ReadOnlySpan<double> row = Row(i)[(first - i + Bandwidth)..];
            double sum = row[^1] * vector[i];
            for (int j = first; j < i; j++)
            {
                sum += row[j - first] * vector[j];
                product[j] += row[j - first] * vector[i];
            }

            product[i] += sum;
        }
    }

    /// <summary>The block that is left when the first rows and columns are taken away: the equations of what remains when those unknowns are zero.</summary>
    /// <param name="from">How many are taken away, 0 to order − 1.</param>
    public BandMatrix Trailing(int from)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(from);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(from, Order);
        BandMatrix block = new(Order - from, Math.Min(Bandwidth, Order - from - 1));
        for (int i = 0; i < block.Order; i++)
        {
            int kept = Math.Min(i, block.Bandwidth) + 1;
            Row(i + from)[^kept..].CopyTo(block.Row(i)[^kept..]);
        }

        return block;
    }

    /// <summary>Row i of the lower half, columns i − band to i; those below 0 are zero.</summary>
    internal Span<double> Row(int i) => _rows.AsSpan(i * (Bandwidth + 1), Bandwidth + 1);

    /// <summary>Sum of products, with the processor's vector unit, in a fixed order.</summary>
    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector<double>> left = MemoryMarshal.Cast<double, Vector<double>>(a), right = MemoryMarshal.Cast<double, Vector<double>>(b[..a.Length]);
        Vector<double> even = default, odd = default;
        int k = 0;
        for (; k + 1 < left.Length; k += 2)
        {
            even += left[k] * right[k];
            odd += left[k + 1] * right[k + 1];
        }

        if (k < left.Length)
            even += left[k] * right[k];
        double sum = Vector.Sum(even + odd);
        for (int i = left.Length * Vector<double>.Count; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}
