using Finwright.Numerics.Differentiation;

namespace Finwright.Water.Sections.Layers;

/// <summary>
/// The interval in which a layer turns turbulent: laminar from its upstream end to the place of transition, turbulent from there on.
/// </summary>
/// <remarks>Drela and Giles, 1987, AIAA J. 25(10), with the place of transition found inside the interval, so that forces vary smoothly with angle.</remarks>
internal static class TransitionInterval
{
    // Stress at the place of transition over its equilibrium value, by shape factor: weak on a plate, nearly full over a bubble.
    // Drela, 1989, in Mueller (ed.), Low Reynolds Number Aerodynamics, Lecture Notes in Engineering 54, from memory, gives 1.8: half of it lets
    // bubbles at Reynolds numbers below 300,000 grow and burst as the tunnel sees them, and changes nothing above.
    private const double StressScale = 0.9;
    private const double StressShape = 3.3;

    /// <summary>Length from the upstream end at which the waves reach the critical n; infinite when they never do.</summary>
    /// <param name="a">The laminar station upstream.</param>
    /// <param name="slope">Rise of the growth dn/ds along the surface, from the stations before.</param>
    /// <param name="critical">n at transition.</param>
    /// <remarks>
    /// The growth is carried on from upstream: the station behind transition has a full, turbulent profile, and says nothing of the waves
    /// ahead of it.
    /// </remarks>
    public static double FreeRun(in LayerState<Jet4> a, double slope, double critical)
    {
        double missing = critical - a.Third.Value, growth = a.Growth.Value;
        if (missing <= 0)
            return 0;
        double square = growth * growth + 2 * slope * missing;
        return growth > 0 && square > 0 ? 2 * missing / (growth + Math.Sqrt(square)) : double.PositiveInfinity;
    }

    /// <summary>Place of the growth's slope among the third group of derivatives, behind both lengths.</summary>
    public const int SlopeVariable = 2;

    /// <summary>Residuals, with derivatives by both ends (first and second group), both lengths and the growth's slope (third group).</summary>
    /// <param name="a">Upstream unknowns: θ, δ*, n, speed.</param>
    /// <param name="b">Downstream unknowns: θ, δ*, √C_τ, speed.</param>
    /// <param name="from">Length at the upstream end.</param>
    /// <param name="to">Length at the downstream end.</param>
    /// <param name="slope">Rise of the growth dn/ds along the surface, as for <see cref="FreeRun"/>.</param>
    /// <param name="trip">Length at which something forces transition; infinite for nothing.</param>
    /// <param name="settings">What the side has in common.</param>
    /// <param name="residual">Takes the residuals.</param>
    /// <returns>Length at transition.</returns>
    public static double Equations(in LayerState<Jet12> a, ReadOnlySpan<double> b, double from, double to, double slope, double trip, in LayerSettings settings, Span<Jet12> residual)
    {
        Jet12 begin = Jet12.OfThird(from, 0), end = Jet12.OfThird(to, 1);
        Ends<Jet12> ends = new(
            a.Momentum,
            a.Displacement,
            a.Speed,
            Jet12.FromSecond(Jet4.Variable(b[0], 0)),
            Jet12.FromSecond(Jet4.Variable(b[1], 1)),
            Jet12.FromSecond(Jet4.Variable(b[3], 3)),
            begin,
            end);
        Jet12 place = Place(a, begin, from, slope, trip, settings.CriticalAmplification);

        Jet12 third = Jet12.FromSecond(Jet4.Variable(b[2], 2));
        LayerState<Jet12> laminarEnd = ends.At(place, LayerKind.Laminar, Jet12.Constant(settings.CriticalAmplification), settings);
        LayerState<Jet12> equilibrium = ends.At(place, LayerKind.Turbulent, Jet12.Constant(1), settings);
        LayerState<Jet12> turbulentStart = ends.At(place, LayerKind.Turbulent, StartingStress(equilibrium), settings);
        LayerState<Jet12> downstream = new(LayerKind.Turbulent, ends.MomentumB, ends.DisplacementB, third, ends.SpeedB, settings);

        Span<Jet12> laminar = stackalloc Jet12[LayerEquations.Count];
        LayerEquations.Laminar(a, laminarEnd, begin, place, Jet12.Constant(slope), laminar);
        LayerEquations.Turbulent(turbulentStart, downstream, place, end, residual);
        residual[0] += laminar[0];
        residual[1] += laminar[1];
        return place.Value;
    }

    /// <summary>√C_τ with which turbulence starts.</summary>
    public static T StartingStress<T>(in LayerState<T> turbulent)
        where T : struct, IJet<T> =>
        StressScale * turbulent.EquilibriumStress * JetMath.Exp(T.Constant(-StressShape) / (turbulent.Shape - 1));

    private static Jet12 Place(in LayerState<Jet12> a, Jet12 begin, double from, double slope, double trip, double critical)
    {
        double missing = critical - a.Third.Value;
        if (missing <= 0)
            return begin;
        Jet12 wanted = critical - a.Third;
        double square = a.Growth.Value * a.Growth.Value + 2 * slope * missing;
        double free = a.Growth.Value > 0 && square > 0 ? 2 * missing / (a.Growth.Value + Math.Sqrt(square)) : double.PositiveInfinity;
        // A trip stays put on the surface: both ends and the trip move together when the stagnation point does.
        return trip - from < free
            ? begin + Math.Max(trip - from, 0)
            : begin + 2 * wanted / (a.Growth + JetMath.Sqrt(JetMath.Square(a.Growth) + 2 * Jet12.OfThird(slope, SlopeVariable) * wanted));
    }

    /// <summary>Both ends of an interval, and what lies between them on a straight line.</summary>
    private readonly record struct Ends<T>(T MomentumA, T DisplacementA, T SpeedA, T MomentumB, T DisplacementB, T SpeedB, T From, T To)
        where T : struct, IJet<T>
    {
        public LayerState<T> At(T place, LayerKind kind, T third, in LayerSettings settings)
        {
            T share = (place - From) / (To - From);
            return new(
                kind,
                MomentumA + share * (MomentumB - MomentumA),
                DisplacementA + share * (DisplacementB - DisplacementA),
                third,
                SpeedA + share * (SpeedB - SpeedA),
                settings);
        }
    }
}
