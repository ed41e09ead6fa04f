namespace Finwright.Design;

/// <summary>The fin box in the board, by our own descriptive names.</summary>
public enum BoxKind
{
    /// <summary>Two M6 bolts from the deck, both end faces at 10 degrees, parallel sides.</summary>
    [Input("Two M6 bolts from the deck, both end faces at 10 degrees, parallel sides.")]
    TwoBoltTapered,

    /// <summary>The same with a deeper base, for long fins.</summary>
    [Input("The same with a deeper base, for long fins.")]
    TwoBoltDeep,

    /// <summary>A long straight slot with a cross pin and a small screw into a plate.</summary>
    [Input("A long straight slot with a cross pin and a small screw into a plate.")]
    LongSlot,

    /// <summary>Any box, described by the maker's own measurements.</summary>
    [Input("Any box, described by the maker's own measurements.")]
    Measured,
}

/// <summary>How the blade, the base and the board's bolts hold together.</summary>
public enum Fixing
{
    /// <summary>Threaded rods clamp the blade to the base; the box bolts end in nuts in the base.</summary>
    [Input("Threaded rods clamp the blade to the base; the box bolts end in nuts in the base.")]
    ClampRods,

    /// <summary>The box bolts run through the base and end in nuts deep in the blade.</summary>
    [Input("The box bolts run through the base and end in nuts deep in the blade.")]
    ThroughBolts,

    /// <summary>The box bolts end in nuts in the base; blade and base are one print, or bonded.</summary>
    [Input("The box bolts end in nuts in the base; blade and base are one print, or bonded.")]
    BaseOnly,
}

/// <summary>Whether blade and base are printed apart.</summary>
public enum BasePrinting
{
    /// <summary>Two prints, joined at the hull plane.</summary>
    [Input("Two prints, joined at the hull plane.")]
    Separate,

    /// <summary>One print.</summary>
    [Input("One print.")]
    AsOne,
}

/// <summary>The part inside the board's fin box.</summary>
public sealed record Base
{
    /// <summary>Kind of fin box.</summary>
    [Input("Kind of fin box in the board.", Reason = "The box whose dimensions are best known.")]
    public BoxKind Box { get; init; } = BoxKind.TwoBoltTapered;

    /// <summary>How blade, base and bolts hold together.</summary>
    [Input("How blade, base and the board's bolts hold together.", Reason = "The load goes straight from the blade into the board's bolts.")]
    public Fixing Fixing { get; init; } = Fixing.ThroughBolts;

    /// <summary>Printed apart or as one.</summary>
    [Input("Whether blade and base are printed apart or as one.", Reason = "Apart: the base can lie on its side, where it prints strongest and truest.")]
    public BasePrinting Printed { get; init; } = BasePrinting.Separate;

    /// <summary>How the root is taken to be held when bending is worked out.</summary>
    [Input("How the root is taken to be held when bending and breaking are worked out.", Reason = "As it is.")]
    public RootHold RootHold { get; init; } = RootHold.Joint;

    /// <summary>Added to the base's length, mm.</summary>
    [Input("Added to the length of the base for your board; negative makes it shorter. 0.1 mm moves a tapered base 0.28 mm in or out.", Minimum = -3, Maximum = 3, Reason = "The drawing's size; correct it after trying the gauge.")]
    public double LengthAllowanceMm { get; init; }

    /// <summary>Added to the base's thickness, mm.</summary>
    [Input("Added to the thickness of the base for your board; negative makes it thinner.", Minimum = -2, Maximum = 2, Reason = "The drawing's size; correct it after trying the gauge.")]
    public double ThicknessAllowanceMm { get; init; }

    /// <summary>Added to the base's depth, mm.</summary>
    [Input("Added to the depth of the base inside the box; negative makes it shallower.", Minimum = -20, Maximum = 20, Reason = "The drawing's size; correct it after trying the gauge.")]
    public double DepthAllowanceMm { get; init; }

    /// <summary>How far the middle of the blade's root stands aft of the middle of the base, mm.</summary>
    [Input("How far the middle of the blade's root stands aft of the middle of the base.", Minimum = -120, Maximum = 120, Reason = "Centred.")]
    public double BladeOffsetMm { get; init; }

    /// <summary>Depth of the box-bolt nut's middle below the top edge of the base, mm.</summary>
    [Input("Distance from the top edge of the base to the middle of the nut for the box bolt, along the bolt.", Minimum = 6, Maximum = 45, Reason = "10 to 14 mm (from memory, low confidence): check it on your board's old fin.")]
    public double NutDepthMm { get; init; } = 12;

    /// <summary>Depth of the front corner of a deep base, mm.</summary>
    [Input("Depth of the front corner of a deep two-bolt base.", Minimum = 60, Maximum = 80, Reason = "68.6 to 70.3 mm are quoted; 70 lies between (common practice, no source).")]
    public double DeepFrontMm { get; init; } = 70;

    /// <summary>The tab for a long slot.</summary>
    [Input("The tab for a long slot.", Reason = "Starting values; measure your box.")]
    public SlotTab Slot { get; init; } = new();

    /// <summary>The maker's own measurements of a box.</summary>
    [Input("Your own measurements of the box; needed when the box is \"measured\".", Reason = "Left out for the other boxes.")]
    public MeasuredBox? Measured { get; init; }

    /// <summary>Whether to make the fit gauge.</summary>
    [Input("Whether a thin gauge of the base is made as a part of its own, to try in the box before the long print.", Reason = "A quarter of an hour of printing saves a spoiled base.")]
    public bool Gauge { get; init; } = true;

