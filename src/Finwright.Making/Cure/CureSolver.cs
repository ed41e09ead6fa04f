namespace Finwright.Making.Cure;

/// <summary>Conduction with a reaction in every cell, in time: one solver for slabs and parts.</summary>
/// <remarks>
/// <para>Time: the four-stage Rosenbrock method RODAS3, order 3 with order 2 inside, stiffly accurate and L-stable, so that cells cut small by the part's surface do not ring
/// (A. Sandu, J. G. Verwer, J. G. Blom, E. J. Spee, G. R. Carmichael and F. A. Potra, "Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers", Atmospheric
/// Environment 31 (1997) 3459; coefficients from memory, held by a test of the order). Conversion and temperature are solved together: within a stage the conversion of a cell follows
/// from its own temperature, which leaves one symmetric system in the temperatures.</para>
/// <para>That system is solved by <see cref="CellSystem"/>. Splitting by directions was left: cells cut small by the surface lag behind in it.</para>
/// <para>The heat that leaves is one more unknown of the same method, so that released = stored + lost holds to the tolerance of the linear solver.</para>
/// </remarks>
internal sealed class CureSolver
{
    private const int Stages = 4;

    // Conjugate gradients end when the root mean square error of a stage, in the system's own norm, is below this share of the step's tolerance.
    private const double LinearShare = 0.02;
    private const double MostForLinear = 0.02; // K: a wide tolerance in time is no leave to solve badly.
    private const double ShortestStep = 1e-6;

    // Most of a cure is quiet: without a share of the time, half of its steps would go where nothing happens any more.
    private const double UsualLongest = 900, ShareOfTime = 0.05;

    // RODAS3 in the form without matrix products.
    private const double Gamma = 0.5;
    private static readonly double[] C = [4, 1, -1, 1, -1, -8.0 / 3];

    private readonly CureCells _cells;
    private readonly CellSystem _system;
    private readonly CureRate _rate;
    private readonly double _heat;
    private readonly FilmTable[] _films;
    private readonly CureOptions _options;
    private readonly int _n;
    private readonly double[][] _stageT = new double[Stages][], _stageA = new double[Stages][];
    private readonly double[] _heatFlow, _rateNow, _byT, _under, _factor, _right, _stateT, _stateA, _surfaceSlope, _ownDiagonal;
    private readonly double[] _stageLost = new double[Stages];
    private double _step, _lastStep, _capacity;

    public CureSolver(CureCells cells, CureRate rate, double heat, FilmTable[] films, double temperature, double conversion, CureOptions options)
    {
        (_cells, _rate, _heat, _films, _options, _n) = (cells, rate, heat, films, options, cells.Count);
        for (int i = 0; i < Stages; i++)
            (_stageT[i], _stageA[i]) = (new double[_n + 1], new double[_n]);
        // One longer: what is no neighbour reads and writes there, with a conductance of zero.
        (_heatFlow, _stateT, _ownDiagonal) = (new double[_n + 1], new double[_n + 1], new double[_n + 1]);
        (_rateNow, _byT, _under, _factor, _right, _stateA) = (new double[_n], new double[_n], new double[_n], new double[_n], new double[_n], new double[_n]);
        _system = new(cells);
        Temperature = new double[_n + 1];
        Conversion = new double[_n];
        TemperatureRate = new double[_n];
        ConversionRate = new double[_n];
        SurfaceTemperature = new double[cells.SurfaceCell.Length];
        _surfaceSlope = new double[cells.SurfaceCell.Length];
        Array.Fill(Temperature, temperature, 0, _n);
        Array.Fill(Conversion, conversion);
        Array.Fill(SurfaceTemperature, temperature);
    }

    /// <summary>Time, s.</summary>
    public double Time { get; private set; }

    /// <summary>Temperature of each cell, K; one longer than the cells.</summary>
    public double[] Temperature { get; }

    /// <summary>Conversion of each cell's resin.</summary>
    public double[] Conversion { get; }

    /// <summary>Change of each cell's temperature, K/s.</summary>
    public double[] TemperatureRate { get; }

    /// <summary>Change of each cell's conversion, 1/s.</summary>
    public double[] ConversionRate { get; }

    /// <summary>Temperature of each surface, K.</summary>
    public double[] SurfaceTemperature { get; }

    /// <summary>Heat that has left, J.</summary>
    public double Lost { get; private set; }

    /// <summary>Steps taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Steps taken back.</summary>
    public int Rejected { get; private set; }

    /// <summary>Begins afresh after cells, films or state were changed from outside.</summary>
    public void Restart()
    {
        _step = _lastStep = 0;
        foreach (double[] stage in _stageT)
            Array.Clear(stage);
    }

