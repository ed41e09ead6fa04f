using Finwright.Strength.Beams;
using Finwright.Strength.Hydroelastic;

namespace Finwright.Strength.Tests.Hydroelastic;

/// <summary>Uniform cantilever with strip loads: EI 60, GJ 80 N m², length 0.22 m along its axis, chord 85 mm, axis 21.2 mm behind the lift, slope 3.770.</summary>
internal static class SweptWing
{
    public const double Length = 0.22, Chord = 0.085, Arm = 0.0212, Slope = 3.770;

    /// <summary>Dynamic pressure of divergence, Pa.</summary>
    /// <remarks>Lift per length along the axis q cos²Λ a₀ c (θ − w′ tan Λ), which is q cos Λ a₀ c times the twist of the section in the stream; it acts Arm ahead of the axis.</remarks>
    public static double? Pressure(double sweep, int strips, double arm = Arm)
    {
        double cos = Math.Cos(sweep), sin = Math.Sin(sweep), span = Length * cos;
        BeamModel beam = BeamModel.Create([new(0, 60, 80, 0, 1e12), new(span, 60, 80, Length * sin, 1e12)], BeamCut.SquareToAxis);
        double[] depths = [.. Enumerable.Range(0, strips).Select(i => span * (i + 0.5) / strips)];
        BeamLoad[] loads =
        [
            .. depths.Select(y => new BeamLoad(y * sin / cos, y, 1)),
            .. depths.Select(y => new BeamLoad(0, y, 0, sin, cos)),
        ];
        double[] response = new double[2 * strips * strips];
        double lift = cos * Slope * Chord * Length / strips;
        for (int i = 0; i < strips; i++)
        {
            response[i * strips + i] = lift;
            response[(strips + i) * strips + i] = arm * lift;
        }

        return Divergence.Pressure(beam.TwistFlexibility(loads, depths), response, strips);
    }
}
