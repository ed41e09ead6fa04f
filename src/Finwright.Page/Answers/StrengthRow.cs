using Finwright.Assessment.Loaded;
using Finwright.Assessment.Verdicts;
using Finwright.Page.Words;
using Finwright.Papers.Words;
using Finwright.Strength.Joints;
using Finwright.Strength.Margins;

namespace Finwright.Page.Answers;

/// <summary>One load case of the loaded fin, as a row of a table.</summary>
public sealed record StrengthRow
{
    /// <summary>Which case.</summary>
    public required string Case { get; init; }

    /// <summary>Side force.</summary>
    public required string SideForce { get; init; }

    /// <summary>Moment at the hull.</summary>
    public required string RootMoment { get; init; }

    /// <summary>Bend of the tip.</summary>
    public required string TipDeflection { get; init; }

    /// <summary>Twist of the tip.</summary>
    public required string TipTwist { get; init; }

    /// <summary>Leeway of a stiff fin.</summary>
    public required string StiffLeeway { get; init; }

    /// <summary>Leeway of the bent one.</summary>
    public required string BentLeeway { get; init; }

    /// <summary>Side force by bending.</summary>
    public required string ForceByBending { get; init; }

    /// <summary>Use of the walls.</summary>
    public required string WallUse { get; init; }

    /// <summary>Use of the core.</summary>
    public required string CoreUse { get; init; }

    /// <summary>Use of the rods and their bonds.</summary>
    public required string RodUse { get; init; }

    /// <summary>The joint.</summary>
    public required string Joint { get; init; }

    /// <summary>Greatest pull of a bolt or rod across the joint.</summary>
    public required string Pull { get; init; }

    /// <summary>What to know of the row; empty for nothing.</summary>
    public required string Remark { get; init; }

    /// <summary>The rows.</summary>
    /// <param name="loaded">The fin.</param>
    /// <param name="reader">The reader.</param>
    public static IReadOnlyList<StrengthRow> Of(FinLoaded loaded, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(reader);
        return [.. loaded.Cases.Select(own => Of(own, reader))];
    }

    private static StrengthRow Of(CaseLoaded own, Reader reader)
    {
        Tongue tongue = reader.Tongue;
        int way = own.Load.SideForce < 0 ? -1 : 1;
        bool has = own.HasNumbers;
        return new()
        {
            Case = reader[CaseWords.Name(own.Load.Kind)],
            SideForce = tongue.Force(own.Load.SideForce),
            RootMoment = has ? tongue.Quantity(new(Math.Abs(own.RootMoment), "N·m", 0)) : "",
            TipDeflection = has ? tongue.Length(way * own.Tip.MidChord) : "",
            TipTwist = has ? tongue.Angle(way * own.Tip.Twist) : "",
            StiffLeeway = own.StiffLeeway is double stiff ? tongue.Angle(Math.Abs(stiff)) : "",
            BentLeeway = own.BentLeeway is double bent ? tongue.Angle(Math.Abs(bent)) : "",
            ForceByBending = own.SideForceShare is double share ? tongue.Percent(share - 1) : "",
            WallUse = has ? Use(own, tongue, StressedPart.WallAcrossLayers, StressedPart.WallAlongLayers, StressedPart.RootCorner) : "",
            CoreUse = has ? Use(own, tongue, StressedPart.Core) : "",
            RodUse = has ? Use(own, tongue, StressedPart.Rod, StressedPart.RodBond) : "",
            Joint = own.Joint is not { } joint ? "" : joint.Status switch
            {
                JointStatus.Closed => reader["closed"],
                JointStatus.Bonded => reader["bonded"],
                JointStatus.Open => reader["open, {0} pressed", tongue.Percent(joint.ContactShare)],
                JointStatus.NotHeld => reader["falls open"],
                _ => reader["not solved"],
            },
            Pull = own.Joint is { HasAnswer: true, Tensions.Count: > 0 } held ? tongue.Force(held.Tensions.Max()) : "",
            Remark = reader[own.Status switch
            {
                LoadedStatus.NotCarried => "stalls first; as if it carried the load",
                LoadedStatus.NotSettled => "load and shape do not settle",
                LoadedStatus.NotSolved => "not solved",
                LoadedStatus.BeyondRange => "bends too far to tell",
                _ => "",
            }],
        };
    }

    private static string Use(CaseLoaded own, Tongue tongue, params StressedPart[] parts) =>
        own.Peaks.Where(peak => parts.Contains(peak.Part) && peak.Stress > 0).MinBy(peak => peak.Reserve) is { } worst ? tongue.Percent(1 / worst.Reserve) : "";
}
