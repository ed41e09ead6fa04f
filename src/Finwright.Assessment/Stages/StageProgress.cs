namespace Finwright.Assessment.Stages;

/// <summary>How far the work has come.</summary>
/// <param name="Stage">Name of the stage at work.</param>
/// <param name="Fraction">Share of the whole that is done, 0 to 1; never falls.</param>
/// <param name="Words">What is being done, for a person.</param>
public readonly record struct StageProgress(string Stage, double Fraction, string Words);
