namespace Finwright.Design;

/// <summary>
/// What the design file says about one of its fields: meaning, range and why the default is what it is.
/// The schema, the range checks and the documentation are all read from here, so they cannot disagree.
/// On a word of a list it only says what the word means.
/// </summary>
/// <param name="meaning">One sentence for the person who fills in the field.</param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Field)]
public sealed class InputAttribute(string meaning) : Attribute
{
    /// <summary>One sentence for the person who fills in the field.</summary>
    public string Meaning { get; } = meaning;

    /// <summary>Smallest value accepted, in the field's own unit; NaN when there is no lower limit.</summary>
    public double Minimum { get; init; } = double.NaN;

    /// <summary>Largest value accepted, in the field's own unit; NaN when there is no upper limit.</summary>
    public double Maximum { get; init; } = double.NaN;

    /// <summary>Why the default is what it is; empty only for a field that has no default (it must be given) or a list.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Most characters of a text or most items of a list; 0 for the usual limit of <see cref="DesignLimits"/>.</summary>
    public int MaximumLength { get; init; }

    /// <summary>Whether a text may have several lines.</summary>
    public bool Lines { get; init; }
}
