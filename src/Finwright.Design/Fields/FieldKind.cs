namespace Finwright.Design.Fields;

/// <summary>What kind of value a field of the design file holds.</summary>
public enum FieldKind
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    WholeNumber,

    /// <summary>Text.</summary>
    Text,

    /// <summary>true or false.</summary>
    Switch,

    /// <summary>One word of a fixed list.</summary>
    Word,

    /// <summary>Two numbers, [x, y].</summary>
    Point,

    /// <summary>A group of fields, in braces.</summary>
    Record,

    /// <summary>A list of values of one form.</summary>
    List,
}
