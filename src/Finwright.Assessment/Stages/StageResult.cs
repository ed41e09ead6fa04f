using Finwright.Design;

namespace Finwright.Assessment.Stages;

/// <summary>What a stage left behind: kept together, so that a result from the cache brings its findings along.</summary>
/// <typeparam name="T">What the stage makes.</typeparam>
/// <param name="Value">What was made; null when the findings say why it could not be.</param>
/// <param name="Findings">What the stage noticed, in the order found.</param>
public sealed record StageResult<T>(T? Value, IReadOnlyList<Finding> Findings)
    where T : class;
