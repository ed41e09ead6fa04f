using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;
using PourAttitude = Finwright.Making.Pores.PourAttitude;

namespace Finwright.Assessment.Made;

/// <summary>Plans the pour of every part.</summary>
internal static class PourWork
{
    private const double Kelvin = 273.15, Millimetres = 1e-3, Millilitres = 1e-6, PerCent = 0.01;

    // Bubbles of a few millimetres must show; more cells would only be slower.
    private const double FinestCell = 0.8e-3;

    private const int MostCells = 500_000;

    // So much of the pores may stay air before an attitude that is hard to hold is worth it: tapping and topping up get it out (judgement).
    private const double AirNotWorthATilt = 0.008;

    /// <summary>Plans the pour.</summary>
    /// <param name="pour">The design's pour.</param>
    /// <param name="resin">The resin.</param>
    /// <param name="printed">The parts, gauge and all; at least one.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancellation">Stops it.</param>
    public static FinPoured Of(Pour pour, ResinSystem resin, IReadOnlyList<PartPrinted> printed, ICollection<Finding> findings, IProgress<double>? progress, CancellationToken cancellation)
    {
        CupRun cup = Vessels.Cup(pour, resin, cancellation);
        PartPrinted[] wanted = [.. printed.Where(part => !part.Part.IsGauge)];
        List<PartPoured> poured = [];
        foreach ((int index, PartPrinted part) in wanted.Index())
        {
            if (part.Layers.CoreVolume > 0)
                poured.Add(new PartPour(pour, resin, cup, part, findings, cancellation).Plan());
            else
                findings.Add(new("no-core", Severity.Note, "$.print", $"The {part.Part.Name} has no room inside its walls and solid layers, so it is not poured.", "Nothing, or print it with fewer walls."));
            progress?.Report((index + 1.0) / wanted.Length);
        }

        PrintSettings settings = printed[0].Layers.Settings;
        return new(resin, Gyroid.CellEdge(settings.LineWidth, settings.InfillShare), poured);
    }

    /// <summary>Viscosity over the seconds since mixing, Pa s, as the resin in the cup has it; null when the resin does not tell.</summary>
    private static Func<double, double>? ViscosityOf(ResinSystem resin, CupRun cup)
    {
        if (resin.Viscosity is null)
            return null;
        return seconds =>
        {
            int at = 0;
            while (at + 1 < cup.History.Count && cup.History[at + 1].Time <= seconds)
                at++;
            CupMoment a = cup.History[at], b = cup.History[Math.Min(at + 1, cup.History.Count - 1)];
            double share = b.Time > a.Time ? Math.Clamp((seconds - a.Time) / (b.Time - a.Time), 0, 1) : 0;
            return resin.ViscosityAt(a.Temperature + share * (b.Temperature - a.Temperature), a.Conversion + share * (b.Conversion - a.Conversion));
        };
    }

    private sealed class PartPour(Pour pour, ResinSystem resin, CupRun cup, PartPrinted part, ICollection<Finding> findings, CancellationToken cancellation)
    {
        private readonly PartLayers _layers = part.Layers;
        private readonly PartVoxels _voxels = Voxeliser.Of(part.Layers, Voxeliser.CellFor(part.Layers, FinestCell, MostCells), cancellation);
        private readonly double _share = part.Layers.Settings.InfillShare;
        private readonly List<(Point3 Inward, double Depth, OpeningChance Chance, double? LeastDepth)> _openings = [];

