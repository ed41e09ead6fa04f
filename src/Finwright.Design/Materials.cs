namespace Finwright.Design;

/// <summary>How the root is taken to be held when bending and breaking are worked out.</summary>
public enum RootHold
{
    /// <summary>As the fixing holds it: rods, bolts and contact that can open, and the give of the base in its box.</summary>
    [Input("As the fixing holds it: rods, bolts and contact that can open, and the give of the base in its box.")]
    Joint,

    /// <summary>By a base that gives a little in its box, with a joint that never opens.</summary>
    [Input("By a base that gives a little in its box, with a joint that never opens.")]
    Elastic,

    /// <summary>Rigidly, along the whole root.</summary>
    [Input("Rigidly, along the whole root, as in a bench block cast round it.")]
    Clamped,
}

/// <summary>What the fin is made of, and what the bench has taught about it.</summary>
public sealed record Materials
{
    /// <summary>The printed plastic.</summary>
    [Input("The printed plastic.", Reason = "Printed PETG, with the range that data sheets give.")]
    public MaterialChoice Printed { get; init; } = new();

    /// <summary>The resin in the pores.</summary>
    [Input("The resin in the pores.", Reason = "A room-temperature laminating epoxy, with the range that data sheets give.")]
    public MaterialChoice Resin { get; init; } = new();

    /// <summary>Print and resin together inside the walls.</summary>
    [Input("The filled inside of the blade, when it was measured by itself.", Reason = "Left out: mixed from plastic and resin by the share of the infill.")]
    public CoreChoice? Core { get; init; }

    /// <summary>Carbon rods.</summary>
    [Input("The carbon rods.", Reason = "Pultruded rod, fibres along it.")]
    public MaterialChoice Rod { get; init; } = new();

    /// <summary>Bolts and threaded rods.</summary>
    [Input("The bolts and threaded rods.", Reason = "Stainless A4-70 stands salt water.")]
    public MaterialChoice Bolt { get; init; } = new();

    /// <summary>The sheet of the strip.</summary>
    [Input("The sheet of the flexible strip.", Reason = "PETG sheet bonds to the print and bends far.")]
    public MaterialChoice Sheet { get; init; } = new();

    /// <summary>Whether resin bonds the blade to a base printed apart.</summary>
    [Input("Whether resin bonds the blade to a base that was printed apart.", Reason = "A bond may fail unseen; leave it out of the reckoning unless it was proved.")]
    public bool RootBonded { get; init; }

    /// <summary>Factor on the stiffness of the walls that the bench showed.</summary>
    [Input("What the bench showed of the walls: measured stiffness over computed.", Minimum = 0.2, Maximum = 5, Reason = "Not measured yet.")]
    public double WallFactor { get; init; } = 1;

    /// <summary>Standard deviation of that factor, %; null when it was not measured.</summary>
    [Input("How far that factor may be off (one standard deviation).", Minimum = 0.1, Maximum = 100, Reason = "Left out: not measured; the range of the material counts.")]
    public double? WallFactorDeviationPercent { get; init; }

    /// <summary>Factor on the stiffness of the core that the bench showed.</summary>
    [Input("What the bench showed of the filled inside: measured stiffness over computed.", Minimum = 0.2, Maximum = 5, Reason = "Not measured yet.")]
    public double CoreFactor { get; init; } = 1;

    /// <summary>Standard deviation of that factor, %; null when it was not measured.</summary>
    [Input("How far that factor may be off (one standard deviation).", Minimum = 0.1, Maximum = 100, Reason = "Left out: not measured; the range of the materials counts.")]
    public double? CoreFactorDeviationPercent { get; init; }
}

/// <summary>A material by name or from a file, with values of the maker's own in place of its own.</summary>
public sealed record MaterialChoice
{
    /// <summary>Name of a material of the library.</summary>
    [Input("Name of a material that Finwright knows (finwright materials lists them).", MaximumLength = 60, Reason = "Left out: the usual one for its place.")]
    public string? Material { get; init; }

    /// <summary>File of a material beside the design.</summary>
    [Input("Name of a material file of your own beside the design, instead of a known name.", MaximumLength = 120, Reason = "Left out: a known material.")]
    public string? File { get; init; }

    /// <summary>Content of a material file.</summary>
    [Input("The text of a material file, to keep the material within the design. Taken from the file when one is named.", MaximumLength = 20_000, Lines = true, Reason = "Left out: a known material.")]
    public string? Content { get; init; }

    /// <summary>Young's modulus, GPa; of a print, along the layers.</summary>
    [Input("Young's modulus; of a print, along its layers.", Minimum = 0.01, Maximum = 1000, Reason = "Left out: the material's own.")]
    public double? ModulusGpa { get; init; }

    /// <summary>Young's modulus across the layers of a print, GPa.</summary>
    [Input("Young's modulus across the layers of a print.", Minimum = 0.01, Maximum = 1000, Reason = "Left out: the material's own, or as along the layers when that is given.")]
    public double? ModulusAcrossGpa { get; init; }

    /// <summary>Poisson's ratio.</summary>
    [Input("Poisson's ratio.", Minimum = 0, Maximum = 0.49, Reason = "Left out: the material's own.")]
    public double? PoissonRatio { get; init; }

    /// <summary>Strength, MPa; of a print, along the layers.</summary>
    [Input("Tensile strength; of a print, along its layers; of a bolt, where it yields.", Minimum = 0.1, Maximum = 5000, Reason = "Left out: the material's own.")]
    public double? StrengthMpa { get; init; }

    /// <summary>Strength across the layers of a print, MPa.</summary>
    [Input("Tensile strength across the layers of a print.", Minimum = 0.1, Maximum = 5000, Reason = "Left out: the material's own, or as along the layers when that is given.")]
    public double? StrengthAcrossMpa { get; init; }

    /// <summary>Density, kg/m³.</summary>
    [Input("Density.", Minimum = 100, Maximum = 20_000, Reason = "Left out: the material's own.")]
    public double? DensityKgPerM3 { get; init; }

    /// <summary>How far the values given here may be off, %.</summary>
    [Input("How far the values given here may be off, either way.", Minimum = 0, Maximum = 80, Reason = "What a careful test of one's own reaches (judgement).")]
    public double RangePercent { get; init; } = 10;
}

/// <summary>The filled inside of the blade as one material.</summary>
public sealed record CoreChoice
{
    /// <summary>Young's modulus, GPa.</summary>
    [Input("Young's modulus.", Minimum = 0.01, Maximum = 100)]
    public required double ModulusGpa { get; init; }

    /// <summary>Poisson's ratio.</summary>
    [Input("Poisson's ratio.", Minimum = 0, Maximum = 0.49, Reason = "Between PETG and epoxy (from memory).")]
    public double PoissonRatio { get; init; } = 0.38;

    /// <summary>Tensile strength, MPa.</summary>
    [Input("Tensile strength.", Minimum = 0.1, Maximum = 1000, Reason = "Left out: the weaker of plastic across its layers and resin.")]
    public double? StrengthMpa { get; init; }

    /// <summary>Density, kg/m³.</summary>
    [Input("Density.", Minimum = 50, Maximum = 5000, Reason = "Left out: mixed from plastic and resin.")]
    public double? DensityKgPerM3 { get; init; }

    /// <summary>How far these values may be off, %.</summary>
    [Input("How far these values may be off, either way.", Minimum = 0, Maximum = 80, Reason = "What a careful test of one's own reaches (judgement).")]
    public double RangePercent { get; init; } = 10;
}
