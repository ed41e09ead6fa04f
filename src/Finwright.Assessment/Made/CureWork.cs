using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Layers;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Assessment.Made;

/// <summary>Lets poured parts cure.</summary>
internal static class CureWork
{
    private const double Kelvin = 273.15, Hour = 3600;

    // Through a blade of 10 mm some ten cells: the peak is then within a degree or two (tests of Making).
    private const double FinestCell = 0.9e-3;

    private const int MostCells = 60_000;

    /// <summary>Lets every part cure.</summary>
    public static FinCured Of(Pour pour, Print print, FinPoured poured, double softening, IProgress<double>? progress, CancellationToken cancellation)
    {
        ResinSystem resin = poured.Resin;
        IReadOnlyList<PartPoured> parts = poured.Parts;
        double room = pour.RoomCelsius + Kelvin, fresh = (pour.ResinCelsius ?? pour.RoomCelsius) + Kelvin;
        PlasticHeat plastic = new(print.FilamentDensityGPerCm3 * 1e3, print.HeatCapacityJPerKgK, print.ConductivityWPerMK);
        List<PartCured> cured = [];
        foreach ((int index, PartPoured part) in parts.Index())
        {
            // Band first, then the search for the time in water.
            IProgress<double>? own = progress is null ? null : new Share(progress, (double)index / parts.Count, 0.7 / parts.Count);
            PartVoxels voxels = Voxeliser.Of(part.Layers, Voxeliser.CellFor(part.Layers, FinestCell, MostCells), cancellation);
            PartCureCase one = Case(pour, part, voxels, resin, plastic, room, fresh);
            PartCureBand band = PartCure.Band(voxels, one, own, cancellation);
            WaterTime? water = one.Bath is null ? null : PartCure.WaterNeeded(voxels, one, softening, PourCaution.High, cancellation);
            cured.Add(new(part, voxels, one, band, water));
            progress?.Report((index + 1.0) / parts.Count);
        }

        return new(resin, softening, cured, Vessels.Cup(pour, resin, cancellation), Vessels.Reservoir(pour, resin, cancellation));
    }

    private static PartCureCase Case(Pour pour, PartPoured part, PartVoxels voxels, ResinSystem resin, PlasticHeat plastic, double room, double fresh)
    {
        (double lowCore, double highCore) = Heights(voxels, voxels.Core, part.Up);
        (double low, double high) = Heights(voxels, voxels.Part, part.Up);
        PrintSettings settings = part.Layers.Settings;
        return new()
        {
            Resin = resin,
            Plastic = plastic,
            InfillShare = settings.InfillShare,
            WallThickness = settings.WallThickness,
            Room = room,
            Up = part.Up,
            Pours = pour.Stages.Count == 0
                ? [new(0, double.PositiveInfinity, fresh)]
                : [.. pour.Stages.Select(stage => new CurePour(stage.AfterHours * Hour, stage.ToPercent >= 100 ? double.PositiveInfinity : lowCore + stage.ToPercent / 100 * (highCore - lowCore), fresh))],
            Bath = pour.Cooling == Cooling.StillAir
                ? null
                : new(0, pour.BathHours * Hour, pour.BathCelsius + Kelvin, pour.BathLevelPercent >= 100 ? double.PositiveInfinity : low + pour.BathLevelPercent / 100 * (high - low)),
            Duration = Vessels.Watched + (pour.Stages.Count == 0 ? 0 : pour.Stages[^1].AfterHours * Hour),
        };
    }

    /// <summary>Lowest and highest point of the cells that hold any share, along up.</summary>
    private static (double Low, double High) Heights(PartVoxels voxels, double[] share, Point3 up)
    {
        Point3 unit = 1 / up.Length * up;
        double half = 0.5 * (Math.Abs(unit.X) * voxels.Cell.X + Math.Abs(unit.Y) * voxels.Cell.Y + Math.Abs(unit.Z) * voxels.Cell.Z);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 0; i < voxels.CountX; i++)
                    if (share[voxels.Index(i, j, k)] > 0)
                    {
                        double height = voxels.Centre(i, j, k).Dot(unit);
                        (low, high) = (Math.Min(low, height - half), Math.Max(high, height + half));
                    }

        return (low, high);
    }

    private sealed class Share(IProgress<double> whole, double from, double part) : IProgress<double>
    {
        public void Report(double value) => whole.Report(from + part * value);
    }
}
