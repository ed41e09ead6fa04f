using Finwright.Design;
using Finwright.Page.Words;
using Finwright.Strength.Bench;
using Finwright.Workshop.Learning;

namespace Finwright.Page.Bench;

/// <summary>Words of the bench for the reader.</summary>
internal static class BenchWords
{
    /// <summary>How a root is held.</summary>
    public static string Held(Reader reader, RootHold hold) => hold switch
    {
        RootHold.Joint => reader["as in the board"],
        RootHold.Elastic => reader["base gives, joint whole"],
        RootHold.Clamped => reader["clamped rigidly"],
        _ => throw new ArgumentOutOfRangeException(nameof(hold), hold, "Unknown hold."),
    };

    /// <summary>A part whose stiffness was learned.</summary>
    public static string Part(Reader reader, StiffnessPart part) => part switch
    {
        StiffnessPart.Walls => reader["walls"],
        StiffnessPart.Core => reader["core"],
        StiffnessPart.Root => reader["root, as held here"],
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Unknown part."),
    };

    /// <summary>What a factor multiplies.</summary>
    public static string Quantity(Reader reader, LearnedQuantity quantity) => reader[LearnedWords.Name(quantity)];

    /// <summary>A factor with its range.</summary>
    public static string Factor(Reader reader, double value, double low, double high) =>
        $"{reader.Tongue.Number(value, 2)} ({reader.Tongue.Words.Numbers.Range(reader.Tongue.Number(low, 2), reader.Tongue.Number(high, 2))})";
}
