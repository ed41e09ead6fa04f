using Finwright.Design;

namespace Finwright.Workshop.Reviewing;

/// <summary>How a root was held, within a sentence.</summary>
internal static class HeldWords
{
    /// <summary>For example "clamped".</summary>
    public static string Of(RootHold hold) => hold switch
    {
        RootHold.Joint => "held as in the board",
        RootHold.Elastic => "held elastically",
        RootHold.Clamped => "clamped",
        _ => throw new ArgumentOutOfRangeException(nameof(hold), hold, "Unknown hold."),
    };
}
