using Finwright.Making.Pores;

namespace Finwright.Papers.Words;

/// <content>The pour.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Pour { get; }

    /// <summary>Its sentence.</summary>
    public abstract string PourSentence(string pores, string grams, string cups);

    /// <summary>The pour was not worked out.</summary>
    public abstract string PourNotPlanned { get; }

    /// <summary>No part has room for resin.</summary>
    public abstract string NothingPoured { get; }

    /// <summary>Lay everything out.</summary>
    public abstract StepWords LayOut { get; }

    /// <summary>Bring the resin to its temperature.</summary>
    public abstract StepWords WarmResin(string resin, string room);

    /// <summary>Get the bath ready.</summary>
    public abstract StepWords FillBath(string temperature);

    /// <summary>How to mix.</summary>
    public abstract StepWords HowToMix(string cup);

    /// <summary>What limits a cup.</summary>
    public abstract string LimitedBy(BatchLimit limit);

    /// <summary>How a part is held.</summary>
    public abstract StepWords Hold(string part, string attitude);

    /// <summary>What the picture of a pour shows.</summary>
    public abstract string PourCaption(string part);

    /// <summary>Number of a port.</summary>
    public abstract string PortColumn { get; }

    /// <summary>Its name.</summary>
    public abstract string NameColumn { get; }

    /// <summary>What it is for.</summary>
    public abstract string RoleColumn { get; }

    /// <summary>Its diameter.</summary>
    public abstract string DiameterColumn { get; }

    /// <summary>How deep it is drilled, from the skin.</summary>
    public abstract string DepthColumn { get; }

    /// <summary>Feed or vent.</summary>
    public abstract string Role(bool isFeed);

    /// <summary>Drill the ports.</summary>
    public abstract StepWords DrillPorts(string part);

    /// <summary>The ports are suggested only.</summary>
    public abstract string PortsSuggested { get; }

    /// <summary>Put tube and funnel on.</summary>
    public abstract StepWords SetReservoir(string millilitres, string head);

    /// <summary>The syringe goes onto the feed.</summary>
    public abstract StepWords SetSyringe(string head);

    /// <summary>Mix and pour cup by cup.</summary>
    public abstract StepWords PourCups(string part, string cups, string total, string pouring);

    /// <summary>How long a cup can be worked.</summary>
    public abstract string WorkingTime(string time);

    /// <summary>How long a cup can be worked is not known.</summary>
    public abstract string WorkingTimeUnknown { get; }

    /// <summary>How long the pores need.</summary>
    public abstract string Filling(string time);

    /// <summary>How long the pores need is not known.</summary>
    public abstract string FillingUnknown { get; }

    /// <summary>Number of a cup.</summary>
    public abstract string CupColumn { get; }

    /// <summary>Resin.</summary>
    public abstract string ResinColumn { get; }

    /// <summary>Hardener.</summary>
    public abstract string HardenerColumn { get; }

    /// <summary>Both.</summary>
    public abstract string MixColumn { get; }

    /// <summary>When it was mixed.</summary>
    public abstract string MixedAtColumn { get; }

    /// <summary>When it was poured.</summary>
    public abstract string PouredAtColumn { get; }

    /// <summary>How sure the volume is.</summary>
    public abstract string PoresRange(string pores, string total);

    /// <summary>Tilt, rock and tap.</summary>
    public abstract StepWords Rock { get; }

    /// <summary>All air goes out.</summary>
    public abstract string NoAir { get; }

    /// <summary>So much air stays.</summary>
    public abstract string AirStays(string millilitres, string share);

    /// <summary>Another attitude keeps less air.</summary>
    public abstract string AirBetter(string attitude, string millilitres);

    /// <summary>Rocking between two attitudes keeps less air.</summary>
    public abstract string AirRocking(string first, string second, string millilitres);

    /// <summary>Top it up.</summary>
    public abstract StepWords TopUp { get; }

    /// <summary>The pours come one after the other.</summary>
    public abstract string Staged(int pours);

    /// <summary>Which pour.</summary>
    public abstract string StageColumn { get; }

    /// <summary>Up to which height.</summary>
    public abstract string LevelColumn { get; }

    /// <summary>How long after the first.</summary>
    public abstract string AfterColumn { get; }

    /// <summary>How stages are done.</summary>
    public abstract StepWords PourStages { get; }

    /// <summary>What becomes of leftovers.</summary>
    public abstract StepWords Leftovers { get; }
}
