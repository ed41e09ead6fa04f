using Finwright.Assessment.Afloat;
using Finwright.Assessment.Verdicts;
using Finwright.Page.Words;
using Finwright.Water;
using Finwright.Water.Lifting;
using Finwright.Water.Ventilation;

namespace Finwright.Page.Answers;

/// <summary>One load case in the water, as a row of a table: texts as the reader wants them; an empty one where there is no number.</summary>
public sealed record WaterRow
{
    /// <summary>Which case.</summary>
    public required string Case { get; init; }

    /// <summary>Speed.</summary>
    public required string Speed { get; init; }

    /// <summary>Side force asked for.</summary>
    public required string SideForce { get; init; }

    /// <summary>What it may be.</summary>
    public required string SideForceRange { get; init; }

    /// <summary>Leeway, or why there is none.</summary>
    public required string Leeway { get; init; }

    /// <summary>Leeway under an endless hull and with none.</summary>
    public required string LeewayBounds { get; init; }

    /// <summary>Share of stall.</summary>
    public required string OfStall { get; init; }

    /// <summary>Drag.</summary>
    public required string Drag { get; init; }

    /// <summary>Of it induced.</summary>
    public required string Induced { get; init; }

    /// <summary>Of it friction and wake.</summary>
    public required string Section { get; init; }

    /// <summary>Of it at tip and root.</summary>
    public required string Other { get; init; }

    /// <summary>Side force over drag.</summary>
    public required string Ratio { get; init; }

    /// <summary>Depth of the load.</summary>
    public required string EffortDepth { get; init; }

    /// <summary>Load behind the middle of the box.</summary>
    public required string EffortAft { get; init; }

    /// <summary>Whether air may come in at the root.</summary>
    public required string Ventilation { get; init; }

    /// <summary>Share of the drop to boiling.</summary>
    public required string Cavitation { get; init; }

    /// <summary>Depth Froude number.</summary>
    public required string DepthFroude { get; init; }

    /// <summary>The rows.</summary>
    /// <param name="afloat">The fin.</param>
    /// <param name="reader">The reader.</param>
    public static IReadOnlyList<WaterRow> Of(FinAfloat afloat, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(afloat);
        ArgumentNullException.ThrowIfNull(reader);
        return [.. afloat.Cases.Select(own => Of(own, afloat, reader))];
    }

    private static WaterRow Of(CaseAfloat own, FinAfloat afloat, Reader reader)
    {
        Finwright.Papers.Words.Tongue tongue = reader.Tongue;
        LiftingResult? at = own.IsCarried ? own.UnderHull.Result : null;
        DragSplit drag = own.UnderHull.Result.Drag;
        return new()
        {
            Case = reader[CaseWords.Name(own.Load.Kind)],
            Speed = tongue.Speed(own.Load.Speed),
            SideForce = tongue.Force(own.Load.SideForce),
            SideForceRange = tongue.Words.Numbers.Range(tongue.Force(own.Load.SideForceLow), tongue.Force(own.Load.SideForceHigh)),
            Leeway = at is not null ? tongue.Angle(at.Flow.Leeway) : reader[own.UnderHull.Status switch
            {
                LeewayStatus.BeyondMaximum => "stalls before",
                LeewayStatus.BeyondRange => "not within 25°",
                _ => "not solved",
            }],
            LeewayBounds = Carried(own.UnderMirror) is double low && Carried(own.UnderBareSurface) is double high ? tongue.Words.Numbers.Range(tongue.Angle(low), tongue.Angle(high)) : "",
            OfStall = own.ShareOfStall is double share ? tongue.Number(share, 2) : "",
            Drag = at is null ? "" : tongue.Force(drag.Total),
            Induced = at is null ? "" : tongue.Force(drag.Induced),
            Section = at is null ? "" : tongue.Force(drag.Section),
            Other = at is null ? "" : tongue.Force(drag.Separation + drag.Junction + drag.Spray),
            Ratio = at is null || !(drag.Total > 0) ? "" : tongue.Number(Math.Abs(own.Load.SideForce) / drag.Total, 1),
            EffortDepth = at?.CentreOfEffort is { } deep ? tongue.Length(deep.Y, 0) : "",
            EffortAft = at?.CentreOfEffort is { } aft ? tongue.Length(aft.X - afloat.BoxMiddle, 0) : "",
            Ventilation = Worst(own.Margins, reader),
            Cavitation = own.Margins.Cavitation.Value is double suction ? tongue.Percent(suction) : "",
            DepthFroude = tongue.Number(Water.Ventilation.DepthFroude.Number(own.Load.Speed, afloat.Planform.Span), 1),
        };
    }

    private static double? Carried(LeewayResult result) => result.Status is LeewayStatus.Found or LeewayStatus.FoundPastOnset ? Math.Abs(result.Result.Flow.Leeway) : null;

    // The weakest of what keeps air out, by its mark and word.
    private static string Worst(VentilationMargins margins, Reader reader)
    {
        MarginState[] states = [margins.RootSeparation.State, margins.Seal.State, margins.HullCover.State];
        MarginState worst = states.Contains(MarginState.Fails) ? MarginState.Fails : states.Contains(MarginState.Tight) ? MarginState.Tight : states.Contains(MarginState.NotKnown) ? MarginState.NotKnown : MarginState.Holds;
        VerdictState state = worst switch
        {
            MarginState.Fails => VerdictState.Fails,
            MarginState.Tight => VerdictState.Tight,
            MarginState.NotKnown => VerdictState.NotKnown,
            _ => VerdictState.Holds,
        };
        return $"{StateWords.Mark(state)} {reader.Tongue.Words.Verdicts.State(state)}";
    }
}