        public PartPoured Plan()
        {
            double cellEdge = Gyroid.CellEdge(part.Layers.Settings.LineWidth, _share), fresh = (pour.ResinCelsius ?? pour.RoomCelsius) + Kelvin;
            Point3? given = PourUp.Of(pour) is { } up ? _layers.ToLayers.Turn(up) : null;
            (string Name, PourPort Port)[] own = [.. OwnPorts()];
            bool suggested = own.Length < 2;
            if (suggested && part.Part.Ports.Count > 0)
                findings.Add(new("ports-too-few", Severity.Caution, "$.pour.ports", $"The {part.Part.Name} has {(own.Length == 0 ? "no port" : "one port")} that reaches its pores; resin needs one and air another, so places are suggested and the air is judged with them.", "Drill where the answer suggests it."));
            AttitudeSearchResult? search = suggested ? null : AttitudeSearch.Search(_voxels, _share, [.. own.Select(port => port.Port)], given ?? _layers.ToLayers.Turn(new(0, -1, 0)), _layers.ToLayers, AirNotWorthATilt, cancellation);
            AttitudeAir? chosen = given is null ? search?.Best : search?.Now;
            PourAttitude attitude = chosen?.Attitude ?? (given is { } told ? PourAttitude.Of(told, _layers.ToLayers) : Easiest());
            PortPlan plan = PortPlaces.Suggest(_voxels, _share, attitude.Up, pour.Ports.DiameterMm * Millimetres)!;
            (string Name, PourPort Port)[] ports = suggested
                ? [("feed", plan.Feed), .. plan.Vents.Select((vent, index) => ($"vent {index + 1}", vent))]
                : own;
            int feed = suggested ? 0 : chosen!.FeedPort;
            TrappedAirResult air = chosen?.Air ?? new TrappedAir(PoreGrid.Create(_voxels, _share)).Solve(attitude.Up, plan.Vents, keepCells: true);
            PoreVolume pores = PourVolume.FromLayers(_layers);
            PourNeed need = PourVolume.Need([pores], pour.ReservoirMl * Millilitres, pour.LossPercent * PerCent, resin.Shrinkage);
            return new()
            {
                Name = part.Part.Name,
                IsBase = part.Part.IsBase,
                IsImported = part.Part.IsImported,
                Layers = _layers,
                Voxels = _voxels,
                Attitude = attitude,
                IsAttitudeFound = given is null,
                Ports = [.. ports.Select((port, index) => Opened(port.Name, port.Port, index == feed, cellEdge)).OrderByDescending(port => port.IsFeed)],
                ArePortsSuggested = suggested,
                Air = air,
                Search = search,
                Suggested = plan,
                Thin = ThinCore.Measure(_voxels, cellEdge),
                Pores = pores,
                Need = need,
                Batches = BatchPlan.Of(need.Total, resin, pour.CupGrams / 1e3, fresh),
                Fill = Fill(attitude.Up, ports[feed].Port, cellEdge),
                CupLife = cup.PotLife,
            };
        }

        private IEnumerable<(string Name, PourPort Port)> OwnPorts()
        {
            foreach (PortToDrill port in part.Part.Ports)
            {
                if (PortMouths.Of(port, _layers, _voxels) is { } mouth)
                    yield return (port.Name, mouth);
                else
                    findings.Add(new("port-misses-core", Severity.Caution, "$.pour.ports", $"The port \"{port.Name}\" meets no core behind the wall: nothing flows through it.", "Put it where the part is thicker, or leave it out."));
            }
        }

        private PouredPort Opened(string name, PourPort port, bool isFeed, double cellEdge)
        {
            // Drilled until the far wall is near, at most one cell of the gyroid deep.
            double depth = Math.Max(0.5e-3, Math.Min(cellEdge, PortMouths.CoreBehind(port, _voxels, 2 * cellEdge)));
            Point3 inward = -1 * port.Outward;
            // Ports of a part mostly look the same way and are as deep: one answer for all of them.
            if (_openings.Find(known => Math.Abs(known.Inward.Dot(inward)) > 1 - 1e-9 && Math.Abs(known.Depth - depth) < 1e-5) is not { Chance: { } chance } opening)
            {
                chance = PortOpening.Chance(port.Diameter, depth, cellEdge, _share, inward);
                opening = (inward, depth, chance, PortOpening.LeastDepth(port.Diameter, cellEdge, _share, inward));
                _openings.Add(opening);
            }

            return new(name, port, isFeed, depth, opening.Chance, opening.LeastDepth);
        }

        /// <summary>Without ports of its own: the side up that needs fewest vents, then keeps least air.</summary>
        private PourAttitude Easiest()
        {
            Point3[] sides = [new(0, -1, 0), new(0, 1, 0), new(1, 0, 0), new(-1, 0, 0), new(0, 0, 1), new(0, 0, -1)];
            return sides
                .Select(side => PourAttitude.Of(_layers.ToLayers.Turn(side), _layers.ToLayers))
                .Select(attitude => (Attitude: attitude, Plan: PortPlaces.Suggest(_voxels, _share, attitude.Up, pour.Ports.DiameterMm * Millimetres)!))
                .OrderBy(entry => entry.Plan.Vents.Count)
                .ThenBy(entry => entry.Plan.Air.Volume)
                .First().Attitude;
        }

        private FillResult? Fill(Point3 up, PourPort feed, double cellEdge)
        {
            if (Gyroid.Permeability(cellEdge, _share) is not { } permeability || ViscosityOf(resin, cup) is not { } viscosity || PoreColumn.Of(_voxels, up) is not { } column)
                return null;
            return DarcyFill.Solve(new()
            {
                Column = column,
                OpenShare = 1 - _share,
                // The tighter end: how long it takes at the latest.
                Permeability = permeability.Low,
                Density = resin.Density,
                Pressure = DarcyFill.HeadPressure(resin.Density, column.Height + pour.HeadMm * Millimetres),
                Viscosity = viscosity,
                TimeLimit = double.IsFinite(cup.Gel) ? cup.Gel : Vessels.Watched,
                Bores = [new(feed.Diameter, _layers.Settings.WallThickness)],
            });
        }
    }
}
