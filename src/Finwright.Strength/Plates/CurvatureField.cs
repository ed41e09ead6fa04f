namespace Finwright.Strength.Plates;

/// <summary>Curvatures smoothed over the mesh.</summary>
/// <remarks>
/// Taken where nine-node elements give them best, at 2 × 2 points, carried on linearly to the element's nodes and averaged there (Hinton and Campbell, 1974, local smoothing; from memory); quadratic between nodes.
/// </remarks>
internal sealed class CurvatureField
{
    private readonly PlateMesh _mesh;
    private readonly double[] _values;

    public CurvatureField(PlateMesh mesh, double[] unknowns)
    {
        _mesh = mesh;
        _values = new double[3 * mesh.Nodes];
        int[] shared = new int[mesh.Nodes];
        QuadraticElement element = new();
        double point = 1 / Math.Sqrt(3);
        Span<double> at = stackalloc double[12];
        for (int e = 0; e < mesh.ChordElements * mesh.SpanElements; e++)
        {
            element.Take(mesh, e);
            at.Clear();
            for (int q = 0; q < 4; q++)
            {
                element.At(q % 2 is 0 ? -point : point, q / 2 is 0 ? -point : point);
                for (int k = 0; k < QuadraticElement.Nodes; k++)
                {
                    int unknown = 3 * mesh.Node(e, k);
                    double slopeX = unknowns[unknown + 1], slopeY = unknowns[unknown + 2];
                    at[3 * q] += element.DX[k] * slopeX;
                    at[3 * q + 1] += element.DY[k] * slopeY;
                    at[3 * q + 2] += element.DY[k] * slopeX + element.DX[k] * slopeY;
                }
            }

            for (int k = 0; k < QuadraticElement.Nodes; k++)
            {
                int node = mesh.Node(e, k);
                double xi = (k % 3 - 1) / point, eta = (k / 3 - 1) / point;
                for (int c = 0; c < 3; c++)
                    _values[3 * node + c] += ((1 - xi) * ((1 - eta) * at[c] + (1 + eta) * at[6 + c]) + (1 + xi) * ((1 - eta) * at[3 + c] + (1 + eta) * at[9 + c])) / 4;
                shared[node]++;
            }
        }

        for (int node = 0; node < mesh.Nodes; node++)
        {
            for (int c = 0; c < 3; c++)
                _values[3 * node + c] /= shared[node];
        }
    }

    public PlateCurvature At(double x, double y)
    {
        MeshPlace place = _mesh.Find(x, y);
        Span<double> n = stackalloc double[QuadraticElement.Nodes];
        QuadraticElement.Shape(place.Xi, place.Eta, n);
        double kx = 0, ky = 0, kxy = 0;
        for (int k = 0; k < n.Length; k++)
        {
            int at = 3 * _mesh.Node(place.Element, k);
            kx += n[k] * _values[at];
            ky += n[k] * _values[at + 1];
            kxy += n[k] * _values[at + 2];
        }

        return new(kx, ky, kxy);
    }
}
