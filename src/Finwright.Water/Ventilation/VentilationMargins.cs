namespace Finwright.Water.Ventilation;

/// <summary>What becomes of a cavity of air once it has formed.</summary>
public enum CavityFate
{
    /// <summary>It washes out by itself.</summary>
    WashesOut,

    /// <summary>Between the two published bounds.</summary>
    MayStay,

    /// <summary>It stays until the fin is unloaded.</summary>
    Stays,

    /// <summary>The fin carries nothing, so there is no cavity to judge.</summary>
    NoLoad,
}

/// <summary>How far a fin is from letting go, cause by cause.</summary>
/// <remarks>
/// Air comes in when four things meet: suction below the atmosphere's pressure, slow or separated flow, nearness to the surface, and an open way
/// for air (Wetzel, 1957; Breslin and Skalak, 1959; Rothblum, 1969; Swales, Wright, McGregor and Rothblum, 1974, J. Mech. Eng. Sci. 16, 18-24).
/// At sailing speed the first is always met, so what is left is attachment and seal. Disturbances (chop, a landing) start it earlier than any of
/// these numbers say.
/// </remarks>
public sealed record VentilationMargins
{
    // Far below that of a strip a millimetre deep at 30 m/s (2e-5).
    private const double LeastCavityNumber = 1e-6;

    /// <summary>Attachment of the strip nearest its stall: angle over stall angle.</summary>
    public required Margin Attachment { get; init; }

    /// <summary>Separation in the root zone, x/c.</summary>
    public required Margin RootSeparation { get; init; }

    /// <summary>Greatest suction over the cavitation number.</summary>
    public required Margin Cavitation { get; init; }

    /// <summary>Depth Froude number against the washout bound.</summary>
    public required Margin Recovery { get; init; }

    /// <summary>Gap at the root, m, and the bolt holes.</summary>
    public required Margin Seal { get; init; }

    /// <summary>Hull between root and open air, in root chords.</summary>
    public required Margin HullCover { get; init; }

    /// <summary>What becomes of a cavity.</summary>
    public required CavityFate Fate { get; init; }

    /// <summary>
    /// Side force below which a cavity is washed out, N, at any speed: the washout bound falls with the root of the lift coefficient, so speed drops
    /// out. Null when the fin carries nothing or lies outside the bound's range.
    /// </summary>
    public required double? SideForceToRecover { get; init; }

    /// <summary>Share of the strips' load where the suction passes the atmosphere's pressure: where air would be drawn if it had a way; null when not known.</summary>
    public required double? SuctionShare { get; init; }

    /// <summary>Share of the side force that would be kept at the same angle when fully ventilated, by linear theory under an open surface; null when not known.</summary>
    public required double? SideForceKept { get; init; }

    /// <summary>All margins, in the order above.</summary>
    public IReadOnlyList<Margin> All => [Attachment, RootSeparation, Cavitation, Recovery, Seal, HullCover];

    /// <summary>Works out the margins of one load case.</summary>
    /// <param name="state">The load case.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static VentilationMargins Of(VentilationCase state)
    {
        ArgumentNullException.ThrowIfNull(state);
        state.Check();
        (Margin recovery, CavityFate fate, double? recovers) = RecoveryMargin.Of(state);
        return new()
        {
            Attachment = AttachmentMargins.Attachment(state),
            RootSeparation = AttachmentMargins.RootSeparation(state),
            Cavitation = CavitationMargin.Of(state),
            Recovery = recovery,
            Seal = SealMargins.Seal(state.AirPath),
            HullCover = SealMargins.HullCover(state.AirPath),
            Fate = fate,
            SideForceToRecover = recovers,
            SuctionShare = LoadMean(state, strip => -strip.MinimumCp > VentilatedCavity.Number(strip.Depth, state.Speed) ? 1 : 0),
            SideForceKept = LoadMean(state, strip => Kept(state, strip)),
        };
    }

    private static double Kept(VentilationCase state, StripCondition strip)
    {
        if (strip.AngleOfAttack <= 0)
            return 1;
        // At the surface itself the cavity is endless; a number this small is as good.
        double number = Math.Max(VentilatedCavity.Number(strip.Depth, state.Speed), LeastCavityNumber);
        // Beyond the linear theory's angles the longest cavity it knows stands in.
        double length = VentilatedCavity.Length(number, Math.Min(strip.AngleOfAttack, VentilatedCavity.GreatestAngle));
        return Math.Min(VentilatedCavity.LiftKept(length, state.Span * state.Span / state.Area), 1);
    }

    private static double? LoadMean(VentilationCase state, Func<StripCondition, double> of)
    {
        double sum = 0, load = 0;
        foreach (StripCondition strip in state.Strips)
        {
            sum += strip.Load * of(strip);
            load += strip.Load;
        }

        return load > 0 ? sum / load : null;
    }
}