    /// <summary>Goes on to a time.</summary>
    /// <param name="until">s.</param>
    /// <param name="observe">Called with the state and its rates at the beginning of each step and at the end.</param>
    /// <param name="cancellation">Stops it between steps.</param>
    public CureStatus Advance(double until, Action observe, CancellationToken cancellation)
    {
        if (_step <= 0)
            _step = 1;
        _capacity = 0;
        for (int i = 0; i < _n; i++)
            _capacity += _cells.Capacity[i];
        SetOwnDiagonal();
        Begin();
        observe();
        while (Time < until)
        {
            cancellation.ThrowIfCancellationRequested();
            double wanted = Math.Min(_step, _options.LongestStep ?? Math.Max(UsualLongest, ShareOfTime * Time)), left = until - Time, step = wanted >= left ? left : wanted > left / 2 ? left / 2 : wanted;
            bool isSolved = Step(step, out double error);
            if (!isSolved || !(error <= 1))
            {
                Rejected++;
                _step = isSolved && double.IsFinite(error) ? step * Math.Clamp(0.9 / Math.Cbrt(error), 0.2, 0.8) : step / 4;
                if (_step < ShortestStep)
                    return CureStatus.StepTooShort;
                // Surfaces and rates at the old state again.
                Begin();
                continue;
            }

            Time = step >= left ? until : Time + step;
            Steps++;
            // A step cut short by the end of the stretch says little about the next one.
            double next = step * Math.Clamp(0.9 / Math.Cbrt(Math.Max(error, 1e-9)), 0.3, 4);
            _step = step < wanted ? Math.Max(next, wanted) : next;
            Begin();
            observe();
        }

        return CureStatus.Done;
    }

    /// <summary>Rates, derivatives and surfaces at the present state.</summary>
    private void Begin()
    {
        Conduct(Temperature, out _);
        _rate.At(Temperature.AsSpan(0, _n), Conversion, _rateNow, _byT, _under);
        for (int i = 0; i < _n; i++)
        {
            double mass = _cells.ResinMass[i];
            if (mass > 0)
                _heatFlow[i] += mass * _heat * _rateNow[i];
            else
                (_rateNow[i], _byT[i], _under[i]) = (0, 0, 0);
            ConversionRate[i] = _rateNow[i];
            TemperatureRate[i] = _heatFlow[i] / _cells.Capacity[i];
        }
    }

    private bool Step(double step, out double error)
    {
        error = double.PositiveInfinity;
        double scale = 1 / (Gamma * step);
        if (!Factor(scale))
            return false;
        double goal = LinearShare * Math.Min(_options.TemperatureTolerance, MostForLinear);
        goal *= goal * _capacity * scale;
        // First stage at the present state, whose flows Begin has left; the loss at it from the surfaces.
        double lostAt = Loss();
        for (int stage = 0; stage < Stages; stage++)
        {
            if (stage >= 2)
            {
                // Third stage at y + 2 k1, fourth at y + 2 k1 + k3; the second stands at the first's state.
                for (int i = 0; i < _n; i++)
                {
                    _stateT[i] = Temperature[i] + 2 * _stageT[0][i] + (stage == 3 ? _stageT[2][i] : 0);
                    _stateA[i] = Conversion[i] + 2 * _stageA[0][i] + (stage == 3 ? _stageA[2][i] : 0);
                }

                Conduct(_stateT, out lostAt);
                _rate.At(_stateT.AsSpan(0, _n), _stateA, _rateNow);
                for (int i = 0; i < _n; i++)
                {
                    double mass = _cells.ResinMass[i];
                    if (mass > 0)
                        _heatFlow[i] += mass * _heat * _rateNow[i];
                    else
                        _rateNow[i] = 0;
                }
            }

            if (!SolveStage(stage, step, scale, goal, lostAt))
                return false;
        }

        error = 0;
        double overT = 1 / _options.TemperatureTolerance, overA = 1 / _options.ConversionTolerance;
        bool isFinite = true;
        for (int i = 0; i < _n; i++)
        {
            double t = Math.Abs(_stageT[3][i]) * overT, a = Math.Abs(_stageA[3][i]) * overA;
            isFinite &= double.IsFinite(t) && double.IsFinite(a);
            error = Math.Max(error, Math.Max(t, a));
        }

        if (!isFinite)
            return false;
        if (error > 1)
            return true;
        for (int i = 0; i < _n; i++)
        {
            Temperature[i] += 2 * _stageT[0][i] + _stageT[2][i] + _stageT[3][i];
            Conversion[i] = Math.Min(1, Conversion[i] + 2 * _stageA[0][i] + _stageA[2][i] + _stageA[3][i]);
        }

        Lost += 2 * _stageLost[0] + _stageLost[2] + _stageLost[3];
        _lastStep = step;
        return true;
    }

