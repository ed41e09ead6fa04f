namespace Finwright.Strength.Plates;

/// <summary>The nine-node plate element: shape functions, and strains with the shear tied at points so that thin plates do not lock.</summary>
/// <remarks>
/// Bucalem and Bathe (1993), Higher-order MITC general shell elements (from memory), for a flat plate: the transverse shear along ξ is taken at ξ = ±1/√3, η = 0, ±√(3/5) and interpolated from there, the one along η likewise.
/// Unknowns of a node: deflection w along z, slopes βx and βy of the fibres across the thickness, so that u = −z βx, v = −z βy, shear γx = ∂w/∂x − βx. Node k = 3 × row + column.
/// </remarks>
internal sealed class QuadraticElement
{
    public const int Nodes = 9, Unknowns = 27;
    private const int Ties = 6;

    private static readonly double TieNear = 1 / Math.Sqrt(3);
    private static readonly double TieFar = Math.Sqrt(0.6);

    private readonly double[] _x = new double[Nodes];
    private readonly double[] _y = new double[Nodes];
    private readonly double[] _tiesXi = new double[Ties * Unknowns];
    private readonly double[] _tiesEta = new double[Ties * Unknowns];
    private readonly double[] _dXi = new double[Nodes];
    private readonly double[] _dEta = new double[Nodes];
    private readonly double[] _weights = new double[Ties];

    /// <summary>Shape functions at the last place.</summary>
    public double[] N { get; } = new double[Nodes];

    /// <summary>Their derivatives along x.</summary>
    public double[] DX { get; } = new double[Nodes];

    /// <summary>Their derivatives along y.</summary>
    public double[] DY { get; } = new double[Nodes];

    /// <summary>Shear along x for each unknown, at the last place; filled on demand.</summary>
    public double[] ShearX { get; } = new double[Unknowns];

    /// <summary>Shear along y for each unknown.</summary>
    public double[] ShearY { get; } = new double[Unknowns];

    /// <summary>x at the last place.</summary>
    public double X { get; private set; }

    /// <summary>y at the last place.</summary>
    public double Y { get; private set; }

    /// <summary>Area per unit of ξ and η at the last place; positive in a sound element.</summary>
    public double Area { get; private set; }

    /// <summary>The nine shape functions.</summary>
    public static void Shape(double xi, double eta, Span<double> n)
    {
        Span<double> a = [xi * (xi - 1) / 2, 1 - xi * xi, xi * (xi + 1) / 2], b = [eta * (eta - 1) / 2, 1 - eta * eta, eta * (eta + 1) / 2];
        for (int j = 0; j < 3; j++)
        {
            for (int i = 0; i < 3; i++)
                n[3 * j + i] = a[i] * b[j];
        }
    }

    /// <summary>Takes up an element by its nodes.</summary>
    public void Take(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        x.CopyTo(_x);
        y.CopyTo(_y);
        for (int t = 0; t < Ties; t++)
        {
            (double near, double far) = Tie(t);
            TieRow(near, far, alongXi: true, _tiesXi.AsSpan(t * Unknowns, Unknowns));
            TieRow(far, near, alongXi: false, _tiesEta.AsSpan(t * Unknowns, Unknowns));
        }
    }

    /// <summary>Takes up element e of a mesh.</summary>
    public void Take(PlateMesh mesh, int element)
    {
        Span<double> x = stackalloc double[Nodes], y = stackalloc double[Nodes];
        for (int k = 0; k < Nodes; k++)
        {
            int node = mesh.Node(element, k);
            (x[k], y[k]) = (mesh.X[node], mesh.Y(node));
        }

        Take(x, y);
    }

