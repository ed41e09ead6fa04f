namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Bonding => "Dry fit and bonding";

    public override string BondingSentence => "What does not go in dry does not go in wet: try everything first, then roughen, wipe and bond.";

    public override StepWords CleanParts => new("Take off brim, strings and the flare of the first layer with a scraper", "They keep parts from closing.");

    public override StepWords GreaseThreads => new("Grease the threads of the bolts and screw them in, or fill bores and nuts with wax; tape their mouths", "Resin that gets into a nut cannot be got out.");

    public override StepWords TryRods => new("Push every rod in dry, to its mark, and out again", "A rod that jams half way in wet resin stays there. Scrape the bore, never force it.");

    public override StepWords BondRods => new("Roughen the rods, wipe them, coat rod and bore with resin, push in slowly while turning, wipe off what comes out", "A bond holds on rough, clean carbon; turning drives the air out.");

    public override StepWords TryBase => new("Put base and blade together dry with their bolts or rods", "The faces must close all round, and bolts must turn by hand.");

    public override StepWords TryLids => new("Lay each lid into its recess", "It must lie flush with the skin and leave room for a bead of sealant.");

    public override StepWords BondHardens => new("Let the bonds harden as the data sheet of the adhesive says", "A bond that moves before it has set does not hold.");

    public override string NoDowels => "no dowels";

    public override string Sealing => "Seal and look for leaks";

    public override string SealingSentence => "A leak found now costs a brush stroke, a leak found later costs the pour.";

    public override StepWords FirstCoat => new("Brush a thin coat of clear lacquer or thin epoxy over the whole skin; leave the dimples of the ports to see", "It closes the small gaps between lines and layers.");

    public override StepWords SecondCoat => new("When it is dry, brush the second coat across the first; let it dry over night", "Two thin coats close what one leaves open.");

    public override StepWords DrillFeeds => new("Drill the feed, port 1, of each part as the table of the pour says", "The test needs one way in; the other ports stay closed for now.");

    public override StepWords LeakTest => new("Brush soapy water over the skin, or hold the part under water; put the empty syringe on port 1 and press it gently by hand", "Bubbles show every leak. Never with a compressor: a part can burst.");

    public override StepWords MendLeaks => new("Mark the leaks, dry the part, brush them over, test again; then let it dry warm for a night", "Water in the pores keeps resin from hardening.");

    public override StepWords TryBolts(string bore) => new($"Screw every bolt through its bore into its nut by hand; drill the bore out to {bore} if it binds", "A nut that sits crooked must be found before it is buried.");

    public override StepWords CutRods(string lengths) => new($"Cut the rods to length, wet, with mask and gloves: {lengths}", "Carbon splinters and dust go under the skin and into the lungs.");

    public override StepWords TryPieces(int pieces, string dowels) => new($"Put the {pieces} pieces of the blade together dry with {dowels}; sight along both edges and lay the blade on the outline template", "A blade bonded crooked stays crooked.");

    public override StepWords BondPieces(string gap) => new($"Roughen and wipe the cut faces, bond them with thickened epoxy, a gap of {gap}, hold them straight with tape and boards", "A bond of that thickness is strongest (common practice, no source).");

    public override StepWords TapeOpenings(bool hasSlot) => new(hasSlot ? "Tape the mouths of bores and pockets, and the slot of the strip" : "Tape the mouths of bores and pockets", "Lacquer and resin must stay out of them.");
}
