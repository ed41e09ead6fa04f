using Finwright.Strength.Materials;

namespace Finwright.Strength.Plates;

/// <summary>A fin as the plate sees it: edges, thickness, what lies where through the thickness, and how it is held. Design axes, metres.</summary>
/// <remarks>
/// Depths y run from 0 to <see cref="Span"/>; z counts from the mean surface, to starboard. Camber and twist are left out: the mean surface is taken as flat. The functions must give the
/// same answer each time.
/// </remarks>
public sealed record PlateFin
{
    /// <summary>Depth of the tip below the root, metres, positive.</summary>
    public required double Span { get; init; }

    /// <summary>x of the leading edge at a depth, metres.</summary>
    public required Func<double, double> LeadingEdge { get; init; }

    /// <summary>x of the trailing edge at a depth, metres; behind the leading edge. The edges may meet at the tip.</summary>
    public required Func<double, double> TrailingEdge { get; init; }

    /// <summary>Half of the thickness at x and depth, metres, 0 or more.</summary>
    public required Func<double, double, double> HalfThickness { get; init; }

    /// <summary>What the walls are made of.</summary>
    public required Elasticity Wall { get; init; }

    /// <summary>What fills the blade between the walls.</summary>
    public required Elasticity Core { get; init; }

    /// <summary>Depth of one wall below the surface at x and depth, measured along z, metres; as much as the half thickness or more where all is wall.</summary>
    public required Func<double, double, double> WallDepth { get; init; }

    /// <summary>The sheet let in at mid-thickness; null for none.</summary>
    public PlateSheet? Sheet { get; init; }

    /// <summary>Where there is nothing.</summary>
    public IReadOnlyList<PlateVoid> Voids { get; init; } = [];

    /// <summary>Rods let into the blade.</summary>
    public IReadOnlyList<PlateRod> Rods { get; init; } = [];

    /// <summary>How the root is held.</summary>
    public PlateRoot Root { get; init; } = PlateRoot.Clamped;

    /// <summary>A blade of one material with straight edges and sections of one form, for checks and first estimates.</summary>
    /// <param name="span">Depth of the tip, metres.</param>
    /// <param name="rootChord">Chord at the root, metres; the leading edge of the root is at x = 0.</param>
    /// <param name="tipChord">Chord at the tip, metres.</param>
    /// <param name="tipLeadingEdge">x of the leading edge at the tip, metres.</param>
    /// <param name="rootThickness">Greatest thickness at the root, metres.</param>
    /// <param name="tipThickness">Greatest thickness at the tip, metres; linear between.</param>
    /// <param name="section">Half thickness over greatest thickness at a share of the chord from the leading edge.</param>
    /// <param name="material">What it is made of.</param>
    public static PlateFin Trapezoid(double span, double rootChord, double tipChord, double tipLeadingEdge, double rootThickness, double tipThickness, Func<double, double> section, Elasticity material)
    {
        ArgumentNullException.ThrowIfNull(section);
        double Leading(double y) => tipLeadingEdge * y / span;
        double Chord(double y) => rootChord + (tipChord - rootChord) * y / span;
        return new()
        {
            Span = span,
            LeadingEdge = Leading,
            TrailingEdge = y => Leading(y) + Chord(y),
            HalfThickness = (x, y) => (rootThickness + (tipThickness - rootThickness) * y / span) * section((x - Leading(y)) / Chord(y)),
            Wall = material,
            Core = material,
            WallDepth = (_, _) => double.MaxValue,
        };
    }
}

/// <summary>A thin sheet in the mean surface, bonded all over.</summary>
/// <param name="Thickness">Metres; where the blade is thinner, the sheet is as thick as the blade.</param>
/// <param name="Material">What it is made of; its stiffness counts to the core's part.</param>
/// <param name="Covers">Whether it lies at x and depth. Beyond the edges of the blade it is not seen.</param>
public sealed record PlateSheet(double Thickness, Elasticity Material, Func<double, double, bool> Covers)
{
    /// <summary>A sheet along the trailing edge.</summary>
    /// <param name="thickness">Metres.</param>
    /// <param name="material">What it is made of.</param>
    /// <param name="trailingEdge">x of the blade's trailing edge at a depth, metres.</param>
    /// <param name="slotDepth">How far it reaches into the blade, along the chord, metres.</param>
    /// <param name="fromDepth">y where it begins, metres.</param>
    /// <param name="toDepth">y where it ends, metres.</param>
    public static PlateSheet AlongTrailingEdge(double thickness, Elasticity material, Func<double, double> trailingEdge, double slotDepth, double fromDepth, double toDepth) =>
        new(thickness, material, (x, y) => y >= fromDepth && y <= toDepth && x >= trailingEdge(y) - slotDepth);
}

