namespace Finwright.Page.Explaining;

/// <summary>What the results of the water are. Figures of agreement are those of the comparison with measurements that comes with the program.</summary>
internal static class WaterExplanations
{
    private const string Surface = "Lifting surface of horseshoe vortices on the blade, under a flat hull on water that gives way; every strip is turned until it carries the lift of its own section.";

    private const string SurfaceSource = "Katz and Plotkin, 2001; compared with Whicker and Fehlner, 1958, and Weber and Brebner, 1958.";

    public static IReadOnlyDictionary<string, Explanation> All { get; } = new Dictionary<string, Explanation>(StringComparer.Ordinal)
    {
        ["case"] = new(
            "load case",
            "A situation the fin is judged in: getting going asks for the most lift of the sections, cruise is what lasts, top speed has the fastest water, a gust or landing the greatest force for a moment.",
            "Speeds come from the brief; forces from the balance of rider and sail.",
            "Pumping when getting going, the lean of the rig and a sudden load of twice the steady one are judgement.",
            "Common practice, no source."),
        ["speed"] = new("speed", "Speed through the water in this load case.", "It is given in the brief.", "As sure as you know it; most boards are slower than they feel.", ""),
        ["side-force"] = new(
            "side force",
            "Push across the stream that the fin must carry so that the board does not slide sideways.",
            "Roll about the waterline: the rider's weight times the hang-out balances the side force times the height from the fin's centre of effort to the sail's. A side force given in the brief goes before it.",
            "Some 15 to 20 %: stance, height of the sail's effort and place of the hull's lift are uncertain; the range beside it joins them.",
            "Derived from stated mechanics; the estimates in it are judgement."),
        ["leeway"] = new(
            "leeway",
            "Angle between where the board points and where it goes. 2 to 5° is usual at cruise; more costs height and drag.",
            Surface,
            "Good to about 15 %: slopes agree with measured control surfaces within 5 %, and the side force is the less certain part.",
            SurfaceSource),
        ["stall-onset"] = new(
            "start of stall",
            "Leeway and side force at which the first 3 % of the blade's area reach their sections' greatest lift. Beyond it the hold grows little and may go at once.",
            "Each strip's angle is held against the peak of its section's lift at its own Reynolds number.",
            "The least sure of these numbers: greatest lift of measured sections is met within 10 %, stall within about 2°.",
            "Ladson, 1988; Selig, Donovan and Fraser, 1989; thin sections after DATCOM, from memory."),
        ["of-stall"] = new(
            "share of stall",
            "Side force asked for over the side force at which stall starts: 1 means that it begins to let go. Near the hull air comes in with it: the spin-out.",
            "From the load case and the start of stall at its speed.",
            "About 15 %: chop and a rough hand start it earlier than still water.",
            "Limits are judgement."),
        ["drag"] = new(
            "drag",
            "Force along the stream that the fin costs in this load case.",
            "Induced drag from the wake far behind, friction and wake of the sections strip by strip, and what is lost at tip and root.",
            "About 15 %; section drag agrees with measurements within 6 % well before stall, and within 15 % close to it.",
            "Squire and Young, 1938; Hoerner, 1965, from memory; compared with Ladson, 1988."),
        ["drag-induced"] = new(
            "induced drag",
            "Drag for the side force itself: sideways motion that is left behind in the water. A deeper fin has less of it.",
            "From the circulation in the wake far behind.",
            "Within 0.1 % of the closed form for elliptic wings; under the hull as good as the hull's effect is known, some 5 %.",
            "Prandtl, 1918."),
        ["drag-section"] = new(
            "friction and wake",
            "Drag of the sections: the water's friction on the skin and the wake of its layers. A smoother or smaller fin has less.",
            "The layers along each section, momentum lost in the wake.",
            "Within 6 % of measurements well before stall on smooth sections; print lines and nicks add what nobody computes.",
            "Drela and Giles, 1987, closures from memory; compared with Ladson, 1988."),
        ["drag-other"] = new(
            "tip and root",
            "Drag of the flow round the tip, of suction lost at the leading edge, of the corner between fin and hull, and of spray.",
            "Suction lost turns to the normal; corner and spray by formulas.",
            "A third either way; it is a small part.",
            "Polhamus, 1966; Hoerner, 1965, from memory."),
        ["lift-over-drag"] = new("side force over drag", "How much side force each newton of drag buys.", "The one over the other.", "As sure as the drag: about 15 %.", ""),
        ["effort-depth"] = new(
            "depth of the load",
            "How far below the hull the side force acts: the lever that heels the board against your weight.",
            Surface,
            "To about a fiftieth of the root chord.",
            SurfaceSource),
        ["effort-aft"] = new(
            "load behind the box",
            "How far behind the middle of the box the side force acts: farther aft the board steers calmer and wants more front foot.",
            Surface,
            "To about a fiftieth of the root chord.",
            SurfaceSource),
        ["ventilation"] = new(
            "air at the root",
            "How near the fin is to drawing air along its root: a ventilated fin loses half of its hold or more at once and grips again only when it is unloaded.",
            "Air needs slow or separated water, suction near the surface, and a way in. Suction is always there at speed, so what is left is whether the flow at the root stays attached, and whether base, bolt holes and hull seal.",
            "Judgement: chop, heel and the fit of the base decide more than any computed number.",
            "Swales, Wright, McGregor and Rothblum, 1974; Breslin and Skalak, 1959; Harwood, Young and Ceccio, 2016."),
        ["cavitation"] = new(
            "drop to boiling",
            "Greatest suction over the drop of pressure at which water boils there: 100 % is cavitation, which costs lift and eats the surface.",
            "Lowest pressure of every strip against the vapour pressure at its depth.",
            "Suction peaks are good to about 20 % on a clean nose; nicks make peaks of their own.",
            "Definition of the cavitation number; vapour pressure after ITTC 7.5-02-01-03, 2011."),
        ["depth-froude"] = new(
            "depth Froude number",
            "Speed over the speed of waves as long as the fin is deep. Between 3 and 7 when sailing: a cavity of air that has formed does not wash out before you unload the fin or slow down.",
            "Speed over the root of gravity times the depth.",
            "Exact; the bounds it is held against were measured on struts without a hull and are far apart.",
            "Harwood, Young and Ceccio, 2016; Breslin and Skalak, 1959."),
        ["hull-bounds"] = new(
            "effect of the hull",
            "The water surface lets pressure go, the hull holds it: a fin under a wide tail works like a deeper one. No board lies outside the two bounds, an endless hull and none.",
            "The hull is a flat plate as wide as the tail; its panels are solved together with the fin.",
            "Within a twentieth of the way between the bounds in seven cases of another method.",
            "Numerical reference; the bounds are closed forms."),
        ["span-load"] = new(
            "load along the span",
            "Side force on each centimetre of depth. Where it comes near what the section there can carry, stall begins.",
            Surface,
            "Some 5 % over most of the span; less sure in the last tenth before the tip and in the corner at the hull.",
            SurfaceSource),
        ["section"] = new(
            "lift and drag of a section",
            "What the section at two fifths of the depth does at the speeds of the load cases. A higher peak of lift stalls later; less drag at small lift is faster.",
            "Panels and two-equation layers solved together, with transition by growing waves; beyond the last solved angle a law for stalled plates.",
            "Lift within 4 % and drag within 6 % for most measured points well before stall; up to 9 % too much lift in quiet water below a Reynolds number of 300,000.",
            "Drela and Giles, 1987, from memory; Ladson, 1988; Selig, Donovan and Fraser, 1989."),
        ["pressure"] = new(
            "pressure along the section",
            "Pressure on both sides of the section over that of the stream; suction is drawn upward. A sharp peak at the nose stalls and boils first.",
            "From the section's outer flow with its layers, at the lift it carries at cruise.",
            "Within 0.05 to 0.14 of measured coefficients at 10° and a Reynolds number of 2.88 million.",
            "Gregory and O'Reilly, 1970."),
        ["rule-of-thumb"] = new(
            "rule of thumb",
            "What the trade says of a fin's size for this board, sail and rider. It stands beside the computed answer and judges nothing.",
            "A band for each rule, from sail area, board width or rider.",
            "Sailors disagree within the band.",
            "Common practice, no source."),
        ["weed"] = new(
            "weed",
            "Share of the leading edge that leans so far that weed slides off instead of hanging on.",
            "Sweep along the edge, from the root.",
            "Judgement: weed, friction and speed differ.",
            "Common practice, no source."),
        ["draught"] = new("draught", "Depth of the tip below the hull against what your spot allows.", "Span of the outline.", "Exact for a flat hull; chop and your weight on the tail add to it.", ""),
    };
}
