using Finwright.Geometry.Outlines;
using Finwright.Numerics;

namespace Finwright.Water.Spot;

/// <summary>Where weed slides off the leading edge and where it hangs.</summary>
/// <remarks>
/// A strand across the edge is dragged aft. Along an edge swept by Λ the drag's part along the edge is sin Λ, the part that presses it on cos Λ:
/// it slides when tan Λ exceeds the friction (our own statics). The friction of wet weed on a blade, 0.7 to 1.0, that is 35 to 45 degrees, is
/// common practice without a source. A nicked or blunt edge and the corner at the root hold weed at any sweep.
/// </remarks>
public sealed class LeadingEdgeShedding
{
    /// <summary>Friction of wet weed when it slides easily; 35 degrees of sweep overcome it.</summary>
    public const double EasyFriction = 0.7;

    /// <summary>Friction of wet weed when it clings; 45 degrees of sweep overcome it.</summary>
    public const double ClingingFriction = 1.0;

    // Cells along the span: a place is known to a two-hundredth of it, finer than weed is thick.
    private const int Cells = 200;

    private readonly double[] _sweeps;

    private LeadingEdgeShedding(double span, double[] sweeps)
    {
        Span = span;
        _sweeps = sweeps;
    }

    /// <summary>Depth of the tip, m.</summary>
    public double Span { get; }

    /// <summary>Least sweep along the leading edge, radians.</summary>
    public double LeastSweep => _sweeps.Min();

    /// <summary>Depth of the least sweep, m.</summary>
    public double LeastSweepAt => Depth(Array.IndexOf(_sweeps, LeastSweep) + 0.5);

    /// <summary>Of a measured outline.</summary>
    /// <param name="planform">The outline.</param>
    public static LeadingEdgeShedding Of(Planform planform)
    {
        ArgumentNullException.ThrowIfNull(planform);
        return Of(planform.Span, planform.LeadingEdgeSweep);
    }

    /// <summary>Of any leading edge.</summary>
    /// <param name="span">Depth of the tip, m.</param>
    /// <param name="sweepAt">Sweep of the leading edge at a depth, radians, positive aft, within ±π/2.</param>
    public static LeadingEdgeShedding Of(double span, Func<double, double> sweepAt)
    {
        Require.Positive(span);
        ArgumentNullException.ThrowIfNull(sweepAt);
        double[] sweeps = new double[Cells];
        for (int i = 0; i < Cells; i++)
            sweeps[i] = Require.Between(sweepAt(span * (i + 0.5) / Cells), -Math.PI / 2, Math.PI / 2, nameof(sweepAt));
        return new(span, sweeps);
    }

    /// <summary>Share of the span where weed slides at a friction.</summary>
    /// <param name="friction">Friction of weed on the edge, above zero.</param>
    public double ShareAt(double friction)
    {
        double angle = Math.Atan(Require.Positive(friction));
        int sheds = 0;
        foreach (double sweep in _sweeps)
            sheds += sweep >= angle ? 1 : 0;
        return (double)sheds / Cells;
    }

    /// <summary>Share of the span from which weed gets all the way past the tip: no place below it holds.</summary>
    /// <param name="friction">Friction of weed on the edge, above zero.</param>
    public double ClearedShareAt(double friction)
    {
        double angle = Math.Atan(Require.Positive(friction));
        int i = Cells;
        while (i > 0 && _sweeps[i - 1] >= angle)
            i--;
        return (double)(Cells - i) / Cells;
    }

    /// <summary>The stretches where weed hangs at a friction, root first.</summary>
    /// <param name="friction">Friction of weed on the edge, above zero.</param>
    public IReadOnlyList<HoldingStretch> HoldingAt(double friction)
    {
        double angle = Math.Atan(Require.Positive(friction));
        List<HoldingStretch> stretches = [];
        for (int i = 0; i < Cells; i++)
        {
            if (_sweeps[i] >= angle)
                continue;
            int from = i;
            double least = _sweeps[i];
            for (; i < Cells && _sweeps[i] < angle; i++)
                least = Math.Min(least, _sweeps[i]);
            stretches.Add(new(Depth(from), Depth(i), least));
        }

        return stretches;
    }

    /// <summary>The sweep that at least a share of the span reaches, radians.</summary>
    /// <param name="share">Share of the span, above 0, at most 1.</param>
    public double SweepReachedBy(double share)
    {
        Require.Between(share, double.Epsilon, 1);
        double[] falling = [.. _sweeps.OrderDescending()];
        return falling[Math.Min((int)Math.Ceiling(share * Cells), Cells) - 1];
    }

    /// <summary>The sweep against what weed needs to slide.</summary>
    /// <param name="neededShare">Share of the span that must shed, 0 to 1; 0 where there is no weed.</param>
    /// <returns>The sweep that this share reaches: holds when even clinging weed slides there, tight when only easy weed does.</returns>
    public Margin Judge(double neededShare)
    {
        Require.Between(neededShare, 0, 1);
        double easy = Math.Atan(EasyFriction), clinging = Math.Atan(ClingingFriction);
        string shares = $"Clinging weed (45 degrees of sweep) slides off {ShareAt(ClingingFriction):P0} of the leading edge, easy weed (35 degrees) off {ShareAt(EasyFriction):P0}.";
        string holds = HoldingAt(ClingingFriction) is [var first, ..]
            ? $" It may hang from {first.From * 1000:0} to {first.To * 1000:0} mm of depth, where the edge is swept by as little as {first.LeastSweep * 180 / Math.PI:0} degrees."
            : "";
        const string name = "weed slides off";
        if (neededShare <= 0)
            return new() { Name = name, Certainty = Certainty.CommonPractice, State = MarginState.Holds, Explanation = $"The spot has no weed. {shares}" };
        double value = SweepReachedBy(neededShare);
        return new()
        {
            Name = name,
            Value = value,
            Limit = clinging,
            MustStayAbove = true,
            Uncertainty = (clinging - easy) / 2,
            Certainty = Certainty.CommonPractice,
            State = value >= clinging ? MarginState.Holds : value >= easy ? MarginState.Tight : MarginState.Fails,
            Explanation = $"{neededShare:P0} of the leading edge is swept by {value * 180 / Math.PI:0} degrees or more. {shares}{holds} A nick or the corner at the root holds weed at any sweep.",
        };
    }

    private double Depth(double cells) => Span * cells / Cells;
}

/// <summary>A stretch of leading edge where weed hangs.</summary>
/// <param name="From">Depth where it begins, m.</param>
/// <param name="To">Depth where it ends, m.</param>
/// <param name="LeastSweep">Least sweep within it, radians.</param>
public readonly record struct HoldingStretch(double From, double To, double LeastSweep);
