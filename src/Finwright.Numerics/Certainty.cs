namespace Finwright.Numerics;

/// <summary>How sure a number is, from best to worst; shown beside it.</summary>
public enum Certainty
{
    /// <summary>From a published source that is named beside it.</summary>
    Published,

    /// <summary>Follows from stated inputs by stated mechanics.</summary>
    Derived,

    /// <summary>What makers and sailors do; no source that measured it.</summary>
    CommonPractice,

    /// <summary>Remembered, not looked up again.</summary>
    FromMemory,

    /// <summary>Our own estimate, with its reason; change it when you know better.</summary>
    Judgement,
}
