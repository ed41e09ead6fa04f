using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>The loads on the fin, case by case, from what the rider's weight can balance.</summary>
public sealed record SailingBalance
{
    private SailingBalance()
    {
    }

    /// <summary>Side force on the fin at cruise that follows from rider and sail, N.</summary>
    public required double DerivedSideForce { get; init; }

    /// <summary>How far <see cref="DerivedSideForce"/> may be off, N: stance, height of effort and place of the hull's lift, each alone, then root of squares.</summary>
    public required double DerivedUncertainty { get; init; }

    /// <summary>Side force at cruise that the maker gave, N; null when it is derived.</summary>
    public required double? GivenSideForce { get; init; }

    /// <summary>Side force at cruise that is used, N: the given one, else the derived one.</summary>
    public double SideForce => GivenSideForce ?? DerivedSideForce;

    /// <summary>Depth of the fin's load that went in, m.</summary>
    public required double FinEffortDepth { get; init; }

    /// <summary>The cases, in the order of <see cref="LoadCaseKind"/>.</summary>
    public required IReadOnlyList<LoadCase> Cases { get; init; }

    /// <summary>What is assumed throughout; plain sentences.</summary>
    public static IReadOnlyList<string> Assumptions { get; } =
    [
        "Steady sailing with the hull flat on the water; the rider's weight balances the sail's heeling moment, which is what limits the side force.",
        "The hull's lift acts on the centre line of the board.",
        "The mast foot is on the centre line, at the height of the hull plane.",
        "The sail's force acts square to the mast at the height of effort given.",
        "Once planing the fin carries all side force; the hull's share is small and unmeasured, so counting none is on the safe side.",
    ];

    /// <summary>One case.</summary>
    /// <param name="kind">Which.</param>
    public LoadCase this[LoadCaseKind kind] => Cases[(int)kind];

    /// <summary>Works out the loads.</summary>
    /// <param name="brief">Rider, rig, board, speeds.</param>
    /// <param name="finEffortDepth">
    /// Depth of the fin's load below the hull, m. Start with 0.42 of the span and repeat with what the lifting surface answers: a change of a
    /// tenth of the span moves the side force by about 2 %.
    /// </param>
    /// <param name="estimates">What differs between cases; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static SailingBalance Of(SailingBrief brief, double finEffortDepth, CaseEstimates? estimates = null)
    {
        ArgumentNullException.ThrowIfNull(brief);
        brief.Check();
        Require.Between(finEffortDepth, 0, brief.SailEffortHeight);
        estimates ??= new();
        estimates.Check();

        RollBalance cruise = Balance(brief, finEffortDepth) with { RigLean = estimates.CruiseRigLean };
        double derived = cruise.FinSideForce, uncertainty = Uncertainty(cruise, brief, estimates);
        CaseBuilder builder = new(brief, estimates, cruise, uncertainty / derived);
        return new()
        {
            DerivedSideForce = derived,
            DerivedUncertainty = uncertainty,
            GivenSideForce = brief.GivenSideForce,
            FinEffortDepth = finEffortDepth,
            Cases = [builder.GettingGoing(), builder.Cruise(), builder.TopSpeed(), builder.Overload(), builder.Grounding()],
        };
    }

    private static RollBalance Balance(SailingBrief brief, double finEffortDepth) => new()
    {
        RiderMass = brief.RiderMass,
        HangOut = brief.HangOut,
        SailEffortHeight = brief.SailEffortHeight,
        FinEffortDepth = finEffortDepth,
        RigMass = brief.RigMass,
        RigCentreHeight = brief.RigCentreShare * brief.SailEffortHeight,
        BoardMass = brief.BoardMass,
    };

    private static double Uncertainty(RollBalance cruise, SailingBrief brief, CaseEstimates estimates)
    {
        double nominal = cruise.FinSideForce;
        double stance = (cruise with { HangOut = brief.HangOut + estimates.HangOutUncertainty }).FinSideForce - nominal;
        double height = (cruise with { SailEffortHeight = brief.SailEffortHeight * (1 - estimates.EffortHeightUncertainty) }).FinSideForce - nominal;
        double offset = (cruise with { HullLiftOffset = Math.Min(estimates.HullLiftOffsetShare * brief.BoardWidth, brief.HangOut / 2) }).FinSideForce - nominal;
        return Math.Sqrt(stance * stance + height * height + offset * offset);
    }
}
