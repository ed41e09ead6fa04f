using Finwright.Design;
using Finwright.Strength.Joints;

namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Strip => "Strip";

    public override string StripCaption => "The strip in its slot, cut across and enlarged.";

    public override StepWords RoughenStrip => new("Roughen strip and slot with 120 to 180 grit, wipe with isopropanol, try it dry", "Bonds hold on rough, clean faces only.");

    public override StepWords BondStrip => new("Bond it with thickened or toughened epoxy, clamp between straight boards with film, let it harden", "Glue in the whole depth of the slot keeps water out and the strip in.");

    public override StepWords TrimStrip => new("Trim its outer edge by the template and blunt the corners", "A ragged edge hums; a sharp one cuts.");

    public override string Join => "Base and blade";

    public override StepWords RoughenFaces => new("Roughen both faces with 120 to 180 grit, wipe them, grease the bolts again", "A bond holds on rough, clean faces only; on greasy ones not at all.");

    public override StepWords BondBase => new("Coat both faces with thickened epoxy, draw base and blade together by hand until it comes out all round, wipe it off, let it harden", "The bond takes up what two printed faces leave open.");

    public override StepWords JoinDry => new("Put base and blade together without bond; look for light between the faces and rub off what stands proud", "Bolts draw faces together only where they touch.");

    public override StepWords LookStraight => new("Sight from tip to base and along the hull plane", "A crooked blade pulls to one side on every tack.");

    public override string Sand => "Sand and finish";

    public override StepWords Wash => new("Wash the parts with water and a scouring pad, dry them", "The waxy film of cured epoxy clogs paper and keeps every coat from sticking.");

    public override StepWords SandShape => new("80 grit on the hard block: take the layer lines off, no more", "The shape is printed; what you take off is section.");

    public override StepWords CheckSections => new("Hold each section template against the blade at its mark, both sides, against the light", "Where light shows at one end only, the section has drifted; sand the other end.");

    public override StepWords FillHollows => new("Fill hollows and pinholes with thickened epoxy, let it harden, sand again", "A hollow trips the flow; a pinhole drinks water.");

    public override StepWords SandFair => new("180 grit, then 240, crosswise, until no mark of the grit before is left", "Each paper takes out the scratches of the last.");

    public override StepWords SandWet => new("400 grit, wet, lengthwise", "Wet dust does not fly.");

    public override StepWords LeadingEdge => new("Feel the leading edge with closed eyes from root to tip; fill nicks", "A nick or flat there lets the flow go early: spin-out.");

    public override string Fit => "Fit to the box";

    public override string FitSentence => "The base must go in with a firm push, need a knock to come out, and touch at its ends before it touches at its top.";

    public override StepWords GaugeAgain => new("Try the gauge once more in this board", "Boxes differ from board to board even of one maker.");

    public override StepWords Soap => new("Rub dry soap on the base, bolt it up lightly, take it out", "Shiny places touch.");

    public override StepWords Knock => new("Rock the fin and tighten the bolts in turn; take them out: it must need a knock with the hand", "A base that falls out hums, shakes, and breaks. Do not pull it in with the bolts.");

    public override string FitHead => "When it does not sit right";

    public override string SymptomColumn => "what you see";

    public override string CureColumn => "what to do";

    public override IReadOnlyList<(string Symptom, string Cure)> FitTable =>
    [
        ("falls out without bolts", "too loose: skim the sides with thickened epoxy against the waxed box and file, or print it larger"),
        ("goes home without any pull of the bolts", "it stands on its top, or its ends do not touch: file the top, not the ends"),
        ("does not go in", "too thick or too long: sand on a flat block where the soap shines, a little at a time"),
        ("stands off the hull", "too long: sand the ends where the soap shines"),
    ];

    public override IReadOnlyList<string> AllowanceBlanks => ["Length, better", "Thickness, better", "Depth, better"];

    public override StepWords BoltLengths => new("Measure the board above the base at each bolt hole and write it in; choose bolts that pass right through the nut", "A bolt that ends inside the nut strips its thread; one that is too long strikes the end of its bore.");

    public override string BoltColumn => "bolt";

    public override string InsideColumn => "inside the fin";

    public override string BoardColumn => "board above";

    public override string BuyColumn => "together";

    public override string TorqueColumn => "tighten with";

    public override string TorqueLimitColumn => "more, and";

    public override string TorqueUnknown => "How hard the bolts may be tightened was not worked out: by hand, no more.";

    public override StepWords SealBolts(string washer) => new($"Put a soft washer (neoprene, {washer}) under each bolt head on the deck", "Air drawn down a bolt hole lets the fin spin out.");

    public override StepWords NoBolts => new("This box has no bolts from the deck: fix the fin as its maker says", "Only the maker of a box knows what it bears.");

    public override StepWords PinAndScrew => new("Push the pin into the rear of the tab, slide the fin in, screw the front into its plate nut; measure pin and screw in your box first", "Boxes of this kind differ; the numbers are starting values.");

    public override string StripSentence(string sheet, string overlap, string overhang) => $"A sheet of {sheet}, {overlap} in its slot and {overhang} standing out behind.";

    public override StepWords CutStrip(string length, string width, string over) => new($"Cut the sheet by its template, about {length} long and {width} wide, {over} over; cut away from the hand", "It is trimmed when it sits.");

    public override StepWords ClearSlot(string width, string depth) => new($"Clear the slot with a folded strip of paper: {width} wide and {depth} deep all along", "Resin or lacquer in it holds the sheet out.");

    public override string JoinSentence(Fixing fixing, bool isBonded) => (fixing, isBonded) switch
    {
        (Fixing.ClampRods, true) => "Threaded rods clamp the base to the blade, and resin bonds the faces.",
        (Fixing.ClampRods, false) => "Threaded rods clamp the base to the blade.",
        (Fixing.ThroughBolts, true) => "The board's bolts hold base and blade together, and resin bonds the faces.",
        (Fixing.ThroughBolts, false) => "The board's bolts hold base and blade together.",
        (_, true) => "Resin bonds the base to the blade.",
        _ => "Base and blade meet at the hull plane.",
    };

    public override StepWords ClampRods(string torques) => new($"Set the rods in their nuts, put the washers on, tighten in turn: {torques}", "Unequal rods tilt the blade.");

    public override string SandSentence(string starboard, string port) => $"After the full cure only. Starboard: {starboard}. Port: {port}.";

    public override string FinishOf(Finish finish) => finish switch
    {
        Finish.Polished => "polished until it shines",
        Finish.BarePrint => "left as it comes off the printer",
        _ => "wet-sanded with 400 grit, matt",
    };

    public override StepWords FinishSide(Side side, Finish finish)
    {
        string name = side == Side.Port ? "Port side" : "Starboard side";
        return finish switch
        {
            Finish.Polished => new($"{name}: 800 and 1200 grit wet, then polish", "The flow was worked out for a polished skin."),
            Finish.BarePrint => new($"{name}: only what stands proud comes off", "The flow was worked out for a bare print."),
            _ => new($"{name}: stop at 400 grit, matt", "The flow was worked out for this finish."),
        };
    }

    public override StepWords TrailingEdge(string thickness) => new($"Leave the trailing edge {thickness} thick, with a small square flat", "Rounded it may hum; sharp it cuts swimmers.");

    public override StepWords StripEdge(string thickness) => new($"Leave the edge of the strip square, {thickness} thick, corners blunted", "Rounded it may hum; sharp it cuts swimmers.");

    public override string Allowances(string length, string thickness, string depth) => $"This base was made with these allowances: length {length}, thickness {thickness}, depth {depth}. Write down what would be better; the next fin for this board takes it (base.length_allowance_mm, base.thickness_allowance_mm, base.depth_allowance_mm).";

    public override string LimitOf(TorqueLimit limit) => limit switch
    {
        TorqueLimit.Bolt => "the bolt stretches for good",
        TorqueLimit.NutBearing => "the nut sinks into the print",
        TorqueLimit.PullOut => "the nut may come out with what is above it",
        TorqueLimit.WallBurst => "the turning nut may burst the wall beside it",
        _ => "the tapered base spreads the box",
    };

    public override string NoTorque(string least, string greatest) => $"none does both: {least} to stay closed, {greatest} at most";

    public override StepWords Tighten(string byHand) => new($"Grease the threads and tighten in turn, no more than the table says; with a usual driver the hand reaches {byHand}: hold it short, with two fingers", "Estimates: the data of the makers of board and bolts go before them.");
}
