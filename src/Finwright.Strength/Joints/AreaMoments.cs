namespace Finwright.Strength.Joints;

/// <summary>Area, first and second moments of rings of straight edges, by Green's theorem; edges that run back over themselves cancel.</summary>
/// <param name="Area">∫dA.</param>
/// <param name="FirstX">∫x dA.</param>
/// <param name="FirstZ">∫z dA.</param>
/// <param name="SecondXX">∫x² dA.</param>
/// <param name="SecondXZ">∫x z dA.</param>
/// <param name="SecondZZ">∫z² dA.</param>
internal readonly record struct AreaMoments(double Area, double FirstX, double FirstZ, double SecondXX, double SecondXZ, double SecondZZ)
{
    /// <summary>These moments and those of one more ring, positive when x turns towards z along it.</summary>
    public AreaMoments Plus(ReadOnlySpan<FootprintPoint> ring)
    {
        double area = 0, x = 0, z = 0, xx = 0, xz = 0, zz = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            FootprintPoint a = ring[i], b = ring[i + 1 < ring.Length ? i + 1 : 0];
            double cross = a.X * b.Z - b.X * a.Z;
            area += cross;
            x += cross * (a.X + b.X);
            z += cross * (a.Z + b.Z);
            xx += cross * (a.X * a.X + a.X * b.X + b.X * b.X);
            xz += cross * (a.X * b.Z + 2 * a.X * a.Z + 2 * b.X * b.Z + b.X * a.Z);
            zz += cross * (a.Z * a.Z + a.Z * b.Z + b.Z * b.Z);
        }

        return new(Area + area / 2, FirstX + x / 6, FirstZ + z / 6, SecondXX + xx / 12, SecondXZ + xz / 24, SecondZZ + zz / 12);
    }
}
