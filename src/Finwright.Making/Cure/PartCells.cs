using Finwright.Geometry;
using Finwright.Making.Voxels;

namespace Finwright.Making.Cure;

/// <summary>A part on a grid as cells for the solver, cells at its surface cut as the part cuts them.</summary>
/// <remarks>
/// <para>Half of the way between two cells: the volume in a cell over the open face is how far the part reaches behind that face, at most through the cell; half of that lies between the cell's
/// middle and the face. So a cell cut across the way is short, one cut along the way is narrow.</para>
/// <para>From the middle of a cell to the part's surface: half of the volume over the surface's area, at most half of the cell's width along the surface's normal; what part of it is wall
/// conducts as wall. Mixed cells conduct as wall and core in series: heat crosses walls far more than it runs along them.</para>
/// <para>A surface that lies in a cell with next to nothing of the part goes to that cell's neighbours.</para>
/// </remarks>
internal sealed class PartCells
{
    // Below a thousandth of its volume a cell is left out; together they hold less than a ten-thousandth of a part.
    private const double LeastShare = 1e-3;

    // Still air, W/(m K), in pores that are not poured yet.
    private const double AirConductivity = 0.026;

    // Its heat capacity, J/(m³ K).
    private const double AirCapacity = 1200;

    private readonly PartVoxels _voxels;
    private readonly PartCureCase _case;
    private readonly int[] _number;
    private readonly double[] _height;
    private readonly bool[] _isFull;

    public PartCells(PartVoxels voxels, PartCureCase part)
    {
        (_voxels, _case) = (voxels, part);
        _number = new int[voxels.Count];
        List<int> active = [];
        for (int i = 0; i < voxels.Count; i++)
        {
            _number[i] = voxels.Part[i] > LeastShare ? active.Count : -1;
            if (_number[i] >= 0)
                active.Add(i);
        }

        if (active.Count == 0)
            throw new ArgumentException("The grid holds no part.", nameof(voxels));
        Voxels = [.. active];
        double[] area = Areas();
        int surfaces = area.Count(a => a > 0);
        Cells = new(Voxels.Length, surfaces);
        _isFull = new bool[Voxels.Length];
        _height = new double[Voxels.Length];
        Point3 up = Unit(part.Up);
        Lowest = double.PositiveInfinity;
        Highest = double.NegativeInfinity;
        for (int n = 0; n < Voxels.Length; n++)
        {
            _height[n] = Place(n).Dot(up);
            Lowest = Math.Min(Lowest, _height[n]);
            Highest = Math.Max(Highest, _height[n]);
        }

        int s = 0;
        for (int n = 0; n < Voxels.Length; n++)
        {
            if (!(area[n] > 0))
                continue;
            Cells.SurfaceCell[s] = n;
            Cells.SurfaceArea[s++] = area[n];
        }

        Refresh();
    }

    /// <summary>Cells for the solver.</summary>
    public CureCells Cells { get; }

    /// <summary>Number on the grid of each cell.</summary>
    public int[] Voxels { get; }

    /// <summary>Height of the lowest and the highest cell, metres.</summary>
    public double Lowest { get; }

    /// <summary>Height of the highest cell, metres.</summary>
    public double Highest { get; }

    /// <summary>Middle of a cell, metres.</summary>
    public Point3 Place(int n)
    {
        int i = Voxels[n];
        return _voxels.Centre(i % _voxels.CountX, i / _voxels.CountX % _voxels.CountY, i / (_voxels.CountX * _voxels.CountY));
    }

    /// <summary>Fills the core up to a level: heat and resin come in, temperatures mix.</summary>
    /// <returns>Heat that came in with the resin, less that of the air it drove out, J, from 0 K.</returns>
    public double Fill(CurePour pour, double[] temperature)
    {
        double came = 0;
        for (int n = 0; n < _isFull.Length; n++)
        {
            if (_isFull[n] || _height[n] > pour.Level)
                continue;
            _isFull[n] = true;
            double mass = Mass(n), capacity = mass * _case.Resin.HeatCapacity, air = Air(n), plastic = Cells.Capacity[n] - air;
            // The air leaves with its own heat.
            came += capacity * pour.Temperature - air * temperature[n];
            temperature[n] = mass > 0 ? (plastic * temperature[n] + capacity * pour.Temperature) / (plastic + capacity) : temperature[n];
        }

        Refresh();
        return came;
    }

    /// <summary>Lays water on all surfaces below a level, air on the rest.</summary>
    public void Immerse(double level)
    {
        for (int s = 0; s < Cells.SurfaceCell.Length; s++)
            Cells.SurfaceFilm[s] = _height[Cells.SurfaceCell[s]] < level ? 1 : 0;
    }

    private double Mass(int n) => _voxels.CellVolume * _voxels.Core[Voxels[n]] * (1 - _case.InfillShare) * _case.Resin.Density;

    private double Air(int n) => _voxels.CellVolume * _voxels.Core[Voxels[n]] * (1 - _case.InfillShare) * AirCapacity;