    /// <summary>Thickness of the gauge, mm.</summary>
    [Input("Thickness of the gauge.", Minimum = 1.2, Maximum = 8, Reason = "Stiff enough to handle, quick to print.")]
    public double GaugeThicknessMm { get; init; } = 3;
}

/// <summary>The tab of a fin for a long slot.</summary>
public sealed record SlotTab
{
    /// <summary>Length of the tab, mm.</summary>
    [Input("Length of the tab.", Minimum = 60, Maximum = 260, Reason = "Leaves room to slide fore and aft (from memory, low confidence).")]
    public double LengthMm { get; init; } = 150;

    /// <summary>Thickness of the tab, mm.</summary>
    [Input("Thickness of the tab.", Minimum = 5, Maximum = 14, Reason = "9.3 to 9.5 mm for a nominal 3/8 inch slot (from memory).")]
    public double ThicknessMm { get; init; } = 9.4;

    /// <summary>Depth of the tab, mm.</summary>
    [Input("Depth of the tab inside the slot.", Minimum = 10, Maximum = 30, Reason = "17 to 19 mm (from memory, low confidence).")]
    public double DepthMm { get; init; } = 18;

    /// <summary>Diameter of the cross pin, mm.</summary>
    [Input("Diameter of the cross pin.", Minimum = 2, Maximum = 6, Reason = "3 to 4 mm (from memory, low confidence).")]
    public double PinMm { get; init; } = 3;

    /// <summary>Height of the pin above the hull, mm.</summary>
    [Input("Distance of the pin's middle from the hull plane, into the box.", Minimum = 3, Maximum = 25, Reason = "Set by the rail in the box; measure yours (from memory, low confidence).")]
    public double PinDepthMm { get; init; } = 11;

    /// <summary>Diameter of the plate-nut screw, mm.</summary>
    [Input("Thread of the small screw at the other end.", Reason = "M4 into a plate nut (common practice, no source).")]
    public Thread Screw { get; init; } = Thread.M4;
}

/// <summary>A fin box as its owner measured it. Inside measurements of the box; the clearance is taken off.</summary>
public sealed record MeasuredBox
{
    /// <summary>Length at the hull, mm.</summary>
    [Input("Inside length of the box at the hull.", Minimum = 40, Maximum = 300)]
    public required double HullLengthMm { get; init; }

    /// <summary>Length at the deep end, mm.</summary>
    [Input("Inside length of the box at its deep end, measured parallel to the hull. Give this or both end angles.", Minimum = 30, Maximum = 300, Reason = "Left out when the end angles are given.")]
    public double? DeepLengthMm { get; init; }

    /// <summary>Width at the hull, mm.</summary>
    [Input("Inside width of the box at the hull.", Minimum = 4, Maximum = 40)]
    public required double HullWidthMm { get; init; }

    /// <summary>Width at the deep end, mm.</summary>
    [Input("Inside width of the box at its deep end.", Minimum = 4, Maximum = 40, Reason = "Left out: parallel sides.")]
    public double? DeepWidthMm { get; init; }

    /// <summary>Depth at the front, mm.</summary>
    [Input("Depth of the base at the front corner.", Minimum = 8, Maximum = 110)]
    public required double FrontDepthMm { get; init; }

    /// <summary>Depth at the rear, mm.</summary>
    [Input("Depth of the base at the rear corner.", Minimum = 8, Maximum = 110, Reason = "Left out: as deep as at the front.")]
    public double? RearDepthMm { get; init; }

    /// <summary>Lean of the front face from square to the hull, degrees.</summary>
    [Input("How far the front face leans aft from square to the hull, toward the middle of the box.", Minimum = -5, Maximum = 45, Reason = "Left out: worked out from the deep length and the other angle; without either angle both ends lean alike.")]
    public double? FrontAngleDegrees { get; init; }

    /// <summary>Lean of the rear face from square to the hull, degrees.</summary>
    [Input("How far the rear face leans forward from square to the hull, toward the middle of the box.", Minimum = -5, Maximum = 45, Reason = "Left out: worked out from the deep length and the other angle; without either angle both ends lean alike.")]
    public double? RearAngleDegrees { get; init; }

    /// <summary>Radius of the top corners, mm.</summary>
    [Input("Radius of the base's top corners.", Minimum = 0, Maximum = 30, Reason = "A quarter inch keeps the corner from binding (common practice, no source).")]
    public double CornerRadiusMm { get; init; } = 6.35;

    /// <summary>Taken off the box's length and width, mm.</summary>
    [Input("How much smaller than the box the base is made, in length and in width.", Minimum = 0, Maximum = 2, Reason = "A firm push fit for a good printer (common practice, no source).")]
    public double ClearanceMm { get; init; } = 0.1;

    /// <summary>The bolts.</summary>
    [Input("The bolts, front first.", MaximumLength = 6, Reason = "A box may have none: slotted boxes clamp from the side.")]
    public IReadOnlyList<MeasuredBolt> Bolts { get; init; } = [];
}

/// <summary>One bolt of a measured box.</summary>
public sealed record MeasuredBolt
{
    /// <summary>Distance of the bolt's axis behind the front corner at the hull, mm.</summary>
    [Input("Where the bolt's axis meets the hull plane, behind the front corner of the box.", Minimum = 3, Maximum = 300)]
    public required double FromFrontMm { get; init; }

    /// <summary>Lean of the bolt, degrees, positive when it leans aft going up.</summary>
    [Input("Lean of the bolt from square to the hull, positive when it leans aft going up into the board.", Minimum = -20, Maximum = 20, Reason = "Square to the hull.")]
    public double LeanDegrees { get; init; }

    /// <summary>Thread.</summary>
    [Input("Thread of the bolt.", Reason = "M6 in nearly every box (common practice, no source).")]
    public Thread Thread { get; init; } = Thread.M6;
}
