using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>Rider, rig, board and speeds, as far as they decide the load on the fin. SI units.</summary>
public sealed record SailingBrief
{
    /// <summary>Mass of the rider with gear, kg.</summary>
    public required double RiderMass { get; init; }

    /// <summary>Distance of the rider's centre of mass from the board's centre line when fully hung out, m.</summary>
    public required double HangOut { get; init; }

    /// <summary>
    /// Height of the sail's centre of effort above the hull plane, along the mast, m. A board's thickness of about 0.1 m is within what this
    /// height is known to, so height above the deck may be given.
    /// </summary>
    public required double SailEffortHeight { get; init; }

    /// <summary>Area of the sail, m².</summary>
    public required double SailArea { get; init; }

    /// <summary>Greatest width of the board, m.</summary>
    public required double BoardWidth { get; init; }

    /// <summary>Speed when the board starts to plane, m/s.</summary>
    public required double GettingGoingSpeed { get; init; }

    /// <summary>Usual speed, m/s.</summary>
    public required double CruiseSpeed { get; init; }

    /// <summary>Highest speed, m/s.</summary>
    public required double TopSpeed { get; init; }

    /// <summary>Side force on the fin at cruise that the maker gives, N; null to derive it.</summary>
    public double? GivenSideForce { get; init; }

    /// <summary>Mass of sail, mast and boom, kg. From memory: 8 to 10 kg for middling sails.</summary>
    public double RigMass { get; init; } = 9;

    /// <summary>Mass of the board, kg. From memory: 6 to 9 kg.</summary>
    public double BoardMass { get; init; } = 8;

    /// <summary>Height of the rig's centre of mass as a share of the height of effort. Judgement: boom and mast foot pull it below the sail's middle.</summary>
    public double RigCentreShare { get; init; } = 0.85;

    /// <summary>Checks every number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or the speeds do not rise.</exception>
    internal void Check()
    {
        Require.Positive(RiderMass);
        Require.Positive(HangOut);
        Require.Positive(SailEffortHeight);
        Require.Positive(SailArea);
        Require.Positive(BoardWidth);
        Require.Positive(GettingGoingSpeed);
        Require.AtLeast(CruiseSpeed, GettingGoingSpeed);
        Require.AtLeast(TopSpeed, CruiseSpeed);
        Require.NotNegative(RigMass);
        Require.NotNegative(BoardMass);
        Require.Between(RigCentreShare, 0, 1);
        if (GivenSideForce is double given)
            Require.Positive(given);
    }
}
