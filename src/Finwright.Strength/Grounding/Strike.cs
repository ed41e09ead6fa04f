using Finwright.Numerics;

namespace Finwright.Strength.Grounding;

/// <summary>The fin strikes the bottom with its leading edge: what force stops board and rider, by energy.</summary>
/// <remarks>
/// All springs in a row, no damping, nothing breaks, the ground is hard and does not move, and the whole mass follows: F = V √(k m) (energy ½ m V² = ½ F²/k). The real rider
/// flies on and bends his knees, sand gives way, and the fin slides over: the force is an upper end. A raked edge meets the ground at a slant and rides up it. Estimate; no fin is
/// made to be run aground, and rocks can hurt the rider whatever the fin does.
/// </remarks>
public sealed record Strike
{
    // Beyond it an edge lies on the ground rather than strikes it: 80°.
    private const double GreatestLean = 80 * Math.PI / 180;

    /// <summary>Mass that is stopped, kg: board and as much of the rider as follows; see <see cref="EffectiveMass"/>.</summary>
    public required double Mass { get; init; }

    /// <summary>How far everything that is in the way of the force yields, m/N each: the fin fore and aft at the depth of the strike, base in its box, box in the board.</summary>
    public required IReadOnlyList<double> Compliances { get; init; }

    /// <summary>Lean of the leading edge from straight down at the place of the strike, radians, positive aft, 0 to 80°.</summary>
    public double EdgeLean { get; init; }

    /// <summary>Friction between edge and ground: 0.3 wet stone to 0.6 sand (judgement).</summary>
    public double Friction { get; init; }

    /// <summary>Force per yielding of all springs in a row, N/m.</summary>
    public double Stiffness
    {
        get
        {
            double sum = 0;
            foreach (double compliance in Compliances)
                sum += Require.NotNegative(compliance, nameof(Compliances));
            return 1 / Require.Positive(sum, nameof(Compliances));
        }
    }

    /// <summary>Whether the fin slides up over the ground instead of catching on it: the slope of the edge is more than friction holds.</summary>
    public bool RidesUp => Math.Tan(EdgeLean) > Friction;

    /// <summary>Mass that a strike at the tip of a lever feels, kg: 1/(1/m + r²/J).</summary>
    /// <param name="mass">Whole mass, kg.</param>
    /// <param name="pitchInertia">Moment of inertia in pitch about the centre of mass, kg·m²; the board alone has little, the rider adds most.</param>
    /// <param name="arm">Height of the centre of mass over the strike, m.</param>
    public static double EffectiveMass(double mass, double pitchInertia, double arm) =>
        1 / (1 / Require.Positive(mass) + Require.Finite(arm) * arm / Require.Positive(pitchInertia));

    /// <summary>Works out a strike.</summary>
    /// <param name="speed">Of the board, m/s, not negative.</param>
    public StrikeResult At(double speed)
    {
        Require.NotNegative(speed);
        (double horizontal, double vertical, double across) = Shares();
        double normal = across * speed * Math.Sqrt(Stiffness * Require.Positive(Mass));
        return new(
            0.5 * Mass * across * across * speed * speed,
            normal,
            horizontal * normal,
            vertical * normal,
            RidesUp);
    }

    /// <summary>Speed at which the force square to the edge reaches what the fin can take, m/s.</summary>
    /// <param name="allowable">Force square to the edge that fin, base or box can take, N.</param>
    public double SpeedAtWhich(double allowable) => Require.Positive(allowable) / At(1).NormalForce;

    // For a unit force square to the edge: its push aft and up, and the share of the speed that it takes.
    private (double Aft, double Up, double Across) Shares()
    {
        Require.Between(EdgeLean, 0, GreatestLean, nameof(EdgeLean));
        Require.Between(Friction, 0, 2, nameof(Friction));
        double cos = Math.Cos(EdgeLean), sin = Math.Sin(EdgeLean);
        return RidesUp ? (cos + Friction * sin, sin - Friction * cos, cos) : (1, 0, 1);
    }
}

/// <summary>What a strike does. Estimate, upper end.</summary>
/// <param name="Energy">Energy that the springs take up, J.</param>
/// <param name="NormalForce">Greatest force square to the edge, N; when the edge catches, the whole force, which then points aft.</param>
/// <param name="AftForce">Greatest push aft on the fin, N.</param>
/// <param name="UpForce">Greatest push up on the fin, N.</param>
/// <param name="RidesUp">Whether the fin slides up over the ground.</param>
public sealed record StrikeResult(double Energy, double NormalForce, double AftForce, double UpForce, bool RidesUp);
