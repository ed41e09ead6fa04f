using Finwright.Assessment.Figures;
using Finwright.Design;
using Finwright.Strength.Margins;

namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Prove => "Prove it on the bench";

    public override string ProveReason => "Why it could not be predicted, in the words of the assessment:";

    public override string BenchCaption => "The fin on the bench: where the weight hangs, and where to read.";

    public override StepWords FullCure => new("Wait for the full cure, five to seven days in a warm room", "Cool-cured epoxy gains strength for days.");

    public override StepWords StandClear => new("Hang the weight a hand above something soft; wear eye cover, stand clear of the tip, keep feet away", "A fin that breaks throws pieces and drops the weight.");

    public override StepWords ReadBefore => new("Read every place without the weight and write it under \"before\"", "Only the difference counts.");

    public override StepWords ReadLoaded => new("After half a minute read every place again, under \"loaded\"", "What moves later is creep.");

    public override StepWords ReadAfter => new("Take the weight off, wait half a minute, read again, under \"after\"", "What stays is creep or a loose root, not stiffness.");

    public override StepWords StopWhen => new("Stop when it cracks or clicks, when a reading passes its line, or when it does not come back", "Then do not sail it: look for the crack, mend or make it new, and prove it again.");

    public override string ReadAtColumn => "place";

    public override string RangeColumn => "range";

    public override string PassColumn => "pass line";

    public override string BeforeColumn => "before";

    public override string LoadedColumn => "loaded";

    public override string AfterwardsColumn => "after";

    public override string DifferenceColumn => "difference";

    public override string TipTurn => "turn of the tip, F less D";

    public override string LoadTurn => "turn at the weight, C less A";

    public override string TurnNote => "Turn: the difference of the two readings over the chord between them; positive when the trailing edge goes farther down.";

    public override string PassNote => "The range holds what material, print and root leave open. Beyond the pass line the fin is weaker than worked out: do not sail it. Below the range it is stiffer; look whether weight and place are right.";

    public override IReadOnlyList<string> ProveBlanks => ["Weight, measured", "Sound heard, Hz", "Cracks or clicks"];

    public override string ReadingsFor => "Put the readings into a CSV file as docs/bench-readings.md tells: finwright bench fit then says how stiff this fin really is, and every later answer counts with it.";

    public override string BendCaption => "Deflection along the span under the weight, as predicted.";

    public override string BenchTitle(string fin) => $"{fin}: the bench test";

    public override BenchFigureWords BenchCurves => BenchFigureWords.English;

    public override string Sail => "First sail";

    public override string SailSentence => "Near the shore, in little wind, not farther out than you can swim back.";

    public override string SailHeed => "To heed on the water";

    public override IReadOnlyList<StepWords> SailSteps =>
    [
        new("Look over fin, joint, strip and bolts; tighten the bolts once more", "What is loose on land is lost at sea."),
        new("Look for swimmers and for the depth of the water before you go", "A fin cuts, and a strike on the ground breaks fin or box."),
        new("Sail a few short runs in water where you can stand, on both tacks", "A fin that fails here costs a walk."),
        new("Come in and look: cracks at the root, play in the box, strip loose, water inside", "The first hour shows what the bench did not."),
        new("Rinse it, dry it, weigh it and write the weight down", "A fin that grows heavier drinks water."),
    ];

    public override IReadOnlyList<string> SailBlanks => ["Date, spot, wind", "Board, sail, rider", "Getting going", "At speed", "Both tacks alike", "Hum, spin-out, weed", "After it: cracks, play, weight", "What to change"];

    public override string ProveSentence(string mass, string distance, string where, string tip) => $"{mass} hung {distance} below the hull plane, {where}, should move the middle of the tip by {tip}.";

    public override string ProveUnknown(string mass, string distance, string where) => $"What {mass} hung {distance} below the hull plane, {where}, should show could not be predicted. The test is done all the same: it must come back fully and without a sound.";

    public override string Where(ChordPlace place) => place switch
    {
        ChordPlace.LeadingEdge => "on the leading edge",
        ChordPlace.TrailingEdge => "on the trailing edge",
        _ => "at mid-chord",
    };

    public override StepWords HoldBase(RootHold hold) => hold switch
    {
        RootHold.Clamped => new("Clamp base and root rigidly along their whole length, blade level", "The prediction takes the root as held rigidly; a base that gives way shows more."),
        RootHold.Elastic => new("Hold the base as in the board, in a box or a block cut to its shape, blade level", "The prediction lets the base give in its box and takes the joint as whole."),
        _ => new("Hold the base as in the board, in a box or a block cut to its shape, bolts tightened as there, blade level", "The prediction lets the base give in its box and a joint open."),
    };

    public override StepWords Hang(string mass, string distance, string where) => new($"Hang {mass} {distance} below the hull plane, {where}, slowly, by the loop of cord", "A weight that is dropped loads the fin twice.");

    public override string FirstCrack(string times, string part, string depth) => $"The first crack is to be expected at {times} times this weight, {part}, {depth} below the hull plane.";

    public override string Stressed(StressedPart part) => part switch
    {
        StressedPart.WallAcrossLayers => "in the wall, between its layers",
        StressedPart.WallAlongLayers => "in the wall, along its layers",
        StressedPart.Core => "in the filled inside",
        StressedPart.Rod => "in a carbon rod",
        StressedPart.RodBond => "at the bond of a carbon rod",
        StressedPart.Cut => "at the bond of a cut",
        _ => "at the corner between blade and base",
    };

    public override string BendsFar(string share, string limit) => $"The blade bends by {share} of its span: beyond {limit} it truly moves less than predicted. Hang less weight to compare.";

    public override string PredictedColumn(string unit) => $"predicted, {unit}";

    public override string Place(string letter, string where, bool isTip) => isTip ? $"{letter}: tip, {where}" : $"{letter}: at the weight, {where}";

    public override StepWords Tap(string frequencies) => new($"Tap the held fin with a knuckle and listen, or let a telephone count: first tones near {frequencies}", "A lower tone is a softer or looser fin; a rattle is a loose one.");
}
