using System.Globalization;
using Finwright.Numerics;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>How a fin stands to one demand, worst first.</summary>
public enum VerdictState
{
    /// <summary>Beyond the limit.</summary>
    Fails,

    /// <summary>Close to the limit.</summary>
    Tight,

    /// <summary>An input is missing, or the method does not reach here.</summary>
    NotKnown,

    /// <summary>Clear of the limit.</summary>
    Holds,
}

/// <summary>A number with its unit and as many decimals as it deserves.</summary>
/// <param name="Value">The number, in the unit.</param>
/// <param name="Unit">Unit as a person reads it; empty for a ratio.</param>
/// <param name="Decimals">Decimals to show.</param>
public sealed record Quantity(double Value, string Unit, int Decimals)
{
    /// <summary>The number and its unit.</summary>
    public string Words => Number + After;

    // A degree stands close to its number.
    private string After => Unit.Length == 0 || Unit == "°" ? Unit : " " + Unit;

    /// <summary>The number alone; a rounded zero has no sign.</summary>
    public string Number => (Math.Round(Value, Decimals) + 0.0).ToString("F" + Decimals, CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string ToString() => Words;
}

/// <summary>
/// What was checked, the value, the limit, how sure, why it matters and what to change. Never a bare yes or no: whoever shows the state
/// shows value and limit with it.
/// </summary>
public sealed record Verdict
{
    /// <summary>Stable kebab-case name of the check, for example <c>stall-reserve</c>.</summary>
    public required string Code { get; init; }

    /// <summary>Name of the part that it is about; empty when it is about the fin.</summary>
    public string Part { get; init; } = "";

    /// <summary>The load case that it is about; null when it is about none, or about all.</summary>
    public LoadCaseKind? Case { get; init; }

    /// <summary>
    /// Kebab-case name of what decides, where a check has several grounds and each asks for another change, for example <c>seal</c>; empty
    /// where there is only one. With the code it tells what <see cref="Change"/> says, so that it can be said in other languages.
    /// </summary>
    public string Ground { get; init; } = "";

    /// <summary>What was checked, in a few words.</summary>
    public required string Checked { get; init; }

    /// <summary>How the fin stands.</summary>
    public required VerdictState State { get; init; }

    /// <summary>The value; null when it is not known or there is nothing to measure.</summary>
    public Quantity? Value { get; init; }

    /// <summary>The limit that must not be passed; null when there is none.</summary>
    public Quantity? Limit { get; init; }

    /// <summary>Whether the value must stay above the limit; else below.</summary>
    public bool MustStayAbove { get; init; }

    /// <summary>Room left before the limit, in the value's unit, negative when it is passed; null without value or limit.</summary>
    public Quantity? Margin => Value is { } value && Limit is { } limit ? value with { Value = MustStayAbove ? value.Value - limit.Value : limit.Value - value.Value } : null;

    /// <summary>How far the value may be off, in its own unit; null when not known.</summary>
    public Quantity? Uncertainty { get; init; }

    /// <summary>Value, spread and limit in a few words; empty without a value.</summary>
    public string Numbers
    {
        get
        {
            if (Value is not { } value)
                return "";
            // A spread that would show as nothing is not shown; a unit that is said once need not be said again.
            string spread = Uncertainty is { } off && Math.Round(off.Value, off.Decimals) > 0 ? $" ± {off.Number}" : "";
            string own = (value with { Unit = "" }).Words + spread + value.Words[value.Number.Length..];
            return Limit is { } limit ? $"{own}, limit {(MustStayAbove ? "at least " : "")}{limit.Number}{Short(limit.Unit)}" : own;
        }
    }

    /// <summary>What value and limit stand on.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>How sure it is, in a sentence.</summary>
    public required string HowSure { get; init; }

    /// <summary>What was found, with its numbers: one to three sentences.</summary>
    public required string Found { get; init; }

    /// <summary>Why it matters on the water, in a sentence.</summary>
    public required string Why { get; init; }

    /// <summary>What to change, in a sentence; empty when nothing need be changed.</summary>
    public string Change { get; init; } = "";

    private static string Short(string unit) => unit switch
    {
        "°" => unit,
        "mm" => " mm",
        _ when unit.StartsWith('%') => " %",
        _ => "",
    };
}
