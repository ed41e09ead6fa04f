namespace Finwright.Strength.Joints;

/// <summary>How a joint came out.</summary>
public enum JointStatus
{
    /// <summary>Pressed together everywhere.</summary>
    Closed,

    /// <summary>Gaping on one side, and held by its bolts or rods.</summary>
    Open,

    /// <summary>Whole: where it is pulled the bond carries.</summary>
    Bonded,

    /// <summary>Nothing holds it: it falls open. No numbers.</summary>
    NotHeld,

    /// <summary>The calculation did not come to an end. No numbers.</summary>
    NotConverged,
}

/// <summary>A joint under load. Numbers are zero when there is no answer.</summary>
public sealed record JointState
{
    /// <summary>How it came out.</summary>
    public required JointStatus Status { get; init; }

    /// <summary>Whether the numbers can be used.</summary>
    public bool HasAnswer => Status is JointStatus.Closed or JointStatus.Open or JointStatus.Bonded;

    /// <summary>Share of the face that is in contact.</summary>
    public double ContactShare { get; init; }

    /// <summary>Extent of the contact along x, m.</summary>
    public double ContactLength { get; init; }

    /// <summary>Extent of the contact across, along z, m.</summary>
    public double ContactDepth { get; init; }

    /// <summary>Greatest pressure between the parts, Pa.</summary>
    public double GreatestPressure { get; init; }

    /// <summary>Where it is greatest.</summary>
    public FootprintPoint GreatestPressureAt { get; init; }

    /// <summary>Greatest gap between the parts, m; 0 while closed or bonded.</summary>
    public double Gap { get; init; }

    /// <summary>Where the gap is widest.</summary>
    public FootprintPoint GapAt { get; init; }

    /// <summary>Pull of each bolt or rod, in the order given, N; negative where a rod pushes.</summary>
    public IReadOnlyList<double> Tensions { get; init; } = [];

    /// <summary>Greatest pull in the bond as if the joint were whole, Pa; 0 when it is pressed everywhere.</summary>
    public double BondStress { get; init; }

    /// <summary>Whether a bond was there and let go under this load.</summary>
    public bool BondBroke { get; init; }

    /// <summary>Turn of the blade about x that the load adds to the tightened joint, radians, by the right hand.</summary>
    public double RotationX { get; init; }

    /// <summary>Turn of the blade about z that the load adds to the tightened joint, radians, by the right hand.</summary>
    public double RotationZ { get; init; }

    /// <summary>Moment about x over the turn it makes at this load, N·m per radian; infinite when there is no turn.</summary>
    public double SecantStiffnessX { get; init; }

    /// <summary>Little more moment about x over the little more turn it makes, the other loads held, N·m per radian.</summary>
    public double TangentStiffnessX { get; init; }

    /// <summary>Little more moment about z over the little more turn it makes, the other loads held, N·m per radian.</summary>
    public double TangentStiffnessZ { get; init; }

    /// <summary>Newton steps taken.</summary>
    public int Iterations { get; init; }

    /// <summary>Forces and moments that do not cancel, over the size of those that act.</summary>
    public double Residual { get; init; }
}