    /// <summary>Matrix of the stages and its incomplete factor; false when the step is too long for the reaction.</summary>
    private bool Factor(double scale)
    {
        for (int i = 0; i < _n; i++)
        {
            double under = scale - _under[i];
            // Autocatalysis that would more than double within the step.
            if (under < 0.5 * scale)
                return false;
            double share = _byT[i] * scale / under;
            _factor[i] = 1 / under;
            _system.Diagonal[i] = _cells.Capacity[i] * scale + _ownDiagonal[i] - _cells.ResinMass[i] * _heat * share;
        }

        for (int s = 0; s < _surfaceSlope.Length; s++)
            _system.Diagonal[_cells.SurfaceCell[s]] += _surfaceSlope[s];
        return _system.Factor();
    }

    private bool SolveStage(int stage, double step, double scale, double goal, double lostAt)
    {
        double[] kt = _stageT[stage], ka = _stageA[stage];
        int row = stage * (stage - 1) / 2;
        double c0 = stage > 0 ? C[row] / step : 0, c1 = stage > 1 ? C[row + 1] / step : 0, c2 = stage > 2 ? C[row + 2] / step : 0;
        double[] t0 = _stageT[0], t1 = _stageT[1], t2 = _stageT[2], a0 = _stageA[0], a1 = _stageA[1], a2 = _stageA[2];
        for (int i = 0; i < _n; i++)
        {
            double mass = _cells.ResinMass[i], sumA = _rateNow[i], sumT = 0;
            if (stage > 0)
            {
                sumA += c0 * a0[i];
                sumT += c0 * t0[i];
            }

            if (stage > 1)
            {
                sumA += c1 * a1[i];
                sumT += c1 * t1[i];
            }

            if (stage > 2)
            {
                sumA += c2 * a2[i];
                sumT += c2 * t2[i];
            }

            // The conversion's right side waits in its own stage until the temperature is known.
            ka[i] = sumA;
            _right[i] = _heatFlow[i] + _cells.Capacity[i] * sumT + mass * _heat * _under[i] * sumA * _factor[i];
        }

        // The last step's stage, in proportion to the step, is where the search begins.
        double ratio = _lastStep > 0 ? step / _lastStep : 0;
        for (int i = 0; i < _n; i++)
            kt[i] *= ratio;
        if (!_system.Solve(kt, _right, goal))
            return false;
        for (int i = 0; i < _n; i++)
            ka[i] = _cells.ResinMass[i] > 0 ? (ka[i] + _byT[i] * kt[i]) * _factor[i] : 0;
        double lost = lostAt + c0 * _stageLost[0] + c1 * _stageLost[1] + c2 * _stageLost[2];
        for (int s = 0; s < _surfaceSlope.Length; s++)
            lost += _surfaceSlope[s] * kt[_cells.SurfaceCell[s]];
        _stageLost[stage] = lost / scale;
        return true;
    }

    private void SetOwnDiagonal()
    {
        Array.Clear(_ownDiagonal);
        for (int i = 0; i < _n; i++)
        {
            ref readonly CellLinks own = ref _cells.Links[i];
            _ownDiagonal[i] += own.GX + own.GY + own.GZ;
            _ownDiagonal[own.X] += own.GX;
            _ownDiagonal[own.Y] += own.GY;
            _ownDiagonal[own.Z] += own.GZ;
        }
    }

    /// <summary>Heat that flows into each cell, W, at a state; surfaces found on the way.</summary>
    private void Conduct(double[] t, out double lost)
    {
        double[] flow = _heatFlow;
        Array.Clear(flow);
        t[_n] = 0;
        for (int i = 0; i < _n; i++)
        {
            ref readonly CellLinks own = ref _cells.Links[i];
            double ti = t[i], x = own.GX * (t[own.X] - ti), y = own.GY * (t[own.Y] - ti), z = own.GZ * (t[own.Z] - ti);
            flow[i] += x + y + z;
            flow[own.X] -= x;
            flow[own.Y] -= y;
            flow[own.Z] -= z;
        }

        lost = 0;
        bool isPresent = ReferenceEquals(t, Temperature);
        for (int s = 0; s < SurfaceTemperature.Length; s++)
        {
            int cell = _cells.SurfaceCell[s];
            double conductance = _cells.SurfaceConductance[s];
            double surface = _films[_cells.SurfaceFilm[s]].Surface(t[cell], conductance, _cells.SurfaceArea[s], SurfaceTemperature[s], out double slope);
            double q = conductance * (t[cell] - surface);
            flow[cell] -= q;
            lost += q;
            // Stages begin their search from the present surface; slopes belong to the present state.
            if (isPresent)
                (SurfaceTemperature[s], _surfaceSlope[s]) = (surface, slope);
        }
    }

    private double Loss()
    {
        double lost = 0;
        for (int s = 0; s < SurfaceTemperature.Length; s++)
            lost += _cells.SurfaceConductance[s] * (Temperature[_cells.SurfaceCell[s]] - SurfaceTemperature[s]);
        return lost;
    }
}