    /// <summary>Shape functions and their derivatives along x and y at a place of the element.</summary>
    public void At(double xi, double eta)
    {
        Shape(xi, eta, N);
        Derivatives(xi, eta);
        double xXi = 0, yXi = 0, xEta = 0, yEta = 0;
        (X, Y) = (0, 0);
        for (int k = 0; k < Nodes; k++)
        {
            X += N[k] * _x[k];
            Y += N[k] * _y[k];
            xXi += _dXi[k] * _x[k];
            yXi += _dXi[k] * _y[k];
            xEta += _dEta[k] * _x[k];
            yEta += _dEta[k] * _y[k];
        }

        Area = xXi * yEta - xEta * yXi;
        (double a, double b, double c, double d) = (yEta / Area, -yXi / Area, -xEta / Area, xXi / Area);
        for (int k = 0; k < Nodes; k++)
        {
            DX[k] = a * _dXi[k] + b * _dEta[k];
            DY[k] = c * _dXi[k] + d * _dEta[k];
        }

        (_a, _b, _c, _d) = (a, b, c, d);
        (_xi, _eta) = (xi, eta);
    }

    private double _a, _b, _c, _d, _xi, _eta;

    /// <summary>Fills the tied shear of the last place.</summary>
    public void Shear()
    {
        Array.Clear(ShearX);
        Array.Clear(ShearY);
        Weights(_xi, _eta);
        for (int t = 0; t < Ties; t++)
        {
            if (_weights[t] is not 0)
                AddTied(_tiesXi.AsSpan(t * Unknowns, Unknowns), _a * _weights[t], _c * _weights[t]);
        }

        Weights(_eta, _xi);
        for (int t = 0; t < Ties; t++)
        {
            if (_weights[t] is not 0)
                AddTied(_tiesEta.AsSpan(t * Unknowns, Unknowns), _b * _weights[t], _d * _weights[t]);
        }
    }

    private static (double Near, double Far) Tie(int t) => ((t & 1) is 0 ? -TieNear : TieNear, (t / 2 - 1) * TieFar);

    // Linear between the two near points, quadratic over the three far ones.
    private void Weights(double near, double far)
    {
        double f = far / TieFar;
        for (int t = 0; t < Ties; t++)
        {
            double linear = (1 + ((t & 1) is 0 ? -near : near) / TieNear) / 2;
            _weights[t] = linear * (t / 2) switch
            {
                0 => f * (f - 1) / 2,
                1 => 1 - f * f,
                _ => f * (f + 1) / 2,
            };
        }
    }

    private void AddTied(ReadOnlySpan<double> row, double alongX, double alongY)
    {
        for (int u = 0; u < Unknowns; u++)
        {
            ShearX[u] += alongX * row[u];
            ShearY[u] += alongY * row[u];
        }
    }

    // Shear in the element's own direction at a point: ∂w/∂ξ − βx ∂x/∂ξ − βy ∂y/∂ξ.
    private void TieRow(double xi, double eta, bool alongXi, Span<double> row)
    {
        Shape(xi, eta, N);
        Derivatives(xi, eta);
        double[] derivatives = alongXi ? _dXi : _dEta;
        double x = 0, y = 0;
        for (int k = 0; k < Nodes; k++)
        {
            x += derivatives[k] * _x[k];
            y += derivatives[k] * _y[k];
        }

        for (int k = 0; k < Nodes; k++)
            (row[3 * k], row[3 * k + 1], row[3 * k + 2]) = (derivatives[k], -N[k] * x, -N[k] * y);
    }

    private void Derivatives(double xi, double eta)
    {
        Span<double> a = [xi * (xi - 1) / 2, 1 - xi * xi, xi * (xi + 1) / 2], b = [eta * (eta - 1) / 2, 1 - eta * eta, eta * (eta + 1) / 2];
        Span<double> da = [xi - 0.5, -2 * xi, xi + 0.5], db = [eta - 0.5, -2 * eta, eta + 0.5];
        for (int j = 0; j < 3; j++)
        {
            for (int i = 0; i < 3; i++)
                (_dXi[3 * j + i], _dEta[3 * j + i]) = (da[i] * b[j], a[i] * db[j]);
        }
    }
}
