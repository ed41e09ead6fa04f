using CsCheck;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Voxels;

public sealed class SquaredDistancesTests
{
    [Fact]
    public void Of_scattered_marks_agrees_with_looking_at_all_of_them() =>
        Gen.Select(Gen.Int[0, 59].Array[1, 12], Gen.Double[0.2, 3], Gen.Double[0.2, 3]).Hold((marks, dy, dz) =>
        {
            const int nx = 5, ny = 4, nz = 3;
            bool[] marked = new bool[nx * ny * nz];
            foreach (int mark in marks)
                marked[mark] = true;
            double[] squared = SquaredDistances.Of(marked, nx, ny, nz, 1, dy, dz);
            for (int i = 0; i < squared.Length; i++)
            {
                double least = marks.Min(m => Math.Pow(m % nx - i % nx, 2) + Math.Pow(dy * (m / nx % ny - i / nx % ny), 2) + Math.Pow(dz * (m / (nx * ny) - i / (nx * ny)), 2));
                Assert.Equal(least, squared[i], 1e-10);
            }
        });

    [Fact]
    public void Of_nothing_marked_is_infinitely_far()
    {
        Assert.All(SquaredDistances.Of(new bool[24], 4, 3, 2, 1, 1, 1), d => Assert.Equal(double.PositiveInfinity, d));
    }
}
