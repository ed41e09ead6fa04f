using Finwright.Numerics;

namespace Finwright.Assessment.Verdicts;

/// <summary>One number by two methods that know nothing of each other.</summary>
/// <param name="Code">Code of the verdict.</param>
/// <param name="What">The number, and both methods.</param>
/// <param name="First">By the method that is used.</param>
/// <param name="Second">By the other; not 0.</param>
/// <param name="Range">By what share they may differ without anything being odd; twice that is too much.</param>
internal sealed record TwoOpinions(string Code, string What, double First, double Second, double Range)
{
    /// <summary>Why both are looked at.</summary>
    public const string Why = "Two methods that know nothing of each other and agree are worth more than one.";

    /// <summary>What the range stands on.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>What each knows and does not know.</summary>
    public required string HowSure { get; init; }

    /// <summary>Both numbers, in words.</summary>
    public required string Found { get; init; }

    /// <summary>What to do when they differ.</summary>
    public required string Change { get; init; }

    /// <summary>How far they differ, whichever is the larger.</summary>
    public Verdict Verdict
    {
        get
        {
            double off = Math.Abs(First / Second - 1);
            VerdictState state = WaterVerdicts.Below(off, Range, 2 * Range);
            return new()
            {
                Code = Code,
                Checked = $"difference of two methods: {What}",
                State = state,
                Value = new(100 * off, "%", 0),
                Limit = new(200 * Range, "%", 0),
                Certainty = Certainty,
                HowSure = HowSure,
                Found = Found,
                Why = Why,
                Change = state == VerdictState.Holds ? "" : Change,
            };
        }
    }
}
