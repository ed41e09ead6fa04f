namespace Finwright.Geometry.Solids;

/// <summary>What one solid kernel may use. Beyond it a call ends in a <see cref="SolidException"/> and the kernel stays usable.</summary>
/// <param name="MemoryBytes">Memory for solids. A fin with all its features needs some 50 MB.</param>
/// <param name="Triangles">Triangles of any one solid, given, in between or finished. A fin has 20,000 to 200,000.</param>
public sealed record KernelLimits(long MemoryBytes = 1L << 30, int Triangles = 1_500_000);
