namespace Finwright.Papers.Words;

/// <content>What to buy, cut and lay out.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Needs { get; }

    /// <summary>Its sentence.</summary>
    public abstract string NeedsSentence { get; }

    /// <summary>Head over the cut list.</summary>
    public abstract string CutList { get; }

    /// <summary>Nothing is bought or cut.</summary>
    public abstract string CutNothing { get; }

    /// <summary>What.</summary>
    public abstract string ItemColumn { get; }

    /// <summary>How many.</summary>
    public abstract string CountColumn { get; }

    /// <summary>How long.</summary>
    public abstract string LengthColumn { get; }

    /// <summary>How exactly.</summary>
    public abstract string ToleranceColumn { get; }

    /// <summary>Where it goes.</summary>
    public abstract string PlaceColumn { get; }

    /// <summary>May be cut short, never longer.</summary>
    public abstract string CutShort(string atMost);

    /// <summary>How exactly a bolt must be.</summary>
    public abstract string BoltTolerance { get; }

    /// <summary>How exactly a rod with nuts must be.</summary>
    public abstract string RodTolerance(string atMost);

    /// <summary>By the box in the board.</summary>
    public abstract string ByBox { get; }

    /// <summary>By the template.</summary>
    public abstract string ByTemplate { get; }

    /// <summary>How long bolts must be in all.</summary>
    public abstract string BoltNote { get; }

    /// <summary>Head over plastic and resin.</summary>
    public abstract string Materials { get; }

    /// <summary>How much.</summary>
    public abstract string AmountColumn { get; }

    /// <summary>What to know of it.</summary>
    public abstract string RemarkColumn { get; }

    /// <summary>Filament of this name.</summary>
    public abstract string Filament(string name);

    /// <summary>So much of a spool.</summary>
    public abstract string OfSpool(string share, string spool);

    /// <summary>Resin with hardener of this name, mixed.</summary>
    public abstract string Mix(string name);

    /// <summary>So much resin and hardener.</summary>
    public abstract string MixOf(string resin, string hardener);

    /// <summary>The ratio is not known.</summary>
    public abstract string MixByDataSheet { get; }

    /// <summary>Nothing is poured.</summary>
    public abstract string NoMix { get; }

    /// <summary>What is not counted.</summary>
    public abstract string MaterialsNote { get; }

    /// <summary>Head over tools.</summary>
    public abstract string Tools { get; }

    /// <summary>For the skin.</summary>
    public abstract StepWords ToolsBody { get; }

    /// <summary>For mixing.</summary>
    public abstract StepWords ToolsMixing(string cups, string scales);

    /// <summary>For the pour.</summary>
    public abstract StepWords ToolsPouring(string drill);

    /// <summary>Against leaks.</summary>
    public abstract StepWords ToolsSealing { get; }

    /// <summary>For the bath.</summary>
    public abstract StepWords ToolsBath(string level);

    /// <summary>For a hot cup.</summary>
    public abstract StepWords ToolsTray { get; }

    /// <summary>For bonding.</summary>
    public abstract StepWords ToolsBonding { get; }

    /// <summary>For sanding.</summary>
    public abstract StepWords ToolsSanding { get; }

    /// <summary>For the box.</summary>
    public abstract StepWords ToolsFitting { get; }

    /// <summary>For the bench.</summary>
    public abstract StepWords ToolsBench(string mass, string gauge);
}
