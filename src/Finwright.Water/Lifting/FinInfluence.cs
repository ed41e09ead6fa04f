using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Water.Lifting;

/// <summary>The equations of no flow through the fin, with image or hull already inside, and their factors.</summary>
/// <remarks>
/// The hull's rings are eliminated (Schur complement): their strengths follow from the fin's, so what stays are the fin's own equations. One geometry and one
/// root condition is factorised once; every state of flow is then a combination of stored answers.
/// </remarks>
internal sealed class FinInfluence
{
    private readonly double[]? _hullByFin;

    public FinInfluence(FinLattice lattice, RootCondition root, HullGrid grid)
    {
        (Lattice, Root) = (lattice, root);
        int n = lattice.Count, rows = lattice.Rows;
        double image = ImageSign;
        double[] a = new double[n * n];
        Point3[] direct = new Point3[rows], mirrored = new Point3[rows];
        for (int i = 0; i < n; i++)
        {
            Point3 p = lattice.Controls[i];
            for (int j = 0; j < lattice.Strips; j++)
            {
                lattice.Velocities(p, j, direct);
                lattice.Velocities(new(p.X, -p.Y, p.Z), j, mirrored);
                for (int k = 0; k < rows; k++)
                {
                    Point3 v = direct[k], m = mirrored[k];
                    a[i * n + j * rows + k] = v.Z + image * m.Z
                        - lattice.SlopeX[i] * (v.X + image * m.X)
                        - lattice.SlopeY[i] * (v.Y - image * m.Y);
                }
            }
        }

        if (root is FiniteHull hull)
        {
            Hull = new(hull, lattice.Fin.LeadingEdge(0), lattice.Fin.TrailingEdge(0), grid);
            _hullByFin = HullStrengths(lattice, Hull);
            IsSingular = AddHull(a);
        }

        Factor = new(n);
        IsSingular |= !Factor.Factor(a);
    }

    public FinLattice Lattice { get; }

    public RootCondition Root { get; }

    public HullPlate? Hull { get; }

    public DenseLu Factor { get; }

    /// <summary>Whether the geometry leaves the answer undetermined.</summary>
    public bool IsSingular { get; private set; }

    /// <summary>Sign of the fin's image: 1 for a wall, -1 for a surface of zero potential.</summary>
    public double ImageSign => Root is FullMirror ? 1 : -1;

    /// <summary>Strength of the hull's rings at the transom, column by column.</summary>
    /// <param name="fin">Strengths of the fin's vortices.</param>
    /// <param name="transom">Result, one per column of the hull.</param>
    public void Transom(ReadOnlySpan<double> fin, Span<double> transom)
    {
        if (Hull is null || _hullByFin is null)
            return;
        for (int j = 0; j < Hull.Columns; j++)
        {
            ReadOnlySpan<double> row = _hullByFin.AsSpan((j * Hull.Rows + Hull.Rows - 1) * fin.Length, fin.Length);
            double sum = 0;
            for (int i = 0; i < fin.Length; i++)
                sum += row[i] * fin[i];
            transom[j] = sum;
        }
    }

    // Strengths of the hull's rings for each vortex of the fin: no flow through the hull's underside.
    private double[] HullStrengths(FinLattice lattice, HullPlate hull)
    {
        FinLattice flat = lattice.Fin.MeanSurface is null ? lattice : new(lattice.Fin with { MeanSurface = null }, lattice.Span, lattice.Chord, lattice.Gap);
        int n = flat.Count, rows = flat.Rows, count = hull.Count;
        double[] own = new double[count * count], wash = new double[count * n], strengths = new double[count * n];
        Point3[] velocities = new Point3[rows];
        for (int i = 0; i < count; i++)
        {
            Point3 p = hull.Control(i);
            for (int m = 0; m < count; m++)
                own[i * count + m] = hull.Velocity(p, m).Y;
            for (int j = 0; j < flat.Strips; j++)
            {
                flat.Velocities(p, j, velocities);
                // The negative image doubles the flow across its plane.
                for (int k = 0; k < rows; k++)
                    wash[i * n + j * rows + k] = -2 * velocities[k].Y;
            }
        }

        DenseLu factor = new(count);
        if (factor.Factor(own))
            factor.SolveMany(wash, n, strengths);
        else
            IsSingular = true;
        return strengths;
    }

    private bool AddHull(double[] a)
    {
        if (IsSingular || Hull is null || _hullByFin is null)
            return true;
        int n = Lattice.Count, count = Hull.Count;
        double[] wash = new double[count];
        for (int i = 0; i < n; i++)
        {
            Point3 p = Lattice.Controls[i] with { Z = 0 };
            for (int m = 0; m < count; m++)
                wash[m] = Hull.Velocity(p, m).Z;
            Span<double> row = a.AsSpan(i * n, n);
            for (int m = 0; m < count; m++)
                for (int j = 0; j < n; j++)
                    row[j] += wash[m] * _hullByFin[m * n + j];
        }

        return false;
    }
}