    private void Refresh()
    {
        double f = _case.InfillShare, plastic = _case.Plastic.Density * _case.Plastic.HeatCapacity, wall = _case.Plastic.Conductivity;
        double full = PlasticHeat.Mixed(wall, _case.Resin.Conductivity, f), empty = PlasticHeat.Mixed(wall, AirConductivity, f);
        double[] conductivity = new double[Voxels.Length];
        for (int n = 0; n < Voxels.Length; n++)
        {
            double part = _voxels.Part[Voxels[n]], core = Math.Min(part, _voxels.Core[Voxels[n]]), volume = _voxels.CellVolume;
            Cells.ResinMass[n] = _isFull[n] ? Mass(n) : 0;
            Cells.Capacity[n] = volume * plastic * (part - core + f * core) + (_isFull[n] ? Cells.ResinMass[n] * _case.Resin.HeatCapacity : Air(n));
            conductivity[n] = part / ((part - core) / wall + core / (_isFull[n] ? full : empty));
        }

        (int Other, double Conductance) Link(int n, int axis)
        {
            int i = Voxels[n], other = Before(i, axis), m = other < 0 ? -1 : _number[other];
            double open = Open(i, axis, false);
            return m >= 0 && open > 0 ? (m, open * Face(axis) / (Half(i, axis, open) / conductivity[n] + Half(other, axis, open) / conductivity[m])) : (Cells.Count, 0);
        }

        for (int n = 0; n < Voxels.Length; n++)
        {
            (int x, double gx) = Link(n, 0);
            (int y, double gy) = Link(n, 1);
            (int z, double gz) = Link(n, 2);
            Cells.Links[n] = new(x, y, z, gx, gy, gz);
        }

        for (int s = 0; s < Cells.SurfaceCell.Length; s++)
            Cells.SurfaceConductance[s] = ToSurface(Cells.SurfaceCell[s], Cells.SurfaceArea[s], _isFull[Cells.SurfaceCell[s]] ? full : empty);
    }

    private double ToSurface(int n, double area, double core)
    {
        int i = Voxels[n];
        double part = _voxels.Part[i], volume = _voxels.CellVolume;
        double nx = Leaning(i, 0), ny = Leaning(i, 1), nz = Leaning(i, 2);
        double length = Math.Sqrt(nx * nx + ny * ny + nz * nz);
        double across = length > 0 ? (nx * _voxels.Cell.X + ny * _voxels.Cell.Y + nz * _voxels.Cell.Z) / length : Math.Min(_voxels.Cell.X, Math.Min(_voxels.Cell.Y, _voxels.Cell.Z));
        double way = Math.Max(Math.Min(part * volume / area, across) / 2, 1e-3 * across);
        double wall = Math.Min(way, (part - Math.Min(part, _voxels.Core[i])) * volume / area);
        return area / (wall / _case.Plastic.Conductivity + (way - wall) / core);
    }

    /// <summary>Area of the part's surface in a cell as seen along an axis, m²; a face that opens into nothing counts as surface.</summary>
    private double Leaning(int i, int axis)
    {
        int before = Before(i, axis), after = After(i, axis);
        double from = before >= 0 && _number[before] >= 0 ? Open(i, axis, false) : 0, to = after >= 0 && _number[after] >= 0 ? Open(i, axis, true) : 0;
        return Math.Abs(from - to) * Face(axis);
    }

    private double Half(int i, int axis, double open) => Math.Min(1, _voxels.Part[i] / open) * Width(axis) / 2;

    private double[] Areas()
    {
        double[] area = new double[Voxels.Length];
        Span<int> near = stackalloc int[6];
        Span<double> open = stackalloc double[6];
        for (int i = 0; i < _voxels.Count; i++)
        {
            double here = _voxels.CooledArea[i];
            if (!(here > 0))
                continue;
            if (_number[i] >= 0)
            {
                area[_number[i]] += here;
                continue;
            }

            double sum = 0;
            for (int side = 0; side < 6; side++)
            {
                int other = side < 3 ? Before(i, side) : After(i, side - 3);
                near[side] = other >= 0 ? _number[other] : -1;
                open[side] = near[side] >= 0 ? Open(i, side % 3, side >= 3) * Face(side % 3) : 0;
                sum += open[side];
            }

            for (int side = 0; side < 6 && sum > 0; side++)
            {
                if (near[side] >= 0)
                    area[near[side]] += here * open[side] / sum;
            }
        }

        return area;
    }

    private double Width(int axis) => axis switch { 0 => _voxels.Cell.X, 1 => _voxels.Cell.Y, _ => _voxels.Cell.Z };

    private double Face(int axis) => _voxels.CellVolume / Width(axis);

    private int Before(int i, int axis)
    {
        int x = _voxels.CountX, y = _voxels.CountY;
        return axis switch
        {
            0 => i % x > 0 ? i - 1 : -1,
            1 => i / x % y > 0 ? i - x : -1,
            _ => i >= x * y ? i - x * y : -1,
        };
    }

    private int After(int i, int axis)
    {
        int x = _voxels.CountX, y = _voxels.CountY;
        return axis switch
        {
            0 => i % x < x - 1 ? i + 1 : -1,
            1 => i / x % y < y - 1 ? i + x : -1,
            _ => i + x * y < _voxels.Count ? i + x * y : -1,
        };
    }

    /// <summary>Share of a cell's face before or after it that lies inside the part.</summary>
    private double Open(int cell, int axis, bool isAfter)
    {
        int nx = _voxels.CountX, ny = _voxels.CountY, i = cell % nx, j = cell / nx % ny, k = cell / (nx * ny), one = isAfter ? 1 : 0;
        return axis switch
        {
            0 => _voxels.FacesX[i + one + (nx + 1) * (j + ny * k)],
            1 => _voxels.FacesY[i + nx * (j + one + (ny + 1) * k)],
            _ => _voxels.FacesZ[i + nx * (j + ny * (k + one))],
        };
    }

    private static Point3 Unit(Point3 up)
    {
        double length = Math.Sqrt(up.Dot(up));
        return new(up.X / length, up.Y / length, up.Z / length);
    }
}
