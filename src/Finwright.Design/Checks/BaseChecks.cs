namespace Finwright.Design.Checks;

/// <summary>Whether box, fixing and rods go together.</summary>
internal static class BaseChecks
{
    public static IEnumerable<Finding> Of(FinDesign design)
    {
        Base b = design.Base;
        if (b.Box == BoxKind.Measured && b.Measured is null)
            yield return new("measurements-missing", Severity.Error, "$.base.measured", "The box is \"measured\", but no measurements are given.", "Add \"measured\" with the inside of your box, or choose another box.");
        if (b.Box != BoxKind.Measured && b.Measured is not null)
            yield return new("not-used", Severity.Caution, "$.base.measured", "Your measurements change nothing here: another kind of box is chosen.", "Set \"box\" to \"measured\", or take the measurements out.");
        if (b.Measured is MeasuredBox box)
        {
            foreach (Finding finding in MeasuredBoxChecks.Of(box))
                yield return finding;
        }

        int rods = design.Hardware.ClampRods.Count;
        if (b.Fixing == Fixing.ClampRods && rods == 0)
            yield return new("rods-missing", Severity.Error, "$.hardware.clamp_rods", "The fixing is \"clamp-rods\", but no clamp rods are given, so nothing holds the blade.", "Add \"clamp_rods\" to \"hardware\" (two are usual), or choose another fixing.");
        if (b.Fixing == Fixing.ClampRods && rods == 1)
            yield return new("one-rod", Severity.Caution, "$.hardware.clamp_rods", "A single clamp rod lets the blade turn about it.", "Add a second rod, or bond the blade to the base as well.");
        if (b.Fixing != Fixing.ClampRods && rods > 0)
            yield return new("rods-not-used", Severity.Error, "$.base.fixing", $"Clamp rods are given ({rods}), but this fixing has none, so they would not be made.", "Set \"fixing\" to \"clamp-rods\", or take the rods out.");

        bool hasBolts = b.Box switch
        {
            BoxKind.LongSlot => false,
            BoxKind.Measured => b.Measured is not { Bolts.Count: 0 },
            _ => true,
        };
        if (b.Fixing == Fixing.ThroughBolts && !hasBolts)
            yield return new("bolts-missing", Severity.Error, "$.base.fixing", "The fixing is \"through-bolts\", but this box has no bolts from the deck.", "Set \"fixing\" to \"base-only\" or \"clamp-rods\", or give the bolts of a measured box.");
        if (b.Fixing == Fixing.BaseOnly && b.Printed == BasePrinting.Separate && !design.Hardware.CarbonRods.Any(rod => rod.IntoBaseMm > 0))
            yield return new("held-by-glue-alone", Severity.Caution, "$.base.fixing", "Blade and base are printed apart and only the glue between their faces would hold the blade; it can peel off at sea.", "Let carbon rods reach into the base (\"into_base_mm\"), choose \"through-bolts\" or \"clamp-rods\", or print them \"as-one\".");
        if (b.Fixing == Fixing.ClampRods && b.Printed == BasePrinting.AsOne)
            yield return new("rods-in-one-print", Severity.Caution, "$.base.printed", "Blade and base are one print, so the clamp rods have nothing to clamp; they only reinforce.", "Print them \"separate\", or use carbon rods.");
    }
}
