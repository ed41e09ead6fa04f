namespace Finwright.Assessment;

/// <summary>How far a design is worked out.</summary>
public enum AssessmentDepth
{
    /// <summary>Outline and sections only: the numbers of the planform, at once.</summary>
    Shape,

    /// <summary>What the fin does when it sails, and the verdicts on it: half a minute for sections never seen before, else at once.</summary>
    Water,

    /// <summary>The fin as a structure that can be loaded: at once.</summary>
    Structure,

    /// <summary>What the bench should show: at once.</summary>
    Bench,

    /// <summary>Water, and what its loads do to the fin.</summary>
    Strength,

    /// <summary>Everything up to the parts on the bed: seconds.</summary>
    Parts,

    /// <summary>Parts, and how they are printed: seconds.</summary>
    Print,

    /// <summary>Print, and how the parts are poured: seconds.</summary>
    Pour,

    /// <summary>Pour, how it cures, and what all of it takes: half a minute.</summary>
    Cure,

    /// <summary>Water, strength, parts, print, pour and cure.</summary>
    Everything,
}
