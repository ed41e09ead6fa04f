namespace Finwright.Page.Scene;

/// <summary>What the fin in three dimensions shows.</summary>
public enum Surface
{
    /// <summary>The fin as it looks.</summary>
    Plain,

    /// <summary>Pressure of the water.</summary>
    Pressure,

    /// <summary>Stress in the skin.</summary>
    Stress,

    /// <summary>Bent by its load.</summary>
    Bent,

    /// <summary>Temperature when the cure is hottest.</summary>
    Warmth,

    /// <summary>Air that stays when it is poured.</summary>
    Air,

    /// <summary>Parts as they lie on the printer.</summary>
    Parts,
}
