namespace Finwright.Making.Cure;

/// <summary>How finely cure is followed in time.</summary>
/// <param name="TemperatureTolerance">Error of a step in the temperature of any cell, K. A cure of a day takes 60 to 100 steps; errors add up to a few times this.</param>
/// <param name="ConversionTolerance">Error of a step in the conversion of any cell.</param>
/// <param name="LongestStep">Longest step, s: no history has longer gaps. Null for a quarter of an hour, or a twentieth of the time since the beginning where that is more.</param>
public sealed record CureOptions(double TemperatureTolerance = 0.02, double ConversionTolerance = 1e-4, double? LongestStep = null);

/// <summary>How a calculation of cure ended.</summary>
public enum CureStatus
{
    /// <summary>It reached its end.</summary>
    Done,

    /// <summary>Steps became shorter than a microsecond: the heat runs away faster than can be followed, or the case makes no sense.</summary>
    StepTooShort,

    /// <summary>No resin went into the part: it has no core, or no pour reaches it. Temperatures are those of the empty part, peaks that of the room.</summary>
    NothingPoured,
}
