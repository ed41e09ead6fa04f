namespace Finwright.Strength.Plates;

/// <summary>Nine-node quadrilaterals on the planform: rows along the chord at fixed depths, so that a place is found without iteration.</summary>
/// <remarks>
/// Nodes are numbered along the chord first, so that the matrices have a narrow band. Middle nodes stand halfway in share of chord and in depth: y is linear across an element and x is linear along its chord.
/// Edges are parabolas through the true outline at three depths an element. Where the chord falls below a share of the largest the mesh ends; a load beyond acts on the end with its moment.
/// </remarks>
internal sealed class PlateMesh
{
    // The chord of a last pointed row must not pass through nothing between its nodes: parabola through both ends that never falls below the smaller.
    private const double MonotoneShare = 0.25;

    // Chord at the end of the mesh over the mean chord, below which the tip counts as round or pointed and the rows narrow toward it.
    private const double PointedTip = 0.3;

    // How much of the narrowing is applied there.
    private const double TipGrading = 0.7;

    // A row is not moved where it would leave one narrower than this share of an even one.
    private const double SliverShare = 0.1;

    private const int TipSamples = 400;
    private const int Halvings = 60;

    private readonly double[] _shares;
    private readonly double[] _depths;
    private readonly double[] _leading;
    private readonly double[] _trailing;

    public PlateMesh(PlateFin fin, PlateOptions options)
    {
        (ChordElements, SpanElements) = (options.ChordElements, options.SpanElements);
        (Columns, Rows) = (2 * ChordElements + 1, 2 * SpanElements + 1);
        (_shares, _depths, _leading, _trailing) = (new double[Columns], new double[Rows], new double[Rows], new double[Rows]);
        for (int i = 0; i <= ChordElements; i++)
        {
            double t = (double)i / ChordElements;
            _shares[2 * i] = (1 - options.NoseGrading) * t + options.NoseGrading * (1 - Math.Cos(Math.PI * t / 2));
        }

        End = MeshEnd(fin, options.LeastChordShare, out double meanChord);
        double grading = Chord(fin, End) < PointedTip * meanChord ? TipGrading : 0;
        for (int j = 0; j <= SpanElements; j++)
        {
            double t = (double)j / SpanElements;
            _depths[2 * j] = End * ((1 - grading) * t + grading * Math.Sin(Math.PI * t / 2));
        }

        _depths[^1] = End;
        MeetBreaks(fin);
        FillMiddles(_shares);
        FillMiddles(_depths);
        for (int j = 0; j < Rows; j++)
        {
            (_leading[j], _trailing[j]) = (fin.LeadingEdge(_depths[j]), fin.TrailingEdge(_depths[j]));
            if (!(_trailing[j] > _leading[j]) || !double.IsFinite(_trailing[j] - _leading[j]))
                throw new ArgumentException($"At depth {_depths[j]} the leading edge is at {_leading[j]} and the trailing edge at {_trailing[j]}.", nameof(fin));
        }

        KeepOpen();
        X = new double[Columns * Rows];
        for (int j = 0; j < Rows; j++)
        {
            for (int i = 0; i < Columns; i++)
                X[j * Columns + i] = _leading[j] + _shares[i] * (_trailing[j] - _leading[j]);
        }
    }

    public int ChordElements { get; }

    public int SpanElements { get; }

    /// <summary>Nodes along the chord.</summary>
    public int Columns { get; }

    /// <summary>Nodes along the span.</summary>
    public int Rows { get; }

    public int Nodes => Columns * Rows;

    /// <summary>Depth where the mesh ends.</summary>
    public double End { get; }

    /// <summary>x of each node.</summary>
    public double[] X { get; }

    /// <summary>y of a node.</summary>
    public double Y(int node) => _depths[node / Columns];

    /// <summary>Node k of an element, k = 3 × row + column.</summary>
    public int Node(int element, int k)
    {
        int row = element / ChordElements, column = element % ChordElements;
        return (2 * row + k / 3) * Columns + 2 * column + k % 3;
    }

