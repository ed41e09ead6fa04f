namespace Finwright.Geometry.Blades;

/// <summary>Places the vertices of a loft and ties them with triangles.</summary>
internal sealed class LoftAssembly
{
    // A thinner trailing edge is drawn as a line: its two corners would be one point in the single precision of mesh files. Metres.
    private const double SharpEdge = 1e-6;

    private readonly Blade _blade;
    private readonly LoftRows _rows;
    private readonly int _columns;
    private readonly List<double> _vertices = [];
    private readonly List<int> _triangles = [];

    // A symmetric blade gets mirrored vertices to the last bit.
    private readonly bool _symmetric;

    private LoftAssembly(Blade blade, LoftRows rows)
    {
        (_blade, _rows, _columns) = (blade, rows, rows.Panels[0].Columns);
        _symmetric = blade.IsSymmetric;
    }

    private int Last => _columns - 1;

    private bool IsSharp => _blade.TrailingEdgeThickness < SharpEdge;

    /// <summary>Builds the mesh.</summary>
    public static TriangleMesh Build(Blade blade, LoftRows rows)
    {
        LoftAssembly assembly = new(blade, rows);
        assembly.Skin();
        return new([.. assembly._vertices], [.. assembly._triangles]);
    }

    private void Skin()
    {
        int[] above = new int[_columns], below = new int[_columns];
        int lastRun = _rows.Panels.Length - 1;
        for (int run = 0; run <= lastRun; run++)
        {
            SkinPanels panels = _rows.Panels[run];
            if (run == 0)
            {
                PlaceRow(run, 0, above);
                Cap(above, facingRoot: true);
            }

            for (int row = 1; row < panels.Rows; row++)
            {
                PlaceRow(run, row, below);
                Strip(panels, row - 1, above, below);
                (above, below) = (below, above);
            }
        }

        Cap(above, facingRoot: false);
    }

    /// <summary>Vertices of a row; the last row of a run is also the first of the next.</summary>
    private void PlaceRow(int run, int row, int[] ids)
    {
        SkinPanels panels = _rows.Panels[run];
        bool endsRun = row == panels.Rows - 1;
        SkinPanels? next = endsRun && run + 1 < _rows.Panels.Length ? _rows.Panels[run + 1] : null;
        double offset = endsRun ? _rows.Runs[run].OffsetTo : row == 0 ? _rows.Runs[run].OffsetFrom : _rows.Runs[run].At(0.5).Offset;
        bool tip = endsRun && next is null, root = run == 0 && row == 0;
        bool thinTip = tip && (_blade.Closes || _blade.TipRounding > 0);

        Array.Fill(ids, -1);
        for (int j = 0; j < _columns; j++)
        {
            int owner = Owner(j, offset, thinTip);
            if (ids[owner] < 0)
            {
                ids[owner] = _vertices.Count / 3;
                Point3 at = panels.At(row, owner);
                CornerMove move = default;
                if (!thinTip)
                {
                    if (root || tip)
                        move.Carry(new(0, root ? -1 : 1, 0), 0, 0);
                    Carry(ref move, panels, row, owner, offset);
                    if (next is not null)
                        Carry(ref move, next, 0, owner, offset);
                }

                Add(at + move.Result(), owner, ids);
            }

            ids[j] = ids[owner];
        }
    }

    private void Add(Point3 at, int place, int[] ids)
    {
        int mirror = Last - place;
        if (_symmetric && place > mirror && ids[mirror] >= 0)
        {
            int twin = 3 * ids[mirror];
            at = new(_vertices[twin], _vertices[twin + 1], -_vertices[twin + 2]);
        }
        else if (_symmetric && place == mirror)
        {
            at = at with { Z = 0 };
        }

        _vertices.Add(at.X);
        _vertices.Add(at.Y);
        _vertices.Add(at.Z);
    }

    /// <summary>The place whose vertex stands for place j where points coincide.</summary>
    private int Owner(int j, double offset, bool thinTip)
    {
        if (thinTip)
            j = _blade.Closes ? 0 : Math.Min(j, Last - j);
        if (offset > 0)
            return j == Last && IsSharp ? 0 : j;
        int owner = Math.Clamp(j, _rows.ArcSteps, Last - _rows.ArcSteps);
        return owner == Last - _rows.ArcSteps && IsSharp ? _rows.ArcSteps : owner;
    }

    private void Carry(ref CornerMove move, SkinPanels panels, int row, int place, double offset)
    {
        bool corner = offset > 0 ? place == 0 || place == Last : place == _rows.ArcSteps || place == Last - _rows.ArcSteps;
        bool sharp = offset <= 0 && corner && IsSharp;
        if (!sharp)
            move.Carry(panels.Normal(row, place), panels.Push(row, place), panels.Area(row, place));
        if (corner)
        {
            bool starboard = place <= Last / 2;
            move.Carry(panels.Normal(row, starboard ? 0 : Last), panels.EdgePush(row, starboard), panels.EdgeArea(row));
        }
    }

    /// <summary>Facets between two rows, round to the face of the blunt trailing edge.</summary>
    private void Strip(SkinPanels panels, int row, int[] above, int[] below)
    {
        for (int j = 0; j < Last; j++)
        {
            bool mirrored = _symmetric && j >= Last / 2;
            bool fromCorner = mirrored ? !panels.SplitsFromCorner(row, Last - 1 - j) : panels.SplitsFromCorner(row, j);
            Quad(above[j], above[j + 1], below[j + 1], below[j], AtSharedEnd(j, above, below) ?? fromCorner);
        }

        Quad(above[Last], above[0], below[0], below[Last], true);
    }

    /// <summary>
    /// The diagonal beside a nose or a sharp trailing edge that runs into a tip whose sides are one line; null elsewhere. It must not start at the point
    /// above that both sides share: both would draw it to one point below, and the mesh would meet four times there.
    /// </summary>
    private bool? AtSharedEnd(int j, int[] above, int[] below)
    {
        int nose = Last / 2, starboard = _rows.ArcSteps, port = Last - _rows.ArcSteps;
        if (below[nose - 1] != below[nose + 1])
            return null;
        if (j == nose - 1 || (j == port - 1 && IsSharp))
            return true;
        return j == nose || (j == starboard && IsSharp) ? false : null;
    }

    /// <summary>Two triangles over a, b (along the ring above) and d, c (below), seen from outside with the root up.</summary>
    private void Quad(int a, int b, int c, int d, bool fromCorner)
    {
        if (fromCorner)
        {
            Triangle(a, d, c);
            Triangle(a, c, b);
        }
        else
        {
            Triangle(a, d, b);
            Triangle(b, d, c);
        }
    }

    /// <summary>Closes a ring by strips between places that face each other across the chord.</summary>
    private void Cap(int[] ring, bool facingRoot)
    {
        for (int j = 0; j < Last / 2; j++)
        {
            int a = ring[j], b = ring[j + 1], c = ring[Last - j - 1], d = ring[Last - j];
            if (facingRoot)
            {
                Triangle(a, b, c);
                Triangle(a, c, d);
            }
            else
            {
                Triangle(a, c, b);
                Triangle(a, d, c);
            }
        }
    }

    private void Triangle(int a, int b, int c)
    {
        if (a == b || b == c || c == a)
            return;
        _triangles.Add(a);
        _triangles.Add(b);
        _triangles.Add(c);
    }
}
