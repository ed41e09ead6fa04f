namespace Finwright.Page.Explaining;

/// <summary>What the results of printing and pouring are.</summary>
internal static class MakingExplanations
{
    public static IReadOnlyDictionary<string, Explanation> All { get; } = new Dictionary<string, Explanation>(StringComparer.Ordinal)
    {
        ["print-time"] = new(
            "print time",
            "How long the printer is busy with the plate, without the stops at which you put nuts in.",
            "Layer by layer: lengths of walls, infill and travel at the machine's speeds, its acceleration and its least time for a layer.",
            "Printers differ: heating and homing are not in it, and speeds are what you say of your machine. A motion file of your own tells it better.",
            "Derived; speeds are given."),
        ["resin-mass"] = new(
            "resin to mix",
            "What fills the pores, what stands on the ports, and what stays in cup and tube.",
            "The part on a grid, its pores cell by cell; losses as given.",
            "A few per cent of the pores; infill that is laid may be a tenth more or less than asked.",
            "Derived; losses are judgement."),
        ["trapped-air"] = new(
            "trapped air",
            "Share of the pores in which air has no way up and out in this position.",
            "From every cell upward through the pores to a port or a vent.",
            "Good for where, less for how much: bubbles that stick to walls are not in it.",
            "Derived."),
        ["fill-time"] = new(
            "filling time",
            "How long the resin takes through the pores under its own head.",
            "Flow through a gyroid of this infill against the resin's viscosity as it warms and thickens.",
            "A factor of two either way.",
            "Darcy's law; permeability for 5 to 30 % infill."),
        ["cure-peak"] = new(
            "warmest of the cure",
            "Highest temperature inside while the resin hardens. Walls soften beyond the glass transition of the print; a pour that runs away smokes and burns: never leave it alone before it has passed.",
            "Heat of the reaction against conduction and cooling, part by part.",
            "The range beside it is for a rate from half to twice and cooling 30 % more or less. A cup test of your own resin narrows it; the resin's data sheet goes before it.",
            "Kinetics of the resin with their ranges; cooling by handbook formulas, from memory."),
        ["water-time"] = new(
            "time in the water",
            "How long the part must stay in the bath so that it does not warm up again when it comes out.",
            "The cure followed on in air from every moment.",
            "At the warm end of the range, on a coarser grid; the bath is taken to keep its temperature.",
            "Derived."),
    };
}
