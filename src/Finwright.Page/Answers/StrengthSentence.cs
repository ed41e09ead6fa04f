using Finwright.Assessment.Loaded;
using Finwright.Page.Words;
using Finwright.Strength.Joints;
using Finwright.Strength.Margins;
using Finwright.Water.Sailing;

namespace Finwright.Page.Answers;

/// <summary>What the loads do to the fin, in a few sentences.</summary>
public static class StrengthSentence
{
    // A reserve beyond this tells no more than that there is plenty.
    private const double MostReserve = 99;

    /// <summary>The sentences.</summary>
    /// <param name="loaded">The fin.</param>
    /// <param name="reader">Numbers and units.</param>
    public static IReadOnlyList<ToldSentence> Of(FinLoaded loaded, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(reader);
        if (loaded[LoadCaseKind.Cruise] is not { } cruise)
            return loaded.Problem is { } problem ? [new("How the fin bends was not worked out."), new(problem)] : [new("How the fin bends was not worked out.")];
        List<ToldSentence> sentences = [];
        ToldValue force = new(reader.Tongue.Force(cruise.Load.SideForce), "side-force");
        switch (cruise.Status)
        {
            case LoadedStatus.BeyondRange:
                return [new("The fin is far too soft: at cruise it would bend by more than {0} of its span, and no number would be honest.", new ToldValue(reader.Tongue.Percent(CaseLoaded.FarthestShare)))];
            case LoadedStatus.NotSettled:
                return [new("Load and shape do not settle at cruise: the fin is too soft, near divergence, or the flow over it was not brought to an end.")];
            case LoadedStatus.NotSolved:
                return [new("The blade could not be solved under the load of cruise.")];
            default:
                break;
        }

        double twist = cruise.Tip.Twist * (cruise.Load.SideForce < 0 ? -1 : 1);
        sentences.Add(new(
            twist >= 0 ? "With your {0} at cruise the tip bends {1} and turns {2}, giving load away." : "With your {0} at cruise the tip bends {1} and turns {2}, taking more load.",
            force,
            new(reader.Tongue.Length(Math.Abs(cruise.Tip.MidChord)), "tip-deflection"),
            new(reader.Tongue.Angle(Math.Abs(twist)), "tip-twist")));
        if (cruise.Status is LoadedStatus.NotCarried)
            sentences.Add(new("That is more than it carries before it stalls; the load is what it would be."));
        if (loaded[LoadCaseKind.Overload] is { HasNumbers: true } overload && Worst(overload) is { } worst)
        {
            sentences.Add(new(
                "In a gust or landing the most used is: {0}, {1} below the hull, at {2} of its strength.",
                new ToldValue(PeakNames.Of(worst, reader)),
                new ToldValue(reader.Tongue.Length(Math.Max(worst.Y, 0), 0)),
                new(reader.Tongue.Percent(1 / Math.Min(worst.Reserve, MostReserve)), "worst-use")));
        }

        if (cruise.Joint is { } joint)
        {
            sentences.Add(joint.Status switch
            {
                JointStatus.Closed => new("The joint at the base stays closed at cruise."),
                JointStatus.Bonded => new("The bond holds the joint at the base together at cruise."),
                JointStatus.Open => new("The joint at the base opens at cruise: {0} of its face stays pressed.", new ToldValue(reader.Tongue.Percent(joint.ContactShare), "joint-opening")),
                JointStatus.NotHeld => new("Nothing holds the joint at the base: it falls open."),
                _ => new("What the joint at the base does was not brought to an end."),
            });
        }

        return sentences;
    }

    /// <summary>The most strained part; null when nothing is strained.</summary>
    internal static StressPeak? Worst(CaseLoaded own) => own.Peaks.Where(peak => peak.Stress > 0).MinBy(peak => peak.Reserve);
}
