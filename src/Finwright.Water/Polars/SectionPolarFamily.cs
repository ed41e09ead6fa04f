namespace Finwright.Water.Polars;

/// <summary>Polars of several sections along a span; between two nodes both are read and mixed linearly.</summary>
/// <remarks>Immutable; safe for use from several threads.</remarks>
public sealed class SectionPolarFamily
{
    /// <summary>Makes a family.</summary>
    /// <param name="positions">Places of the nodes, rising.</param>
    /// <param name="tables">A table for each.</param>
    /// <exception cref="ArgumentException">No node, or places that do not rise, or not as many tables as places.</exception>
    public SectionPolarFamily(IReadOnlyList<double> positions, IReadOnlyList<SectionPolarTable> tables)
    {
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(tables);
        if (positions.Count == 0 || positions.Count != tables.Count)
            throw new ArgumentException($"A family needs a table for each of its places; it was given {tables.Count} for {positions.Count}.", nameof(tables));
        for (int i = 0; i < positions.Count; i++)
            if (!double.IsFinite(positions[i]) || (i > 0 && !(positions[i] > positions[i - 1])))
                throw new ArgumentException($"Places must rise; number {i} is {positions[i]}.", nameof(positions));
        (Positions, Tables) = (positions, tables);
    }

    /// <summary>Places of the nodes, rising.</summary>
    public IReadOnlyList<double> Positions { get; }

    /// <summary>The table of each node.</summary>
    public IReadOnlyList<SectionPolarTable> Tables { get; }

    /// <summary>How many points were asked for, over all nodes, Reynolds numbers and angles.</summary>
    public int PointCount => Tables.Sum(table => table.Curves.Sum(curve => curve.Points.Count));

    /// <summary>How many of them converged.</summary>
    public int SolvedCount => Tables.Sum(table => table.Curves.Sum(curve => curve.SolvedCount));

    /// <summary>The polar at a place; before the first and behind the last node theirs.</summary>
    /// <param name="position">Place, in the measure of <see cref="Positions"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not a number.</exception>
    public ISectionPolar At(double position)
    {
        if (!double.IsFinite(position))
            throw new ArgumentOutOfRangeException(nameof(position), position, "The place must be a number.");
        int last = Positions.Count - 1;
        if (position <= Positions[0])
            return Tables[0];
        if (position >= Positions[last])
            return Tables[last];
        int low = 0;
        while (Positions[low + 1] <= position)
            low++;
        double share = (position - Positions[low]) / (Positions[low + 1] - Positions[low]);
        return share > 0 ? new Mixed(Tables[low], Tables[low + 1], share) : Tables[low];
    }

    private sealed class Mixed(SectionPolarTable first, SectionPolarTable second, double share) : ISectionPolar
    {
        public SectionForces At(double angleOfAttack, double reynoldsNumber)
        {
            SectionForces a = first.At(angleOfAttack, reynoldsNumber), b = second.At(angleOfAttack, reynoldsNumber);
            return new(
                Mix(a.Cl, b.Cl),
                Mix(a.Cd, b.Cd),
                Mix(a.Cm, b.Cm),
                Mix(a.MinimumCp, b.MinimumCp),
                Mix(a.Separation, b.Separation),
                a.Origin > b.Origin ? a.Origin : b.Origin);
        }

        public SectionStall StallAt(double reynoldsNumber, bool positive)
        {
            SectionStall a = first.StallAt(reynoldsNumber, positive), b = second.StallAt(reynoldsNumber, positive);
            return new(Mix(a.AngleOfAttack, b.AngleOfAttack), Mix(a.Cl, b.Cl), a.IsReached && b.IsReached);
        }

        private double Mix(double a, double b) => a + share * (b - a);
    }
}
