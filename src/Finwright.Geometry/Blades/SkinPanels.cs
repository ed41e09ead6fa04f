namespace Finwright.Geometry.Blades;

/// <summary>
/// The flat facets over one run of skin: which diagonal each quadrilateral takes, and how far each of its corners must be moved out along
/// the normal so that facets and skin enclose the same volume.
/// </summary>
/// <remarks>
/// Facets with corners on a convex skin lie inside it everywhere. Moved out by the mean gap, they cross it, the volume's error falls
/// from second to fourth order in the facets' size, and the greatest distance falls by a third. The mean gap over a facet grid is two thirds of the
/// gaps at the middles of its sides (parabolas), less a twelfth of the mixed difference for the diagonal. Our own construction; no source.
/// </remarks>
internal sealed class SkinPanels
{
    private readonly SkinRows _skin;
    private readonly double[] _push, _weight, _edgePush, _rowStrays, _columnStrays;
    private readonly bool[] _falling;

    /// <summary>Weighs the facets over a grid of skin whose odd rows and places are the middles.</summary>
    public SkinPanels(SkinRows skin)
    {
        _skin = skin;
        (Rows, Columns) = ((skin.RowCount + 1) / 2, (skin.Count + 1) / 2);
        _push = new double[Rows * Columns];
        _weight = new double[Rows * Columns];
        _falling = new bool[(Rows - 1) * (Columns - 1)];
        _edgePush = new double[2 * Rows];
        (_rowStrays, _columnStrays) = (new double[Rows - 1], new double[Columns - 1]);
        for (int r = 0; r + 1 < Rows; r++)
            for (int j = 0; j + 1 < Columns; j++)
                Weigh(r, j);
        for (int i = 0; i < _push.Length; i++)
            if (_weight[i] > 0)
                _push[i] /= _weight[i];
        for (int r = 0; r < Rows; r++)
            (_edgePush[2 * r], _edgePush[2 * r + 1]) = (EdgeGap(r, 0), EdgeGap(r, skin.Count - 1));
        Measure();
    }

    /// <summary>Rows of corners.</summary>
    public int Rows { get; }

    /// <summary>Corners in a row.</summary>
    public int Columns { get; }

    /// <summary>Position of a corner on the true skin.</summary>
    public Point3 At(int row, int column) => _skin.At(2 * row, 2 * column);

    /// <summary>Outward normal there.</summary>
    public Point3 Normal(int row, int column) => _skin.Normal(2 * row, 2 * column);

    /// <summary>How far the corner is moved along the normal, metres.</summary>
    public double Push(int row, int column) => _push[row * Columns + column];

    /// <summary>Area of the facets round a corner, m².</summary>
    public double Area(int row, int column) => _weight[row * Columns + column];

    /// <summary>Area of the trailing edge's face beside a row, m².</summary>
    public double EdgeArea(int row)
    {
        int from = Math.Max(row - 1, 0), to = Math.Min(row + 1, Rows - 1);
        return (At(to, 0) - At(from, 0)).Length * (At(row, Columns - 1) - At(row, 0)).Length;
    }

    /// <summary>How far the trailing edge's face is moved out at its starboard (first) or port (last) corner, metres.</summary>
    public double EdgePush(int row, bool starboard) => _edgePush[2 * row + (starboard ? 0 : 1)];

    /// <summary>Whether the quadrilateral is split from this corner to the one across; else between its two neighbours.</summary>
    public bool SplitsFromCorner(int row, int column) => _falling[row * (Columns - 1) + column];

    /// <summary>Greatest distance between skin and moved facets in each gap between rows that is cured by halving it, metres.</summary>
    public ReadOnlySpan<double> RowStrays => _rowStrays;

    /// <summary>Likewise in each gap between places.</summary>
    public ReadOnlySpan<double> ColumnStrays => _columnStrays;

    /// <summary>Greatest distance between skin and moved facets at corners, middles of sides and diagonals, metres.</summary>
    public double WorstStray()
    {
        double worst = 0;
        foreach (double stray in _rowStrays)
            worst = Math.Max(worst, stray);
        foreach (double stray in _columnStrays)
            worst = Math.Max(worst, stray);
        return worst;
    }