/// <summary>A hole or cavity with straight walls along z.</summary>
/// <remarks>A hole smaller than an element is spread over it: the blade's deflection feels it, to some tenths of a percent; the stress at its edge is not found here.</remarks>
/// <param name="X">x of its middle, metres.</param>
/// <param name="Y">Depth of its middle, metres.</param>
/// <param name="HalfWidthX">Half its extent along x, metres; the radius when round.</param>
/// <param name="HalfWidthY">Half its extent along y, metres; the radius when round.</param>
/// <param name="FromZ">Lower end over the mean surface, metres.</param>
/// <param name="ToZ">Upper end, metres.</param>
/// <param name="IsRound">An ellipse with these half axes; else a rectangle.</param>
public sealed record PlateVoid(double X, double Y, double HalfWidthX, double HalfWidthY, double FromZ, double ToZ, bool IsRound = false)
{
    /// <summary>A rectangle from corner to corner.</summary>
    public static PlateVoid Rectangle(double fromX, double toX, double fromY, double toY, double fromZ, double toZ) =>
        new((fromX + toX) / 2, (fromY + toY) / 2, Math.Abs(toX - fromX) / 2, Math.Abs(toY - fromY) / 2, fromZ, toZ);

    /// <summary>A circle.</summary>
    public static PlateVoid Circle(double x, double y, double radius, double fromZ, double toZ) => new(x, y, radius, radius, fromZ, toZ, IsRound: true);

    /// <summary>Whether it lies over or under a place.</summary>
    public bool Covers(double x, double y)
    {
        double dx = Math.Abs(x - X) / HalfWidthX, dy = Math.Abs(y - Y) / HalfWidthY;
        return IsRound ? dx * dx + dy * dy <= 1 : dx <= 1 && dy <= 1;
    }
}

/// <summary>A straight round rod in the blade, bonded to it along its length.</summary>
/// <param name="FromX">x of one end, metres.</param>
/// <param name="FromY">Depth of that end, metres; above the root (negative) it is not seen.</param>
/// <param name="ToX">x of the other end, metres.</param>
/// <param name="ToY">Depth of the other end, metres.</param>
/// <param name="Z">Height of its axis over the mean surface, metres.</param>
/// <param name="Diameter">Metres, positive.</param>
/// <param name="Modulus">Young's modulus along the rod, Pa.</param>
/// <param name="ShearModulus">Shear modulus that its torsion works against, Pa.</param>
/// <param name="Density">kg/m³.</param>
public sealed record PlateRod(double FromX, double FromY, double ToX, double ToY, double Z, double Diameter, double Modulus, double ShearModulus, double Density);

/// <summary>How the root of the plate, y = 0, is held: clamped, or on springs.</summary>
public sealed class PlateRoot
{
    private PlateRoot(Func<double, RootSpring>? springs) => Springs = springs;

    /// <summary>Neither moves nor turns.</summary>
    public static PlateRoot Clamped { get; } = new(null);

    /// <summary>Springs at an x; null when clamped.</summary>
    public Func<double, RootSpring>? Springs { get; }

    /// <summary>Held by springs along the root chord.</summary>
    /// <param name="springs">Stiffness per length at an x; a zero leaves that motion free there.</param>
    public static PlateRoot Elastic(Func<double, RootSpring> springs)
    {
        ArgumentNullException.ThrowIfNull(springs);
        return new(springs);
    }
}

/// <summary>Stiffness of the root per length of root chord, each 0 or more.</summary>
/// <param name="Deflection">Against moving along z, N/m per m.</param>
/// <param name="Bending">Against turning about x (slope dw/dy), N·m/rad per m.</param>
/// <param name="Twisting">Against turning about y (slope dw/dx), N·m/rad per m.</param>
public readonly record struct RootSpring(double Deflection, double Bending, double Twisting);
