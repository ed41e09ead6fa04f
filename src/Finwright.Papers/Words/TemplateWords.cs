namespace Finwright.Papers.Words;

/// <summary>What templates and their tiles say.</summary>
public abstract partial class TemplateWords
{
    /// <summary>Beside the line of 100 mm.</summary>
    public abstract string CheckLine { get; }

    /// <summary>Which fin a template belongs to.</summary>
    /// <param name="name">Name of the fin.</param>
    /// <param name="number">Its part number; may be empty.</param>
    public abstract string Fin(string name, string? number);

    /// <summary>That a template is drawn in true size, with what to do first.</summary>
    public abstract string TrueSize { get; }

    /// <summary>In which unit bare lengths are told.</summary>
    public abstract string LengthsIn(string unit);

    /// <summary>Name of the planform template.</summary>
    public abstract string PlanformTitle { get; }

    /// <summary>What the planform template is for and how to use it.</summary>
    public abstract string PlanformUse { get; }

    /// <summary>A line of the key: the edge of the printed blade.</summary>
    public abstract string PrintedBlade { get; }

    /// <summary>A line of the key: the base.</summary>
    public abstract string Base { get; }

    /// <summary>A line of the key: base and flange.</summary>
    public abstract string BaseAndFlange { get; }

    /// <summary>A line of the key: outer edge of the strip.</summary>
    public abstract string StripEdge { get; }

    /// <summary>A line of the key: bottom of the strip's slot.</summary>
    public abstract string SlotBottom { get; }

    /// <summary>A line of the key: where the blade is cut into parts.</summary>
    public abstract string CutBetweenParts { get; }

    /// <summary>A line of the key: the quarter-chord line.</summary>
    public abstract string QuarterChordLine { get; }

    /// <summary>Beside the hull line.</summary>
    public abstract string Hull { get; }

    /// <summary>Beside a line of one depth.</summary>
    public abstract string Depth(string depth);

    /// <summary>The chord at a depth.</summary>
    public abstract string Chord(string chord);

    /// <summary>Name of the strip's template.</summary>
    public abstract string StripTitle { get; }

    /// <summary>What the strip's template is for and how to use it.</summary>
    /// <param name="sheet">Thickness of the sheet.</param>
    /// <param name="width">Width of the strip.</param>
    /// <param name="length">Its length along the printed edge.</param>
    public abstract string StripUse(string sheet, string width, string length);

    /// <summary>A line of the key: where the strip is cut.</summary>
    public abstract string StripCutLine { get; }

    /// <summary>A line of the key: where the printed edge comes to lie on the strip.</summary>
    public abstract string StripPrintedEdge { get; }

    /// <summary>The side of the strip that goes into the slot.</summary>
    public abstract string StripInSlot(string depth);

    /// <summary>The side of the strip that stays outside.</summary>
    public abstract string StripOutside(string overhang);

    /// <summary>Beside an arrow along the strip.</summary>
    public abstract string ToTheTip { get; }

    /// <summary>Beside the end of the strip at the root.</summary>
    public abstract string RootEnd { get; }

    /// <summary>Name of the template of sections.</summary>
    public abstract string SectionsTitle { get; }

    /// <summary>What the sections are for and how to use them.</summary>
    /// <param name="symmetric">Whether both sides are alike.</param>
    public abstract string SectionsUse(bool symmetric);

    /// <summary>Above a section.</summary>
    /// <param name="depth">Its depth below the hull.</param>
    /// <param name="share">The same in per cent of the span.</param>
    /// <param name="chord">Its chord.</param>
    /// <param name="thickness">Its greatest thickness.</param>
    /// <param name="behind">How far behind the leading edge that lies.</param>
    public abstract string Section(string depth, string share, string chord, string thickness, string behind);

    /// <summary>A line of the key: outline of a section.</summary>
    public abstract string SectionOutline { get; }

    /// <summary>A line of the key: the chord with its arrow.</summary>
    public abstract string SectionMiddle { get; }

    /// <summary>A line of the key: where a section is thickest.</summary>
    public abstract string GreatestThickness { get; }

    /// <summary>Name of the template of places to drill.</summary>
    public abstract string DrillTitle { get; }

    /// <summary>What it is for and how to use it.</summary>
    public abstract string DrillUse { get; }

