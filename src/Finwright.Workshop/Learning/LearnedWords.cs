namespace Finwright.Workshop.Learning;

/// <summary>What was learned, in words.</summary>
public static class LearnedWords
{
    /// <summary>The name of a quantity.</summary>
    public static string Name(LearnedQuantity quantity) => quantity switch
    {
        LearnedQuantity.WallStiffness => "Stiffness of the walls",
        LearnedQuantity.CoreStiffness => "Stiffness of the core",
        LearnedQuantity.Plastic => "Plastic laid down",
        LearnedQuantity.Resin => "Resin in the pores",
        LearnedQuantity.PrintTime => "Time on the printer",
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "Unknown quantity."),
    };
}
