using Finwright.Design;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>What came of reading a material file.</summary>
/// <param name="Material">The material; null when anything was wrong.</param>
/// <param name="Findings">Everything found.</param>
public sealed record MaterialReading(Material? Material, IReadOnlyList<Finding> Findings);
