namespace Finwright.Papers.Words;

/// <content>The first page.</content>
public abstract partial class SheetWords
{
    /// <summary>What is made.</summary>
    public abstract string CoverSentence(string span, string area, string parts, string plates);

    /// <summary>What it takes.</summary>
    public abstract string CoverPlan(string elapsed, string work, string cost);

    /// <summary>So many checks fail.</summary>
    public abstract string Failing(int count);

    /// <summary>What to do about it.</summary>
    public abstract string FailingWhat { get; }

    /// <summary>Where the templates are and what to do before using them.</summary>
    public abstract string Beside(string ruler);

    /// <summary>Head of the safety box.</summary>
    public abstract string Safety { get; }

    /// <summary>Data sheets and law go first.</summary>
    public abstract string SheetsFirst { get; }

    /// <summary>Results are estimates.</summary>
    public abstract string Estimates { get; }

    /// <summary>The design has cautions.</summary>
    public abstract string CautionsFound(int count);

    /// <summary>Head over what does not hold.</summary>
    public abstract string ToHeed { get; }

    /// <summary>Head over what holds.</summary>
    public abstract string Holding { get; }

    /// <summary>Everything that was checked holds.</summary>
    public abstract string AllHold { get; }

    /// <summary>What was checked, in a table.</summary>
    public abstract string CheckColumn { get; }

    /// <summary>Its value.</summary>
    public abstract string ValueColumn { get; }

    /// <summary>Its limit.</summary>
    public abstract string LimitColumn { get; }
}
