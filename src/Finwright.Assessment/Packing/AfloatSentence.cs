using Finwright.Assessment.Afloat;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Packing;

/// <summary>What a fin does when it sails, in a sentence or two.</summary>
public static class AfloatSentence
{
    /// <summary>The sentence.</summary>
    public static string Of(FinAfloat afloat)
    {
        ArgumentNullException.ThrowIfNull(afloat);
        if (afloat[LoadCaseKind.Cruise] is not { } cruise)
            return $"The flow over the fin was not worked out. {afloat.Problem}";
        LeewayResult found = cruise.UnderHull;
        double speed = cruise.Load.Speed, force = cruise.Load.SideForce;
        string carries = found.Status switch
        {
            LeewayStatus.Found or LeewayStatus.FoundPastOnset => $"At {speed:0.#} m/s it carries {force:0} N at {double.RadiansToDegrees(Math.Abs(found.Result.Flow.Leeway)):0.0}° of leeway for {found.Result.Drag.Total:0} N of drag",
            LeewayStatus.BeyondMaximum => $"At {speed:0.#} m/s it cannot carry the {force:0} N asked of it",
            LeewayStatus.BeyondRange => $"At {speed:0.#} m/s it does not reach the {force:0} N asked of it within 25° of leeway",
            _ => $"At {speed:0.#} m/s the flow over it did not converge",
        };
        string stalls = found.Limits.Onset is { } onset
            ? $"; it starts to stall at {double.RadiansToDegrees(Math.Abs(onset.Flow.Leeway)):0.0}° with {Math.Abs(onset.SideForce):0} N."
            : ".";
        CaseAfloat? slow = afloat[LoadCaseKind.GettingGoing];
        string going = slow switch
        {
            null => "",
            { UnderHull.Status: LeewayStatus.BeyondMaximum } => $" Getting going at {slow.Load.Speed:0.#} m/s it lets go before it carries {slow.Load.SideForce:0} N.",
            { ShareOfStall: double share } => $" Getting going at {slow.Load.Speed:0.#} m/s it works at {100 * share:0} % of its stall.",
            _ => "",
        };
        return carries + stalls + going;
    }
}
