namespace Finwright.Design;

/// <summary>
/// One fin as its maker describes it: the content of a <c>*.fin.json</c> file. Immutable; lengths in the unit that each name carries.
/// </summary>
/// <remarks>Only <see cref="Name"/> and <see cref="Shape"/> must be given; every other group has defaults with a written reason.</remarks>
public sealed record FinDesign
{
    /// <summary>The format version that this program writes.</summary>
    public const int CurrentFormat = 2;

    /// <summary>Version of the file format.</summary>
    [Input("Version of the design file format. Older files are brought up to date when read.", Minimum = CurrentFormat, Maximum = CurrentFormat, Reason = "Written by this program.")]
    public int Format { get; init; } = CurrentFormat;

    /// <summary>Name of the fin.</summary>
    [Input("Name of the fin, as it appears on files and papers.", MaximumLength = 60)]
    public required string Name { get; init; }

    /// <summary>Free text of the maker.</summary>
    [Input("A note to yourself: what this fin is meant to try.", MaximumLength = DesignLimits.NoteLength, Lines = true, Reason = "Nothing depends on it.")]
    public string Note { get; init; } = "";

    /// <summary>Rider, board, sail and spot.</summary>
    [Input("Who sails it, on what, and where.", Reason = "A middling sailor on a middling board.")]
    public Brief Brief { get; init; } = new();

    /// <summary>Outline, sections, tip and trailing edge of the blade.</summary>
    [Input("The blade: outline, sections, tip, trailing edge, flange.")]
    public required Shape Shape { get; init; }

    /// <summary>The part inside the board's fin box and how the blade is fixed to it.</summary>
    [Input("The part inside the board's fin box, and how blade and base hold together.", Reason = "The box with the best known dimensions.")]
    public Base Base { get; init; } = new();

    /// <summary>Rods, bolts, nuts and cavities.</summary>
    [Input("Rods, bolts, nuts and cavities embedded in the print.", Reason = "No reinforcement unless asked for.")]
    public Hardware Hardware { get; init; } = new();

    /// <summary>How the fin is cut into printed parts.</summary>
    [Input("Cuts, dowels and how the parts lie on the printer.", Reason = "As few parts as the printer allows.")]
    public Parts Parts { get; init; } = new();

    /// <summary>Printer, filament and settings.</summary>
    [Input("Printer, filament, walls, infill and print allowances.", Reason = "A common mid-size printer with a 0.4 mm nozzle.")]
    public Print Print { get; init; } = new();

    /// <summary>What the fin is made of.</summary>
    [Input("Materials with their stiffness and strength, and what the bench has taught about them.", Reason = "Printed PETG, laminating epoxy, pultruded carbon and stainless steel.")]
    public Materials Materials { get; init; } = new();

    /// <summary>Resin, cooling and ports.</summary>
    [Input("Resin, room, cooling and the places where the pour goes in and air comes out.", Reason = "Slow resin in a water bath, the cautious way.")]
    public Pour Pour { get; init; } = new();

    /// <summary>What things cost.</summary>
    [Input("What material, hardware and electricity cost.", Reason = "Middling prices, from memory: write in your own.")]
    public Prices Prices { get; init; } = new();

    /// <summary>The bench test.</summary>
    [Input("The known weight hung on the finished fin, and where.", Reason = "15 kg at 40 % of the span, near where the water pushes.")]
    public Prove Prove { get; init; } = new();
}
