namespace Finwright.Strength.Plates;

/// <summary>What lies through the thickness at one place: for wall, core and sheet thickness, first and second moment about the mean surface.</summary>
/// <remarks>Not safe for several threads: it owns its work arrays.</remarks>
internal sealed class LayerSums
{
    public const int Wall = 0, Core = 1, Sheet = 2, Kinds = 3;

    private readonly PlateFin _fin;
    private readonly double _least;
    private readonly double[] _bounds;

    public LayerSums(PlateFin fin, double leastThickness)
    {
        (_fin, _least) = (fin, leastThickness);
        _bounds = new double[6 + 2 * fin.Voids.Count];
    }

    /// <summary>Thickness of each kind, metres.</summary>
    public double[] Thickness { get; } = new double[Kinds];

    /// <summary>∫ z dz of each kind, m².</summary>
    public double[] First { get; } = new double[Kinds];

    /// <summary>∫ z² dz of each kind, m³.</summary>
    public double[] Second { get; } = new double[Kinds];

    /// <summary>Half thickness at the place, metres.</summary>
    public double Half { get; private set; }

    /// <summary>Half thickness of the core at the place, metres; 0 where all is wall.</summary>
    public double CoreHalf { get; private set; }

    /// <summary>Height of the neutral surface: where stretching along the span has no bending, metres.</summary>
    public double Neutral { get; private set; }

    /// <summary>Second moment of a kind about the neutral surface, m³.</summary>
    public double About(int kind) => Second[kind] - 2 * Neutral * First[kind] + Neutral * Neutral * Thickness[kind];

    /// <summary>Works out a place.</summary>
    public void At(double x, double y)
    {
        // The mesh's parabolas leave the true edges by a hair.
        x = Math.Clamp(x, _fin.LeadingEdge(y), _fin.TrailingEdge(y));
        double half = _fin.HalfThickness(x, y), wall = _fin.WallDepth(x, y);
        if (!double.IsFinite(half))
            throw new ArgumentException($"The half thickness is {half} at x {x}, y {y}.", nameof(x));
        if (!(wall >= 0))
            throw new ArgumentException($"The wall depth is {wall} at x {x}, y {y}; it must be 0 or more.", nameof(x));
        Half = half = Math.Max(half, _least / 2);
        CoreHalf = Math.Max(0, half - wall);
        double sheet = _fin.Sheet is { } s && s.Covers(x, y) ? Math.Min(s.Thickness / 2, half) : 0;
        Array.Clear(Thickness);
        Array.Clear(First);
        Array.Clear(Second);
        int count = 0;
        void Bound(double z) => _bounds[count++] = Math.Clamp(z, -half, half);
        Bound(-half);
        Bound(half);
        if (CoreHalf > 0)
        {
            Bound(-CoreHalf);
            Bound(CoreHalf);
        }

        if (sheet > 0)
        {
            Bound(-sheet);
            Bound(sheet);
        }

        bool anyVoid = false;
        foreach (PlateVoid hole in _fin.Voids)
        {
            if (!hole.Covers(x, y))
                continue;
            anyVoid = true;
            Bound(hole.FromZ);
            Bound(hole.ToZ);
        }

        Array.Sort(_bounds, 0, count);
        for (int i = 1; i < count; i++)
        {
            double from = _bounds[i - 1], to = _bounds[i], middle = (from + to) / 2;
            if (to <= from || anyVoid && IsVoid(x, y, middle))
                continue;
            Sum(Math.Abs(middle) < sheet ? Sheet : Math.Abs(middle) < CoreHalf ? Core : Wall, from, to);
        }

        if (Thickness[Wall] + Thickness[Core] + Thickness[Sheet] < _least)
            Sum(Wall, -_least / 2, _least / 2);
        double stretch = 0, coupling = 0;
        for (int kind = 0; kind < Kinds; kind++)
        {
            double modulus = Of(kind).ModulusY;
            stretch += modulus * Thickness[kind];
            coupling += modulus * First[kind];
        }

        Neutral = coupling / stretch;
    }

    /// <summary>The material of a kind.</summary>
    public Materials.Elasticity Of(int kind) => kind switch
    {
        Wall => _fin.Wall,
        Core => _fin.Core,
        _ => _fin.Sheet?.Material ?? _fin.Core,
    };

    private bool IsVoid(double x, double y, double z)
    {
        foreach (PlateVoid hole in _fin.Voids)
        {
            if (z > hole.FromZ && z < hole.ToZ && hole.Covers(x, y))
                return true;
        }

        return false;
    }

    private void Sum(int kind, double from, double to)
    {
        Thickness[kind] += to - from;
        First[kind] += (to * to - from * from) / 2;
        Second[kind] += (to * to * to - from * from * from) / 3;
    }
}
