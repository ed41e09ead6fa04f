using Finwright.Design;
using Finwright.Strength.Files;

namespace Finwright.Workshop.Bench;

/// <summary>Readings taken of one build on one day, with its root held in one way.</summary>
/// <param name="Id">Its number; 0 before it is kept.</param>
/// <param name="BuildId">The build.</param>
/// <param name="TakenOn">The day.</param>
/// <param name="RootHold">How the root was held.</param>
/// <param name="Note">The maker's own words.</param>
/// <param name="Readings">The readings, in their order.</param>
public sealed record BenchSession(long Id, long BuildId, DateOnly TakenOn, RootHold RootHold, string Note, IReadOnlyList<BenchReadingLine> Readings);
