using Finwright.Assessment.Afloat;
using Finwright.Page.Words;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Page.Answers;

/// <summary>What a fin does when it sails, in a few sentences.</summary>
public static class WaterSentence
{
    /// <summary>The sentences.</summary>
    /// <param name="afloat">The fin.</param>
    /// <param name="reader">Numbers and units.</param>
    public static IReadOnlyList<ToldSentence> Of(FinAfloat afloat, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(afloat);
        ArgumentNullException.ThrowIfNull(reader);
        if (afloat[LoadCaseKind.Cruise] is not { } cruise)
            return afloat.Problem is { } problem ? [new("The flow over the fin was not worked out."), new(problem)] : [new("The flow over the fin was not worked out.")];
        LeewayResult found = cruise.UnderHull;
        ToldValue speed = new(reader.Tongue.Speed(cruise.Load.Speed), "speed"), force = new(reader.Tongue.Force(cruise.Load.SideForce), "side-force");
        List<ToldSentence> sentences = [];
        switch (found.Status)
        {
            case LeewayStatus.Found or LeewayStatus.FoundPastOnset:
                sentences.Add(new(
                    "At {0} it carries your {1} at {2} of leeway, for {3} of drag.",
                    speed,
                    force,
                    new(reader.Tongue.Angle(Math.Abs(found.Result.Flow.Leeway)), "leeway"),
                    new(reader.Tongue.Force(found.Result.Drag.Total), "drag")));
                if (found.Status is LeewayStatus.FoundPastOnset)
                    sentences.Add(new("That is past the start of stall: it may let go at any moment."));
                break;
            case LeewayStatus.BeyondMaximum:
                sentences.Add(new("At {0} it cannot carry your {1}: it stalls before.", speed, force));
                break;
            case LeewayStatus.BeyondRange:
                sentences.Add(new("At {0} it does not reach your {1} within 25° of leeway.", speed, force));
                break;
            default:
                sentences.Add(new("At {0} the flow over it was not brought to an end, so there is no leeway to tell.", speed));
                break;
        }

        if (found.Limits.Onset is { } onset)
        {
            sentences.Add(new(
                found.Limits.IsOnsetCertain ? "It starts to stall at {0}, with {1}." : "It starts to stall at {0} or later, with {1} or more: the sections were not solved as far as their peak.",
                new(reader.Tongue.Angle(Math.Abs(onset.Flow.Leeway)), "stall-onset"),
                new(reader.Tongue.Force(Math.Abs(onset.SideForce)), "stall-onset")));
        }

        if (afloat[LoadCaseKind.GettingGoing] is { } slow)
        {
            ToldValue start = new(reader.Tongue.Speed(slow.Load.Speed), "speed");
            if (slow.UnderHull.Status is LeewayStatus.BeyondMaximum)
                sentences.Add(new("Getting going at {0} it lets go before it carries {1}.", start, new(reader.Tongue.Force(slow.Load.SideForce), "side-force")));
            else if (slow.ShareOfStall is double share)
                sentences.Add(new("Getting going at {0} it works at {1} of stall.", start, new(reader.Tongue.Number(share, 2), "of-stall")));
        }

        return sentences;
    }
}