    private void Measure()
    {
        for (int r = 0; r < Rows; r++)
            for (int j = 0; j < Columns; j++)
            {
                double push = Push(r, j);
                if (j + 1 < Columns)
                    Note(ref _columnStrays[j], SideGap(r, j) - (push + Push(r, j + 1)) / 2);
                if (r + 1 < Rows)
                    Note(ref _rowStrays[r], RowGap(r, j) - (push + Push(r + 1, j)) / 2);
                Blame(r, Math.Min(r, Rows - 2), j, Math.Min(j, Columns - 2), push);
                if (j + 1 < Columns && r + 1 < Rows)
                    Blame(r, r, j, j, SplitsFromCorner(r, j)
                        ? FallingGap(r, j) - (push + Push(r + 1, j + 1)) / 2
                        : RisingGap(r, j) - (Push(r, j + 1) + Push(r + 1, j)) / 2);
            }

        for (int r = 0; r + 1 < Rows; r++)
            Note(ref _rowStrays[r], EdgeFaceGap(r) - (EdgePush(r, starboard: false) + EdgePush(r + 1, starboard: true)) / 2);
    }

    private static void Note(ref double worst, double stray) => worst = Math.Max(worst, Math.Abs(stray));

    /// <summary>Puts a stray down to the gap over which the skin curves more.</summary>
    private void Blame(int row, int rowGap, int column, int columnGap, double stray)
    {
        if (Math.Abs(RowGap(rowGap, column)) > Math.Abs(SideGap(row, columnGap)))
            Note(ref _rowStrays[rowGap], stray);
        else
            Note(ref _columnStrays[columnGap], stray);
    }

    private void Weigh(int r, int j)
    {
        int row = 2 * r, place = 2 * j;
        Point3 a = _skin.At(row, place), b = _skin.At(row, place + 2), c = _skin.At(row + 2, place + 2), d = _skin.At(row + 2, place);
        double area = (c - a).Cross(d - b).Length / 2;
        Point3 normal = _skin.Normal(row + 1, place + 1);
        double sides = Gap(row, place + 1, row, place, row, place + 2) + Gap(row + 2, place + 1, row + 2, place, row + 2, place + 2)
            + (Gap(row + 1, place, row, place, row + 2, place) + Gap(row + 1, place + 2, row, place + 2, row + 2, place + 2));
        double mixed = normal.Dot(a + c - (b + d));
        double falling = Math.Abs(FallingGap(r, j)), rising = Math.Abs(RisingGap(r, j));
        // On a tie the two sides of a symmetric blade still choose mirrored diagonals.
        bool fromCorner = j < Columns / 2 ? falling <= rising : falling < rising;
        _falling[r * (Columns - 1) + j] = fromCorner;
        double mean = sides / 3 + (fromCorner ? -mixed : mixed) / 12;
        foreach (int corner in (ReadOnlySpan<int>)[r * Columns + j, r * Columns + j + 1, (r + 1) * Columns + j, (r + 1) * Columns + j + 1])
        {
            _push[corner] += area * mean;
            _weight[corner] += area;
        }
    }

    private double SideGap(int r, int j) => Gap(2 * r, 2 * j + 1, 2 * r, 2 * j, 2 * r, 2 * j + 2);

    private double RowGap(int r, int j) => Gap(2 * r + 1, 2 * j, 2 * r, 2 * j, 2 * r + 2, 2 * j);

    /// <summary>How far the middle of the trailing edge's face, straight from side to side, stands out over the diagonal of its facets.</summary>
    private double EdgeFaceGap(int r)
    {
        int end = _skin.Count - 1, middle = 2 * r + 1;
        Point3 face = 0.5 * (_skin.At(middle, 0) + _skin.At(middle, end)), chord = 0.5 * (_skin.At(2 * r, end) + _skin.At(2 * r + 2, 0));
        return _skin.Normal(middle, 0).Dot(face - chord);
    }

    private double FallingGap(int r, int j) => Gap(2 * r + 1, 2 * j + 1, 2 * r, 2 * j, 2 * r + 2, 2 * j + 2);

    private double RisingGap(int r, int j) => Gap(2 * r + 1, 2 * j + 1, 2 * r, 2 * j + 2, 2 * r + 2, 2 * j);

    /// <summary>How far the skin stands out over the middle of a chord, along the normal.</summary>
    private double Gap(int row, int place, int rowA, int placeA, int rowB, int placeB) =>
        _skin.Normal(row, place).Dot(_skin.At(row, place) - 0.5 * (_skin.At(rowA, placeA) + _skin.At(rowB, placeB)));

    /// <summary>Mean gap of the trailing edge's line beside a row, two thirds of the gap at the middles.</summary>
    private double EdgeGap(int r, int place)
    {
        double sum = 0, length = 0;
        for (int middle = 2 * r - 1; middle <= 2 * r + 1; middle += 2)
            if (middle > 0 && middle < _skin.RowCount)
            {
                double run = (_skin.At(middle + 1, place) - _skin.At(middle - 1, place)).Length;
                sum += run * Gap(middle, place, middle - 1, place, middle + 1, place);
                length += run;
            }

        return length > 0 ? 2.0 / 3 * sum / length : 0;
    }
}
