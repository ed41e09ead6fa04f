using Finwright.Making.Quantities;

namespace Finwright.Assessment.Made;

/// <summary>What a fin takes, costs, and how long it takes.</summary>
/// <param name="Bill">Line by line.</param>
/// <param name="Schedule">Step by step.</param>
public sealed record FinPlan(Bill Bill, MakingSchedule Schedule);
