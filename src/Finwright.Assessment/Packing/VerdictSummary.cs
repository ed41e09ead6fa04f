using Finwright.Assessment.Verdicts;
using Finwright.Numerics;

namespace Finwright.Assessment.Packing;

/// <summary>One verdict.</summary>
public sealed record VerdictSummary
{
    /// <summary>Stable name of the check.</summary>
    public required string Code { get; init; }

    /// <summary>What was checked.</summary>
    public required string Checked { get; init; }

    /// <summary>How the fin stands.</summary>
    public required VerdictState State { get; init; }

    /// <summary>The value, in the unit.</summary>
    public required double? Value { get; init; }

    /// <summary>The limit, in the unit.</summary>
    public required double? Limit { get; init; }

    /// <summary>Room before the limit, in the unit; negative when it is passed.</summary>
    public required double? Margin { get; init; }

    /// <summary>How far the value may be off, in the unit.</summary>
    public required double? Uncertainty { get; init; }

    /// <summary>Unit of the numbers above; empty for a ratio.</summary>
    public required string Unit { get; init; }

    /// <summary>Whether the value must stay above the limit.</summary>
    public required bool MustStayAbove { get; init; }

    /// <summary>What value and limit stand on.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>How sure it is.</summary>
    public required string HowSure { get; init; }

    /// <summary>What was found.</summary>
    public required string Found { get; init; }

    /// <summary>Why it matters.</summary>
    public required string Why { get; init; }

    /// <summary>What to change; empty when nothing need be.</summary>
    public required string Change { get; init; }

    internal static VerdictSummary Of(Verdict verdict) => new()
    {
        Code = verdict.Code,
        Checked = verdict.Checked,
        State = verdict.State,
        Value = Number(verdict.Value),
        Limit = Number(verdict.Limit),
        Margin = Number(verdict.Margin),
        Uncertainty = Number(verdict.Uncertainty),
        Unit = (verdict.Value ?? verdict.Limit)?.Unit ?? "",
        MustStayAbove = verdict.MustStayAbove,
        Certainty = verdict.Certainty,
        HowSure = verdict.HowSure,
        Found = verdict.Found,
        Why = verdict.Why,
        Change = verdict.Change,
    };

    private static double? Number(Quantity? quantity) => quantity is null ? null : Rounded.Digits(quantity.Value);
}
