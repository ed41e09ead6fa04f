namespace Finwright.Assessment;

/// <summary>How far a design is worked out.</summary>
public enum AssessmentDepth
{
    /// <summary>Outline and sections only: the numbers of the planform, at once.</summary>
    Shape,

    /// <summary>Everything up to the parts on the bed: seconds.</summary>
    Parts,
}