    /// <summary>The place on the mesh that belongs to a point: itself, or moved along the span to the end and then along the chord to the edge.</summary>
    public MeshPlace Find(double x, double y)
    {
        double depth = Math.Clamp(y, 0, End);
        int row = Interval(_depths, depth);
        double eta = Local(_depths, row, depth);
        (double a, double b, double c) = (eta * (eta - 1) / 2, 1 - eta * eta, eta * (eta + 1) / 2);
        double leading = a * _leading[2 * row] + b * _leading[2 * row + 1] + c * _leading[2 * row + 2];
        double chord = a * _trailing[2 * row] + b * _trailing[2 * row + 1] + c * _trailing[2 * row + 2] - leading;
        double asked = (x - leading) / chord, share = Math.Clamp(asked, 0, 1);
        int column = Interval(_shares, share);
        return new(row * ChordElements + column, Local(_shares, column, share), eta, (asked - share) * chord, y - depth);
    }

    private static double Chord(PlateFin fin, double y) => fin.TrailingEdge(y) - fin.LeadingEdge(y);

    private static double MeshEnd(PlateFin fin, double share, out double meanChord)
    {
        double largest = 0, sum = 0;
        for (int i = 0; i <= TipSamples; i++)
        {
            double chord = Chord(fin, fin.Span * i / TipSamples);
            largest = Math.Max(largest, chord);
            sum += chord;
        }

        meanChord = sum / (TipSamples + 1);
        double least = share * largest;
        if (Chord(fin, fin.Span) >= least)
            return fin.Span;
        int last = TipSamples - 1;
        while (last > 0 && Chord(fin, fin.Span * last / TipSamples) < least)
            last--;
        (double low, double high) = (fin.Span * last / TipSamples, fin.Span * (last + 1) / TipSamples);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Chord(fin, middle) >= least ? (middle, high) : (low, middle);
        }

        return low;
    }

    // A row begins where a rod ends or a square hole begins: an element across such a place would spread the stiffness beyond it.
    private void MeetBreaks(PlateFin fin)
    {
        List<double> breaks = [];
        foreach (PlateRod rod in fin.Rods)
            breaks.AddRange([rod.FromY, rod.ToY]);
        foreach (PlateVoid hole in fin.Voids)
        {
            if (!hole.IsRound)
                breaks.AddRange([hole.Y - hole.HalfWidthY, hole.Y + hole.HalfWidthY]);
        }

        bool[] taken = new bool[SpanElements + 1];
        double least = SliverShare * End / SpanElements;
        taken[0] = taken[^1] = true;
        foreach (double depth in breaks)
        {
            if (!(depth > 0 && depth < End))
                continue;
            int row = Interval(_depths, depth);
            if (depth - _depths[2 * row] > _depths[2 * row + 2] - depth)
                row++;
            if (taken[row] || depth - _depths[2 * row - 2] < least || _depths[2 * row + 2] - depth < least)
                continue;
            _depths[2 * row] = depth;
            taken[row] = true;
        }
    }

    private static void FillMiddles(double[] values)
    {
        for (int i = 1; i < values.Length; i += 2)
            values[i] = (values[i - 1] + values[i + 1]) / 2;
    }

    private static int Interval(double[] bounds, double value)
    {
        int low = 0, high = (bounds.Length - 1) / 2;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = value < bounds[2 * middle] ? (low, middle) : (middle, high);
        }

        return low;
    }

    private static double Local(double[] bounds, int interval, double value) =>
        (value - bounds[2 * interval + 1]) / (bounds[2 * interval + 2] - bounds[2 * interval + 1]);

    private void KeepOpen()
    {
        for (int j = 1; j < Rows; j += 2)
        {
            double before = _trailing[j - 1] - _leading[j - 1], after = _trailing[j + 1] - _leading[j + 1], chord = _trailing[j] - _leading[j];
            double least = Math.Min(before, after) + MonotoneShare * Math.Abs(before - after);
            if (chord >= least)
                continue;
            double middle = (_trailing[j] + _leading[j]) / 2;
            (_leading[j], _trailing[j]) = (middle - least / 2, middle + least / 2);
        }
    }
}

/// <summary>A place on the mesh.</summary>
/// <param name="Element">Element.</param>
/// <param name="Xi">Along the chord, −1 to 1.</param>
/// <param name="Eta">Along the span, −1 to 1.</param>
/// <param name="OffsetX">From the place to the point asked for, metres.</param>
/// <param name="OffsetY">The same along the span, metres.</param>
internal readonly record struct MeshPlace(int Element, double Xi, double Eta, double OffsetX, double OffsetY)
{
    public bool IsInside => OffsetX is 0 && OffsetY is 0;
}
