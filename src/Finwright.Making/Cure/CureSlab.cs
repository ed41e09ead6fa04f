namespace Finwright.Making.Cure;

/// <summary>Cure of a slab: one dimension, half of it, walls and resin in cells of their own.</summary>
/// <remarks>
/// Finite volumes; between two cells the conductances of both halves in series. Limits: as wide as it is thick four times or more, or it is cooler than told; material properties do not
/// change with temperature or conversion; resin does not flow.
/// </remarks>
public static class CureSlab
{
    /// <summary>Follows the cure of a slab.</summary>
    /// <param name="slab">The case.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">A case that is none.</exception>
    public static SlabCure Solve(SlabCase slab, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(slab);
        slab.Check();
        return new Run(slab).Solve(cancellation);
    }

    private sealed class Run
    {
        private readonly SlabCase _slab;
        private readonly int _resin;
        private readonly double _wallToMiddle, _toInnerFace;
        private readonly CureSolver _solver;
        private readonly CureCells _cells;
        private readonly PassTimes _gel;
        private readonly PeakTrack _centre = new(), _inside = new(), _outside = new();
        private readonly List<CureMoment> _history = [];
        private double _conversionAtPeak;

        public Run(SlabCase slab)
        {
            _slab = slab;
            _resin = slab.Cells;
            int wall = slab.WallThickness > 0 ? Math.Max(4, slab.Cells / 5) : 0, count = _resin + wall;
            double core = slab.Thickness / 2 / _resin, skin = wall > 0 ? slab.WallThickness / wall : 0, f = slab.InfillShare;
            double coreConductivity = PlasticHeat.Mixed(slab.Plastic.Conductivity, slab.Resin.Conductivity, f), skinConductivity = slab.Plastic.Conductivity;
            double plastic = slab.Plastic.Density * slab.Plastic.HeatCapacity, coreCapacity = f * plastic + (1 - f) * slab.Resin.Density * slab.Resin.HeatCapacity;
            _cells = new(count, 1);
            double[] widths = new double[count];
            for (int i = 0; i < count; i++)
            {
                bool isCore = i < _resin;
                widths[i] = isCore ? core : skin;
                _cells.Capacity[i] = widths[i] * (isCore ? coreCapacity : plastic);
                _cells.ResinMass[i] = isCore ? core * (1 - f) * slab.Resin.Density : 0;
                if (i == 0)
                    continue;
                double link = 1 / (widths[i - 1] / 2 / (i - 1 < _resin ? coreConductivity : skinConductivity) + widths[i] / 2 / (isCore ? coreConductivity : skinConductivity));
                _cells.Links[i] = CellLinks.None(count) with { X = i - 1, GX = link };
            }

            _cells.SurfaceCell[0] = count - 1;
            _cells.SurfaceArea[0] = 1;
            _cells.SurfaceConductance[0] = 2 * (wall > 0 ? skinConductivity : coreConductivity) / widths[^1];
            _toInnerFace = core / 2 / coreConductivity;
            _wallToMiddle = wall > 0 ? skin / 2 / skinConductivity : 1;
            _solver = new(_cells, CureRate.Of(slab.Resin, slab.RateFactor), slab.Resin.Kinetics.HeatOfReaction, [new(slab.Cooling, slab.Surroundings, slab.CoolingFactor)], slab.StartTemperature, slab.Resin.Kinetics.InitialConversion, slab.Options);
            _gel = new(_resin, slab.Resin.Kinetics.GelConversion, slab.Resin.Kinetics.InitialConversion);
        }

        public SlabCure Solve(CancellationToken cancellation)
        {
            CureStatus status = _solver.Advance(_slab.Duration, Observe, cancellation);
            double released = 0, stored = 0, start = _slab.Resin.Kinetics.InitialConversion;
            for (int i = 0; i < _cells.Count; i++)
            {
                released += _cells.ResinMass[i] * _slab.Resin.Kinetics.HeatOfReaction * (_solver.Conversion[i] - start);
                stored += _cells.Capacity[i] * (_solver.Temperature[i] - _slab.StartTemperature);
            }

            return new()
            {
                Status = status,
                Centre = new(_centre.Value, _centre.Time),
                ConversionAtPeak = _conversionAtPeak,
                WallInside = new(_inside.Value, _inside.Time),
                WallOutside = new(_outside.Value, _outside.Time),
                GelAtCentre = _gel.Times[0],
                GelEverywhere = _gel.Times.Max(),
                MeanConversion = _history[^1].MeanConversion,
                LeastConversion = _history[^1].LeastConversion,
                History = _history,
                Balance = new(released, stored, _solver.Lost),
                Steps = _solver.Steps,
            };
        }

        private void Observe()
        {
            double[] t = _solver.Temperature, rate = _solver.TemperatureRate, a = _solver.Conversion;
            double time = _solver.Time;
            // The middle lies half a cell before the first: an even parabola through the first two.
            double middle = (9 * t[0] - t[1]) / 8, middleRate = (9 * rate[0] - rate[1]) / 8;
            if (_centre.Take(time, middle, middleRate))
                _conversionAtPeak = _centre.Time < time ? a[0] - (time - _centre.Time) * _solver.ConversionRate[0] : a[0];
            double outside = _solver.SurfaceTemperature[0];
            double inside = _resin < _cells.Count ? (t[_resin - 1] * _wallToMiddle + t[_resin] * _toInnerFace) / (_wallToMiddle + _toInnerFace) : outside;
            // Slopes of the faces are not followed: their peaks are flat, and steps are short where anything is hot.
            _inside.Take(time, inside, 0);
            _outside.Take(time, outside, 0);
            _gel.Take(time, a, _solver.ConversionRate);
            double mean = 0, meanA = 0, leastA = 1;
            for (int i = 0; i < _resin; i++)
            {
                mean += t[i];
                meanA += a[i];
                leastA = Math.Min(leastA, a[i]);
            }

            _history.Add(new(time, middle, mean / _resin, inside, outside, _slab.Surroundings, meanA / _resin, leastA));
        }
    }
}
