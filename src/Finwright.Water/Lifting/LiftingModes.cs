namespace Finwright.Water.Lifting;

/// <summary>
/// What the strips carry for each unit of what can be asked of the fin: stream along x, stream along z, turning the section of one strip, bending the flexible
/// strip at one place. Any flow is a sum of these. Per unit speed; row-major over strips, one column a mode.
/// </summary>
internal sealed class LiftingModes
{
    private readonly double[] _vortices;

    public LiftingModes(FinInfluence influence)
    {
        FinLattice lattice = influence.Lattice;
        int strips = lattice.Strips, rows = lattice.Rows, n = lattice.Count;
        Hinges = new double[strips];
        FlexibleStrip? sheet = lattice.Fin.Strip;
        bool bends = false;
        for (int j = 0; j < strips; j++)
        {
            double y = lattice.Span.Middles[j];
            bool has = sheet is not null && y >= sheet.FromDepth && y <= sheet.ToDepth;
            Hinges[j] = has ? 1 - Math.Min(sheet!.FreeLength / lattice.Chords[j], FlexibleStrip.LargestChordShare) : 1;
            bends |= has;
        }

        Count = 2 + strips * (bends ? 2 : 1);
        _vortices = new double[n * Count];
        double[] asked = new double[n * Count];
        for (int i = 0; i < n; i++)
        {
            int strip = i / rows, row = i % rows;
            asked[i * Count] = lattice.SlopeX[i];
            asked[i * Count + 1] = -1;
            asked[i * Count + 2 + strip] = -1;
            if (bends && Hinges[strip] < 1)
                asked[i * Count + 2 + strips + strip] = -BentSheet.Slope(lattice.Chord, row, Hinges[strip]);
        }

        if (!influence.IsSingular)
            influence.Factor.SolveMany(asked, Count, _vortices);
        (Circulation, Suction, Arm, HingeMoment) = (new double[strips * Count], new double[strips * Count], new double[strips * Count], new double[strips * Count]);
        SumStrips(lattice, 0, Count);
    }

    private LiftingModes(LiftingModes straight, FinInfluence influence, FinLattice bent)
    {
        (Count, Hinges, _vortices) = (straight.Count, straight.Hinges, [.. straight._vortices]);
        (Circulation, Suction, Arm, HingeMoment) = ([.. straight.Circulation], [.. straight.Suction], [.. straight.Arm], [.. straight.HingeMoment]);
        double[] along = new double[bent.Count];
        if (!influence.IsSingular)
            influence.Factor.Solve(bent.SlopeX, along);
        for (int i = 0; i < along.Length; i++)
            _vortices[i * Count] = along[i];
        SumStrips(bent, 0, 1);
    }

    /// <summary>The modes of the same fin a little bent: only what the stream along x does to it changes.</summary>
    /// <param name="influence">The equations of the straight fin.</param>
    /// <param name="bent">Its bent lattice.</param>
    public LiftingModes Bent(FinInfluence influence, FinLattice bent) => new(this, influence, bent);

    /// <summary>Number of modes: 2, one per strip, and again one per strip when a sheet bends.</summary>
    public int Count { get; }

    /// <summary>Place of the flexible sheet's held line in each strip, x/c; 1 for none.</summary>
    public double[] Hinges { get; }

    /// <summary>Sum of the vortex strengths, metres.</summary>
    public double[] Circulation { get; }

    /// <summary>A0 of the suction at the nose.</summary>
    public double[] Suction { get; }

    /// <summary>Sum of strength times x, m².</summary>
    public double[] Arm { get; }

    /// <summary>Hinge moment of the sheet per span, over density and speed squared, m².</summary>
    public double[] HingeMoment { get; }

    /// <summary>Strengths of all vortices, per unit speed, of a sum of modes.</summary>
    public void Vortices(ReadOnlySpan<double> weights, Span<double> strengths)
    {
        for (int i = 0; i < strengths.Length; i++)
            strengths[i] = Row(_vortices, i, weights);
    }

    /// <summary>One strip's value of a sum of modes.</summary>
    public double Row(double[] table, int row, ReadOnlySpan<double> weights)
    {
        ReadOnlySpan<double> values = table.AsSpan(row * Count, Count);
        double sum = 0;
        for (int m = 0; m < values.Length; m++)
            sum += values[m] * weights[m];
        return sum;
    }

    private void SumStrips(FinLattice lattice, int from, int to)
    {
        int rows = lattice.Rows;
        for (int j = 0; j < lattice.Strips; j++)
        {
            double[]? hinge = Hinges[j] < 1 ? lattice.Chord.HingeWeights(Hinges[j]) : null;
            for (int m = from; m < to; m++)
            {
                int at = j * Count + m;
                (Circulation[at], Suction[at], Arm[at], HingeMoment[at]) = (0, 0, 0, 0);
                for (int k = 0; k < rows; k++)
                {
                    double strength = _vortices[(j * rows + k) * Count + m];
                    Circulation[at] += strength;
                    Arm[at] += strength * lattice.VortexMiddle(j, k).X;
                    Suction[at] += strength * lattice.Chord.SuctionWeights[k] / lattice.Chords[j];
                    if (hinge is not null)
                        HingeMoment[at] += strength * hinge[k] * lattice.Chords[j];
                }
            }
        }
    }
}