    /// <summary>From which side a view is seen.</summary>
    public abstract string SeenFrom(bool starboard);

    /// <summary>A port with its role.</summary>
    /// <param name="name">Its name; "feed" or "vent" may be all of it.</param>
    /// <param name="feed">Whether the resin comes in here.</param>
    public abstract string PortRole(string name, bool feed);

    /// <summary>How wide and how deep to drill.</summary>
    public abstract string Drill(string diameter, string depth);

    /// <summary>Which side of the fin: 1 starboard, -1 port, 0 an edge.</summary>
    public abstract string SideOf(int side);

    /// <summary>A line of the key: outlines of blade and base.</summary>
    public abstract string OutlineOfParts { get; }

    /// <summary>A line of the key: bores and pockets.</summary>
    public abstract string InsideLines { get; }

    /// <summary>Head of a column: the part.</summary>
    public abstract string PartHead { get; }

    /// <summary>Head of a column: the port.</summary>
    public abstract string PortHead { get; }

    /// <summary>Head of a column: the side.</summary>
    public abstract string SideHead { get; }

    /// <summary>Head of a column: the diameter.</summary>
    public abstract string DiameterHead { get; }

    /// <summary>Head of a column: how deep to drill from the skin.</summary>
    public abstract string DrillDepthHead { get; }

    /// <summary>Head of a column: the angle of the drill to the plane of the blade.</summary>
    public abstract string AngleHead { get; }

    /// <summary>Head of a column: distance aft of the cross marked 0.</summary>
    public abstract string FromOriginHead { get; }

    /// <summary>Head of a column: depth below the hull.</summary>
    public abstract string BelowHullHead { get; }

    /// <summary>Head of a column: what lies inside.</summary>
    public abstract string InsideHead { get; }

    /// <summary>Head of a column: depth at which it begins.</summary>
    public abstract string FromHullHead { get; }

    /// <summary>Head of a column: depth at which it ends.</summary>
    public abstract string ToHullHead { get; }

    /// <summary>Name of the base gauge.</summary>
    public abstract string BaseTitle { get; }

    /// <summary>What the base gauge is for and how to use it.</summary>
    public abstract string BaseUse { get; }

    /// <summary>A line of the key: cut here.</summary>
    public abstract string CutLine { get; }

    /// <summary>A line of the key: axes of bolts.</summary>
    public abstract string BoltAxis { get; }

    /// <summary>A bolt.</summary>
    public abstract string Bolt(string thread);

    /// <summary>The cross pin of a long slot.</summary>
    public abstract string CrossPin(string diameter);

    /// <summary>Head of a column: what it is.</summary>
    public abstract string WhatHead { get; }

    /// <summary>Head of a column: distance from the front corner at the hull.</summary>
    public abstract string FromFrontCornerHead { get; }

    /// <summary>Head of a column: distance above the hull.</summary>
    public abstract string AboveHullHead { get; }

    /// <summary>Head of a column: lean from square to the hull, positive aft going up.</summary>
    public abstract string LeanHead { get; }

    /// <summary>Below the base seen across.</summary>
    public abstract string CutAcross { get; }

    /// <summary>At the front of the base.</summary>
    public abstract string Front { get; }

    /// <summary>Name of the jig of a part.</summary>
    public abstract string JigTitle(string part);

    /// <summary>What the jig is for and how to use it.</summary>
    /// <param name="attitude">How the part is held.</param>
    public abstract string JigUse(string attitude);

    /// <summary>A line of the key: the part from the side.</summary>
    public abstract string PartFromTheSide { get; }

    /// <summary>A line of the key: supports.</summary>
    public abstract string Support { get; }

    /// <summary>Below the line of the bench.</summary>
    public abstract string BenchLevel { get; }

    /// <summary>Above the plumb line.</summary>
    public abstract string Plumb { get; }

    /// <summary>Beside the level line.</summary>
    public abstract string Level { get; }

    /// <summary>A direction: along the hull.</summary>
    public abstract string AlongHull { get; }

    /// <summary>A direction: along the span.</summary>
    public abstract string AlongSpan { get; }

    /// <summary>A line of the key: a direction, and how it lies.</summary>
    public abstract string ReferenceToLevel(string direction, string angle);

    /// <summary>Head of a column: height above the bench.</summary>
    public abstract string AboveBenchHead { get; }
}
