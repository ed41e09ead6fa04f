using Finwright.Making.Resins;

namespace Finwright.Commands;

/// <summary>Resins as <c>finwright resins --json</c> gives them.</summary>
/// <param name="MadeBy">Name and version of the program.</param>
/// <param name="Resins">The resins.</param>
internal sealed record ResinsAnswer(string MadeBy, IReadOnlyList<ResinAnswer> Resins)
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; } = "finwright-resins";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; } = 1;
}

/// <summary>One resin.</summary>
/// <param name="Name">The name by which a design calls it.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Remark">What to know when using it.</param>
/// <param name="Numbers">Its numbers.</param>
internal sealed record ResinAnswer(string Name, string Title, string Remark, IReadOnlyList<ResinNumberAnswer> Numbers)
{
    /// <summary>Takes a resin.</summary>
    public static ResinAnswer Of(ResinSystem resin) => new(
        resin.Name, resin.Title, resin.Remark,
        [.. resin.Numbers.Select(number => new ResinNumberAnswer(number.Key, number.Value.Range.Value, number.Value.Range.Low, number.Value.Range.High, number.Value.Certainty, number.Value.Source))]);
}

/// <summary>One number of a resin.</summary>
/// <param name="Field">Its name in the file, with its unit.</param>
/// <param name="Value">Value.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Certainty">How sure.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record ResinNumberAnswer(string Field, double Value, double Low, double High, Numerics.Certainty Certainty, string Source);
