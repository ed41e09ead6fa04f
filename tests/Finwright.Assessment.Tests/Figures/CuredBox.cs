using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Cure;
using Finwright.Making.FromDesign;
using Finwright.Making.Pores;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Assessment.Tests.Figures;

/// <summary>A box printed, poured and cured on a coarse grid, worked out once for all tests that draw it.</summary>
internal static class CuredBox
{
    public const double Length = 0.08, Width = 0.012, Height = 0.03;

    public const double Softening = 338.15;

    private static readonly Lazy<(MakingResult Made, PartCured Cured)> Worked = new(() =>
    {
        double[] corners = [.. Enumerable.Range(0, 8).SelectMany(i => (double[])[(i & 1) * Length, ((i >> 1) & 1) * Width, (i >> 2) * Height])];
        int[] faces = [0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5];
        Pour pour = new();
        ResinSystem resin = ResinFromDesign.Of(pour.System, [])!;
        using ManifoldKernel kernel = new();
        PartToMake box = new("test box", new(corners, faces), Placement.Identity) { IsImported = true, Ways = [new(PrintAttitude.Standing, new(0, 0, -1))] };
        FinPrinted printed = PrintWork.Of(new(), [box], [], kernel, [], null, CancellationToken.None);
        FinPoured poured = PourWork.Of(pour, resin, printed.Parts, [], null, CancellationToken.None);
        PartPoured part = poured.Parts[0];
        PartVoxels voxels = Voxeliser.Of(part.Layers, new Point3(2e-3, 2e-3, 2e-3));
        PartCureCase one = new()
        {
            Resin = resin,
            InfillShare = part.Layers.Settings.InfillShare,
            WallThickness = part.Layers.Settings.WallThickness,
            Room = 293.15,
            Up = part.Up,
            Bath = new(0, 4 * 3600, 291.15, double.PositiveInfinity),
            Duration = 60 * 3600,
        };
        PartCured cured = new(part, voxels, one, PartCure.Band(voxels, one), null);
        CupRun cup = CupModel.Solve(new() { Resin = resin, Mass = 0.1, Diameter = 0.065, StartTemperature = 293.15, RoomTemperature = 293.15, Duration = 60 * 3600 });
        return (new() { Name = "test box", Findings = [], Printed = printed, Poured = poured, Cured = new(resin, Softening, [cured], cup, null) }, cured);
    });

    public static MakingResult Made => Worked.Value.Made;

    public static PartCured Cured => Worked.Value.Cured;

    public static PartPoured Poured => Cured.Part;

    /// <summary>The box with one vent at half its height in the pour: what lies above it stays air.</summary>
    public static PartPoured WithAir()
    {
        PartPoured part = Poured;
        Point3 middle = 0.5 * part.Layers.Size;
        PourPort vent = new(middle, new Point3(1, 0, 0) - part.Up.X * part.Up, 1e-3);
        return part with { Air = new TrappedAir(PoreGrid.Create(part.Voxels, part.Layers.Settings.InfillShare)).Solve(part.Up, [vent], keepCells: true) };
    }
}
