namespace Finwright.Page.Help;

/// <summary>One stop of the tour.</summary>
/// <param name="Chapter">Part of the page that is scrolled to; a selector.</param>
/// <param name="Marked">What is marked there; a selector. When it is not there, the chapter is.</param>
/// <param name="Title">What it is about, in English.</param>
/// <param name="Text">What to know and try, in English.</param>
public sealed record TourStop(string Chapter, string Marked, string Title, string Text)
{
    /// <summary>The stops, in the order of the job.</summary>
    public static IReadOnlyList<TourStop> All { get; } =
    [
        new("#brief", "#at---brief-rider_mass_kg", "Who sails it", "The sheet is read from top to bottom, in the order of the job. It begins with rider, board, sail and spot: from these comes the side force that the fin must carry. Every field says behind its question mark what it means and why it is what it is."),
        new("#shape", "#shape .planform, #shape svg, #at---shape-outline-span_mm", "Shape it with the hand", "Drag a point of the outline, or move a slider or type a number: all three are the same thing. What the hand can move has this colour. Undo takes every step back, also tomorrow."),
        new(".verdicts", ".verdicts", "Verdicts, worst first", "What holds, what is tight, what fails and what is not known stands here all the time, with the value, its limit and what to change. Press one: it leads to the field. A result before the last change is grey until it is worked out anew."),
        new("#water", "#water .say", "What the water does", "A sentence first, then the drawings, then the table, then how it is computed and how sure. Bands show how far a number may be off; where the method ends, the page says so instead of a number."),
        new("#print", "#print", "Print", "Parts, cuts and plates for your printer, which way up, how long, how much filament. Printer and filament come from the libraries, so you write them in once."),
        new("#pour", "#pour", "Pour", "How the resin fills the pores, how much to mix, how warm it gets and when it is hard. A cup of your own resin with a thermometer makes these numbers yours. Resin is to be handled with gloves, moving air and small cups: the run sheet says it at every step."),
        new("#prove", "#prove", "Prove", "Hang a known weight on the finished fin before it sails, and write down how far it bends: the reading stands over the predicted line, and the next prediction learns from it. All of this is an estimate until the bench has spoken."),
        new(".top", ".sheet-head .steps, .top", "Keep a revision", "Every change is on the disk at once. When a fin is worth building, keep it as a revision with a note: builds, readings and outings hang on revisions, and any two can be laid beside one another."),
    ];
}
