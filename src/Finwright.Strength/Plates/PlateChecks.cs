using System.Runtime.CompilerServices;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Plates;

/// <summary>Refuses a plate that cannot be one.</summary>
internal static class PlateChecks
{
    public static void Check(PlateFin fin)
    {
        Require.Positive(fin.Span);
        Check(fin.Wall);
        Check(fin.Core);
        if (fin.Sheet is { } sheet)
        {
            Require.Positive(sheet.Thickness);
            Check(sheet.Material);
        }

        foreach (PlateVoid hole in fin.Voids)
        {
            Require.Finite(hole.X);
            Require.Finite(hole.Y);
            Require.Positive(hole.HalfWidthX);
            Require.Positive(hole.HalfWidthY);
            Require.Finite(hole.FromZ);
            Require.AtLeast(hole.ToZ, hole.FromZ);
        }

        foreach (PlateRod rod in fin.Rods)
        {
            Require.Positive(rod.Diameter);
            Require.Positive(rod.Modulus);
            Require.Positive(rod.ShearModulus);
            Require.Positive(rod.Density);
            Require.Finite(rod.Z);
            Require.Positive(Math.Sqrt((rod.ToX - rod.FromX) * (rod.ToX - rod.FromX) + (rod.ToY - rod.FromY) * (rod.ToY - rod.FromY)), nameof(fin.Rods));
        }
    }

    private static void Check(Elasticity material, [CallerArgumentExpression(nameof(material))] string name = "")
    {
        Require.Positive(material.ModulusX, name);
        Require.Positive(material.ModulusY, name);
        Require.Positive(material.ShearXY, name);
        Require.Positive(material.ShearXZ, name);
        Require.Positive(material.ShearYZ, name);
        Require.Positive(material.Density, name);
        Require.Between(material.PoissonXY * material.PoissonYX, 0, 0.99, name);
    }
}
