namespace Finwright.Page.Explaining;

/// <summary>What the results of the loaded fin are.</summary>
internal static class StrengthExplanations
{
    private const string Plate = "A plate of walls, core and rods on the blade's outline, held by the base in its box; load and shape are brought together until both agree.";

    private const string PlateSource = "Reissner, 1945, and Mindlin, 1951, from memory; compared with solid finite elements.";

    public static IReadOnlyDictionary<string, Explanation> All { get; } = new Dictionary<string, Explanation>(StringComparer.Ordinal)
    {
        ["tip-deflection"] = new(
            "bend at the tip",
            "How far the middle of the tip moves sideways. Some bend feels soft and is wanted; much bend sails on another outline than was drawn.",
            Plate,
            "Stiffness is good to some 15 to 20 % before a bench test, to half of that after one.",
            PlateSource),
        ["tip-twist"] = new(
            "twist at the tip",
            "How far the tip's section turns under load. Positive: the trailing edge goes farther and the tip gives load away, which forgives gusts. Negative: it takes more load.",
            Plate,
            "Less sure than the bend: it hangs on shear stiffness, which scatters more.",
            PlateSource),
        ["bent-leeway"] = new(
            "leeway of the bent fin",
            "Leeway at which the bent and twisted fin carries the load; beside it, what a fin that does not bend would need.",
            "The vortices move with the blade, to the first order in its slopes.",
            "The leeway is good to about 15 %; the difference that bending makes is as sure as the bend.",
            "Irons and Tuck, 1969, from memory, for the steps."),
        ["force-by-bending"] = new(
            "side force by bending",
            "How much side force bending costs or gains at the leeway of a stiff fin.",
            "A second answer of bent fin and water at that leeway.",
            "As sure as the bend and the twist.",
            ""),
        ["root-moment"] = new("moment at the hull", "What the side force does at the hull plane: it bends root, joint and box.", "Every strip's force times its depth.", "As sure as the side force: 15 to 20 %.", ""),
        ["worst-use"] = new(
            "strength that is used",
            "Greatest stress over what the part bears, at its most strained place: 100 % breaks. 50 % or less in a gust is ample for a print that was not tested.",
            "Stresses of the plate, clear of edges and clamp, against strengths along and across the layers.",
            "Strength of prints scatters by a third; a hollow in the pour is not in it. An estimate, never a certificate: hang a weight on the fin before you sail it.",
            "Strengths of materials with their ranges; factors from memory and judgement."),
        ["reserve"] = new(
            "reserve",
            "By how much the load may grow before something gives: 2 or more is ample, below 1.5 fails.",
            "Strength over greatest stress, part by part.",
            "A third either way for prints; hang a weight on the fin before you sail it.",
            "Limits from memory and judgement: 3 to 4 on the steady load is asked of bonded plastic that was not tested."),
        ["joint-opening"] = new(
            "joint between blade and base",
            "How much of the faces stays pressed together. A joint that opens pumps water, hums and works its bolts loose.",
            "Pressure where the faces touch and nothing elsewhere, with the pull of bolts and rods, as in a cracked reinforced section.",
            "The pull of hand-tight bolts varies by half either way.",
            "Closed forms for cracked sections; gauge length is judgement."),
        ["torque"] = new(
            "torque of a bolt",
            "From what keeps the joint closed in a gust to what stays off yield, pull-out, bearing, burst and spreading of the box.",
            "Thread friction low for the greatest, high for the least; strength of plastic that was not tested divided by 3.",
            "A factor of two. The board's and the bolt's makers' data go before it; tighten by hand with a short key and stop when the base seats.",
            "Common practice and memory; no source."),
        ["divergence"] = new(
            "speed of divergence",
            "Speed at which the load would twist the blade faster than it resists: it would break at once. Blades that are raked aft have none, or one far beyond any board.",
            "The plate's twist per load against the lifting surface's load per twist.",
            "About 15 %; within 0.3 % of closed forms for straight cantilevers.",
            "Bisplinghoff, Ashley and Halfman, 1955, from memory."),
        ["strike-speed"] = new(
            "strike that is borne",
            "Speed at which the tip may strike hard ground before blade or joint gives. No plastic fin stops a planing board on rock; the fin should give before the box does.",
            "By energy: moving mass against the give of blade and joint, nothing damped.",
            "Half to twice; ground that gives, and a rider who flies off, make it better.",
            "Closed form; mass and friction are judgement."),
        ["frequency-air"] = new(
            "frequency in air",
            "How fast the blade swings by itself when you tap it, held in its box.",
            "Of the plate with its mass, by subspace iteration.",
            "Within 1 % of solid elements for known stiffness; frequency goes with the root of the stiffness.",
            "Compared with converged series for thin plates."),
        ["frequency-water"] = new(
            "frequency in water",
            "The same in water, which swings along and makes it slower.",
            "Vortex rings on the blade give the water that goes along, with an endless hull above.",
            "Within 1 % of another method; a real hull takes a little less water along.",
            "Lamb, 1932, from memory, for the disc; boundary elements."),
        ["eddies"] = new(
            "eddies of the trailing edge",
            "A blunt edge sheds eddies; in step with the blade they make it hum.",
            "0.18 to 0.26 times speed over the thickness of the edge, from getting going to top speed.",
            "No source that measured a fin: the band is common practice; a bevelled edge sheds higher and weaker.",
            "Common practice, from memory."),
        ["bench-bend"] = new(
            "bend on the bench",
            "What the weight should show when it hangs on the fin: a fin that bends farther is softer than computed, or cracked.",
            "The same plate under the hung weight, with walls, core, rods and root each made stiffer and softer within their ranges.",
            "The range is two deviations to each side; 0.1 mm more or less print thickness is in it.",
            "Ranges of the materials; deviation of the root is judgement."),
    };
}
