using Finwright.Making.Resins;
using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>Cure of a printed part in three dimensions: poured at once or in stages, in air or for a while in water.</summary>
/// <remarks>
/// <para>Walls, infill and resin share cells of a grid; cells at the surface are cut as the part cuts them (<see cref="PartVoxels"/>). A pour fills whole cells by the height of their middle.
/// Air and water keep their temperature; the bath is large and stirred now and then.</para>
/// <para>Left out: resin that flows or sinks, heat carried by rods and nuts, heat in ports and reservoirs (see <see cref="CupModel"/>), properties that change with temperature.
/// Cells coarser than a fifth of the part's thickness tell the peak to some kelvins only.</para>
/// </remarks>
public static class PartCure
{
    // Without a glass curve: resin this far past gel can be handled (judgement).
    private const double PastGel = 0.1;

    // Longest time in water looked at, s.
    private const double LongestBath = 24 * 3600;

    /// <summary>Conversion from which a resin can be handled in a room: past gel, and glassy there.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="room">Temperature of the room, K.</param>
    public static double HandlingConversion(ResinSystem resin, double room)
    {
        ArgumentNullException.ThrowIfNull(resin);
        return resin.GlassTransition is { } glass
            ? Math.Max(resin.Kinetics.GelConversion, Math.Min(1, CureRate.ConversionAtGlass(glass, room)))
            : Math.Min(1, resin.Kinetics.GelConversion + PastGel);
    }

    /// <summary>Follows the cure of a part.</summary>
    /// <param name="voxels">The part.</param>
    /// <param name="part">The case.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">A case that is none, or an empty grid.</exception>
    public static PartCureResult Solve(PartVoxels voxels, PartCureCase part, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(voxels);
        ArgumentNullException.ThrowIfNull(part);
        part.Check();
        return new Run(voxels, part, progress).Solve(cancellation);
    }

