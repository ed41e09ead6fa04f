using Finwright.Geometry.Features;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Joints;

/// <summary>Form of a nut that sits in a pocket.</summary>
public enum NutForm
{
    /// <summary>Hexagon nut, ISO 4032.</summary>
    Hexagon,

    /// <summary>Square nut, DIN 557.</summary>
    Square,

    /// <summary>Thin square nut, DIN 562.</summary>
    ThinSquare,

    /// <summary>Cross nut: a cylinder across the fin, thread through its side.</summary>
    Cross,
}

/// <summary>A nut in a pocket of the print, flats facing the sides of the fin, pulled towards a face by its bolt.</summary>
/// <remarks>
/// Estimates, each by the simplest mechanics that has the right lengths in it. Not counted: gaps between the nut and its pocket, creep of the plastic under a standing pull (a nut left tight for a season pulls less at its end). A pull on a spare piece says more.
/// </remarks>
public sealed record NutSeat
{
    // Judgement after common design practice: layers carry half in shear of what they carry in tension, and a pulled-out cone uses 0.5 to 0.7 of the cylinder (from memory).
    private const double ShearOfTension = 0.5, CylinderUsed = 0.6, CylinderUsedLow = 0.5, CylinderUsedHigh = 0.7;

    // Of the torque on the bolt head, what reaches the nut: all but the friction under the head, about half (from memory).
    private const double TorqueOnNut = 0.5;

    /// <summary>Thread and sizes of the nut.</summary>
    public required MetricThread Thread { get; init; }

    /// <summary>Form of the nut.</summary>
    public required NutForm Form { get; init; }

    /// <summary>Bore for the bolt, m.</summary>
    public required double Bore { get; init; }

    /// <summary>Print between the nut's bearing side and the face it is pulled towards, along the bolt, m.</summary>
    public required double Cover { get; init; }

    /// <summary>Print left between the pocket and the nearest side of the fin, m.</summary>
    public required double SideWall { get; init; }

    /// <summary>Area with which the nut bears, m²: its least size, less the bore; for a cross nut its shadow along the bolt.</summary>
    public double BearingArea
    {
        get
        {
            double s = Size.AcrossFlatsMinimum, hole = Math.PI / 4 * Bore * Bore;
            return Form switch
            {
                NutForm.Hexagon => Math.Sqrt(3) / 2 * s * s - hole,
                NutForm.Cross => Thread.CrossNut.Diameter * Thread.CrossNut.Length - hole,
                _ => s * s - hole,
            };
        }
    }

    /// <summary>Pull at which the pressure under the nut reaches the tensile strength along layers, N; plastics and resins yield later when pressed, so this is on the safe side.</summary>
    /// <param name="surround">What the pocket is made of.</param>
    public Ranged BearingPull(NutSurround surround)
    {
        ArgumentNullException.ThrowIfNull(surround);
        return surround.Along.Times(Require.Positive(BearingArea));
    }

    /// <summary>Pull at which the nut comes out with the print above it, N: F = π D L τ times 0.5 to 0.7, where τ is half the strength across layers (from memory).</summary>
    /// <param name="surround">What the pocket is made of.</param>
    /// <remarks>D is the nut's distance across flats, or for a cross nut the diameter of the circle with its shadow's area. Meant for covers of up to a few nut heights.</remarks>
    public Ranged PullOut(NutSurround surround)
    {
        ArgumentNullException.ThrowIfNull(surround);
        return ShearCylinder(Width, Cover, surround.Across);
    }

    /// <summary>Torque on the bolt's head at which the turning nut bends the wall beside it to its strength, N·m; null for a cross nut, which turns against the print fore and aft of it.</summary>
    /// <param name="surround">What the wall is made of.</param>
    /// <param name="direction">How it was printed: the wall bends along its layers; of a blade that lay, the wall is peeled off across them, and that strength counts.</param>
    /// <remarks>
    /// The nut presses on half of each flat with a triangle that is greatest at the corner. The wall is taken as a strip one flat wide that is built in at both ends: stress
    /// 6 (F b/8)/(m t²) (judgement). Half the torque reaches the nut (from memory). The friction under the nut, which helps, is left out.
    /// </remarks>
    public Ranged? WallBurstTorque(NutSurround surround, PrintDirection direction)
    {
        ArgumentNullException.ThrowIfNull(surround);
        if (Form is NutForm.Cross)
            return null;
        double wall = Require.Positive(SideWall);
        // A force of 8 σ m t²/(6 b) on a lever of b/3: the width b of the flat drops out.
        double perFlat = 8.0 / 18 * Size.HeightMinimum * wall * wall;
        Ranged strength = direction is PrintDirection.Standing ? surround.Along : surround.Across;
        return strength.Times((Form is NutForm.Hexagon ? 6 : 4) * perFlat / TorqueOnNut);
    }

    /// <summary>The pull F = π D L τ × 0.5 to 0.7 of a shear cylinder, N.</summary>
    /// <param name="diameter">D, m.</param>
    /// <param name="length">L, m.</param>
    /// <param name="strength">Tensile strength of the material, of which half is taken in shear, Pa.</param>
    internal static Ranged ShearCylinder(double diameter, double length, Ranged strength)
    {
        double cylinder = Math.PI * Require.Positive(diameter) * Require.Positive(length) * ShearOfTension;
        return new(CylinderUsed * cylinder * strength.Value, CylinderUsedLow * cylinder * strength.Low, CylinderUsedHigh * cylinder * strength.High);
    }

    private double Width => Form is NutForm.Cross ? Math.Sqrt(4 / Math.PI * Thread.CrossNut.Diameter * Thread.CrossNut.Length) : Size.AcrossFlats;

    private NutSize Size => Form switch
    {
        NutForm.Square => Thread.SquareNut,
        NutForm.ThinSquare => Thread.ThinSquareNut,
        _ => Thread.HexNut,
    };
}
