namespace Finwright.Strength.Plates;

/// <summary>Deflection and slopes over the mesh, from the unknowns at its nodes.</summary>
internal sealed class PlateField
{
    private readonly PlateMesh _mesh;
    private readonly double[] _unknowns;

    public PlateField(PlateMesh mesh, double[] unknowns) => (_mesh, _unknowns) = (mesh, unknowns);

    /// <summary>Deflection; off the mesh the edge's, carried on straight along its slopes.</summary>
    public double Deflection(double x, double y)
    {
        MeshPlace place = _mesh.Find(x, y);
        double w = At(place, 0);
        return place.IsInside ? w : w + place.OffsetX * At(place, 1) + place.OffsetY * At(place, 2);
    }

    /// <summary>Slope along the chord.</summary>
    public double SlopeX(double x, double y) => At(_mesh.Find(x, y), 1);

    private double At(MeshPlace place, int which)
    {
        Span<double> n = stackalloc double[QuadraticElement.Nodes];
        QuadraticElement.Shape(place.Xi, place.Eta, n);
        double sum = 0;
        for (int k = 0; k < n.Length; k++)
            sum += n[k] * _unknowns[3 * _mesh.Node(place.Element, k) + which];
        return sum;
    }
}