    /// <summary>Follows the cure of a part at both ends and in the middle of its range; see <see cref="CureBand"/>.</summary>
    /// <param name="voxels">The part.</param>
    /// <param name="part">The nominal case.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    public static PartCureBand Band(PartVoxels voxels, PartCureCase part, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(voxels);
        ArgumentNullException.ThrowIfNull(part);
        part.Check();
        PartVoxels coarse = VoxelMerge.Halve(voxels);
        const double Small = CureBand.SmallChange;
        (double Rate, double Cooling)[] factors = [(CureBand.FastRate, CureBand.BadlyCooled), (1, 1), (CureBand.SlowRate, CureBand.WellCooled), (1, 1 + Small), (1, 1 - Small), (1 + Small, 1), (1 - Small, 1)];
        PartCureResult[] results = new PartCureResult[factors.Length];
        double[] done = new double[3];
        Lock gate = new();
        Parallel.For(0, factors.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            Share? share = progress is not null && i < done.Length ? new(value =>
            {
                lock (gate)
                {
                    done[i] = value;
                    progress.Report((done[0] + done[1] + done[2]) / done.Length);
                }
            }) : null;
            PartCureCase one = part with { RateFactor = part.RateFactor * factors[i].Rate, CoolingFactor = part.CoolingFactor * factors[i].Cooling };
            results[i] = new Run(i < done.Length ? voxels : coarse, one, share).Solve(cancellation);
        });
        double sensitivity = Math.Max(
            Math.Abs(results[3].Resin.Temperature - results[4].Resin.Temperature),
            Math.Abs(results[5].Resin.Temperature - results[6].Resin.Temperature)) / (2 * Small);
        return new(results[2], results[1], results[0], sensitivity, IgnitionShare(voxels, part));
    }

    /// <summary>Shortest time in water after which taking the part out keeps its resin below a limit.</summary>
    /// <param name="voxels">The part.</param>
    /// <param name="part">The case; its bath gives start, temperature and level.</param>
    /// <param name="limit">Highest temperature allowed, K.</param>
    /// <param name="caution">Which end of the range must stay below.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <remarks>By halving, to a sixteenth of an hour, on a grid of half as many cells each way: the answer carries some tenths of an hour beside the range of the resin itself.</remarks>
    public static WaterTime WaterNeeded(PartVoxels voxels, PartCureCase part, double limit, PourCaution caution = PourCaution.High, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(voxels);
        ArgumentNullException.ThrowIfNull(part);
        part.Check();
        Require.Positive(limit);
        if (part.Bath is not { } bath)
            throw new ArgumentException("The case has no bath.", nameof(part));
        PartCureCase end = caution == PourCaution.High
            ? part with { RateFactor = part.RateFactor * CureBand.FastRate, CoolingFactor = part.CoolingFactor * CureBand.BadlyCooled }
            : part;
        PartVoxels coarse = VoxelMerge.Halve(voxels);
        double Peak(double duration) => new Run(coarse, end with
        {
            Bath = bath with { Duration = duration },
            Duration = Math.Max(end.Duration, bath.Start + duration + 12 * 3600),
        }, null).Solve(cancellation).Resin.Temperature;
        double[] ends = new double[2];
        Parallel.For(0, 2, new ParallelOptions { CancellationToken = cancellation }, i => ends[i] = Peak(i * LongestBath));
        double without = ends[0], low = 0, high = LongestBath, peak = ends[1];
        if (without <= limit)
            return new(WaterTimeStatus.NotNeeded, 0, without, without, 0.5);
        if (peak > limit)
            return new(WaterTimeStatus.NotEnough, LongestBath, peak, without, 0.5);
        while (high - low > 225)
        {
            // Two at a time: at a third and at two thirds.
            double step = (high - low) / 3;
            double begin = low;
            Parallel.For(0, 2, new ParallelOptions { CancellationToken = cancellation }, i => ends[i] = Peak(begin + (i + 1) * step));
            if (ends[0] <= limit)
                (high, peak) = (begin + step, ends[0]);
            else if (ends[1] <= limit)
                (low, high, peak) = (begin + step, begin + 2 * step, ends[1]);
            else
                low = begin + 2 * step;
        }

        return new(WaterTimeStatus.Found, high, peak, without, 0.5);
    }

    private static double IgnitionShare(PartVoxels voxels, PartCureCase part)
    {
        double area = voxels.CooledArea.Sum(), mass = voxels.CoreVolume * (1 - part.InfillShare) * part.Resin.Density;
        if (!(area > 0))
            return 0;
        SurfaceCooling air = part.InAir ?? SurfaceCooling.StillAir(Run.Height(new PartCells(voxels, part), voxels));
        double thickness = 2 * voxels.PartVolume / area;
        double resistance = 1 / (part.CoolingFactor * air.At(part.Room + 15, part.Room)) + part.WallThickness / part.Plastic.Conductivity + thickness / 2 / (3 * part.Resin.Conductivity);
        return Ignition.Share(CureRate.Of(part.Resin with { GlassTransition = null }, part.RateFactor), part.Resin.Kinetics.HeatOfReaction * mass * resistance / area, part.Room);
    }

    private sealed class Share(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }

    private sealed class Run
    {
        private readonly PartCureCase _part;
        private readonly PartCells _cells;
        private readonly CureSolver _solver;
        private readonly IProgress<double>? _progress;
        private readonly PassTimes _gel, _handling;
        private readonly PeakTrack _resin = new(), _inside = new(), _outside = new();
        private readonly List<CureMoment> _history = [];
        private readonly double[] _field;
        private int _hottest;
        private double _surroundings, _came;

        public Run(PartVoxels voxels, PartCureCase part, IProgress<double>? progress)
        {
            (_part, _progress) = (part, progress);
            _cells = new(voxels, part);
            double height = Height(_cells, voxels), start = part.Resin.Kinetics.InitialConversion;
            FilmTable air = new(part.InAir ?? SurfaceCooling.StillAir(height), part.Room, part.CoolingFactor);
            FilmTable water = part.Bath is { } bath ? new(part.InWater ?? SurfaceCooling.StillWater(height), bath.Temperature, part.CoolingFactor) : air;
            _solver = new(_cells.Cells, CureRate.Of(part.Resin, part.RateFactor), part.Resin.Kinetics.HeatOfReaction, [air, water], part.Room, start, part.Options);
            _gel = new(_cells.Cells.Count, part.Resin.Kinetics.GelConversion, start);
            _handling = new(_cells.Cells.Count, HandlingConversion(part.Resin, part.Room), start);
            _field = new double[_cells.Cells.Count];
            Array.Fill(_field, part.Room);
            _surroundings = part.Room;
        }

        /// <summary>Height of the part along up, metres.</summary>
        public static double Height(PartCells cells, PartVoxels voxels) =>
            cells.Highest - cells.Lowest + Math.Min(voxels.Cell.X, Math.Min(voxels.Cell.Y, voxels.Cell.Z));

        public PartCureResult Solve(CancellationToken cancellation)
        {
            double before = Heat();
            SortedSet<double> stops = [_part.Duration];
            foreach (CurePour pour in _part.PoursDone.Where(pour => pour.Time < _part.Duration))
                stops.Add(pour.Time);
            if (_part.Bath is { Duration: > 0 } bath)
            {
                stops.Add(Math.Min(_part.Duration, bath.Start));
                stops.Add(Math.Min(_part.Duration, bath.Start + bath.Duration));
            }

            CureStatus status = CureStatus.Done;
            int poured = 0;
            foreach (double stop in stops)
            {
                if (stop > _solver.Time)
                    status = _solver.Advance(stop, Observe, cancellation);
                if (status != CureStatus.Done || stop >= _part.Duration)
                    break;
                for (; poured < _part.PoursDone.Count && _part.PoursDone[poured].Time <= stop; poured++)
                    _came += _cells.Fill(_part.PoursDone[poured], _solver.Temperature);
                bool isIn = _part.Bath is { } water && stop >= water.Start && stop < water.Start + water.Duration;
                _cells.Immerse(isIn ? _part.Bath!.Level : double.NegativeInfinity);
                _surroundings = isIn ? _part.Bath!.Temperature : _part.Room;
                _solver.Restart();
            }

            return Result(status, before);
        }

        private PartCureResult Result(CureStatus status, double before)
        {
            CureCells cells = _cells.Cells;
            double released = 0, mass = 0, gel = 0, handling = 0;
            for (int i = 0; i < cells.Count; i++)
            {
                if (!(cells.ResinMass[i] > 0))
                    continue;
                mass += cells.ResinMass[i];
                released += cells.ResinMass[i] * _part.Resin.Kinetics.HeatOfReaction * (_solver.Conversion[i] - _part.Resin.Kinetics.InitialConversion);
                gel = Math.Max(gel, _gel.Times[i]);
                handling = Math.Max(handling, _handling.Times[i]);
            }

            if (!(mass > 0))
            {
                gel = handling = double.PositiveInfinity;
                status = status == CureStatus.Done ? CureStatus.NothingPoured : status;
            }

            CureMoment end = _history[^1];
            return new()
            {
                Status = status,
                Resin = mass > 0 ? new(_resin.Value, _resin.Time) : new(_part.Room, 0),
                HottestPlace = _cells.Place(_hottest),
                WallInside = new(_inside.Value, _inside.Time),
                WallOutside = new(_outside.Value, _outside.Time),
                MeanConversion = end.MeanConversion,
                LeastConversion = end.LeastConversion,
                GelEverywhere = gel,
                Handling = handling,
                History = _history,
                Cells = _cells.Voxels,
                FieldAtPeak = _field,
                Balance = new(released, Heat() - before - _came, _solver.Lost),
                ResinMass = mass,
                Steps = _solver.Steps,
            };
        }

        private double Heat()
        {
            double heat = 0;
            for (int i = 0; i < _cells.Cells.Count; i++)
                heat += _cells.Cells.Capacity[i] * _solver.Temperature[i];
            return heat;
        }

        private void Observe()
        {
            CureCells cells = _cells.Cells;
            double[] t = _solver.Temperature, a = _solver.Conversion;
            double time = _solver.Time, hot = double.NegativeInfinity, mean = 0, meanA = 0, leastA = 1, mass = 0;
            int hottest = -1;
            for (int i = 0; i < cells.Count; i++)
            {
                double m = cells.ResinMass[i];
                if (!(m > 0))
                    continue;
                if (t[i] > hot)
                    (hot, hottest) = (t[i], i);
                mass += m;
                mean += m * t[i];
                meanA += m * a[i];
                leastA = Math.Min(leastA, a[i]);
            }

            if (hottest < 0)
                (hot, mean, meanA, leastA, mass) = (_part.Room, _part.Room, 0, 0, 1);
            else if (_resin.Take(time, hot, _solver.TemperatureRate[hottest]))
            {
                _hottest = hottest;
                Array.Copy(t, _field, _field.Length);
            }

            double outside = double.NegativeInfinity, inside = double.NegativeInfinity;
            for (int s = 0; s < cells.SurfaceCell.Length; s++)
            {
                double surface = _solver.SurfaceTemperature[s];
                double flux = cells.SurfaceConductance[s] / cells.SurfaceArea[s] * (t[cells.SurfaceCell[s]] - surface);
                outside = Math.Max(outside, surface);
                // The flux that leaves, carried back through the wall; at corners that overshoots, and nothing is hotter than the hottest resin.
                inside = Math.Max(inside, Math.Min(surface + flux * _part.WallThickness / _part.Plastic.Conductivity, Math.Max(hot, surface)));
            }

            if (cells.SurfaceCell.Length == 0)
                inside = outside = hot;
            _inside.Take(time, inside, 0);
            _outside.Take(time, outside, 0);
            _gel.Take(time, a, _solver.ConversionRate);
            _handling.Take(time, a, _solver.ConversionRate);
            _history.Add(new(time, hot, mean / mass, inside, outside, _surroundings, meanA / mass, leastA));
            _progress?.Report(time / _part.Duration);
        }
    }
}
