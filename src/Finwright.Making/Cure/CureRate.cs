using System.Numerics;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>How fast a resin reacts at a temperature and conversion, slowed where it turns to glass.</summary>
/// <remarks>
/// <para>Rate: <see cref="CureKinetics"/>, times 1 / (1 + exp(C (α − α_c))) where the resin has a glass curve. α_c is the conversion at which the glass transition stands
/// <see cref="GlassOffset"/> above the resin's temperature, C is <see cref="GlassSteepness"/>. The form is that of C.-S. Chern and G. W. Poehlein, "A kinetic model for curing reactions of epoxides
/// with amines", Polymer Engineering and Science 27 (1987) 788 (from memory); tying α_c to the glass curve and both constants are judgement.</para>
/// <para>A diffusion term fitted to warm tests is not used: carried down to a workshop's temperature it stops the reaction before it has begun.</para>
/// <para>Limits: conversions are held within 10⁻⁹ and 1, temperatures within 150 and 900 K; constants fitted to warm tests are carried down to room temperature.</para>
/// </remarks>
public sealed class CureRate
{
    /// <summary>Molar gas constant, J/(mol K) (exact since 2019, rounded).</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>Steepness C of the slowing down, per unit of conversion. Judgement: from nine tenths to one tenth of the rate over 0.15 of conversion, or some 35 K of glass transition.</summary>
    public const double GlassSteepness = 30;

    /// <summary>How far the glass transition stands above the resin when it reacts at half its free rate, K. Judgement: with it, resins left in a room end with a glass transition 10 to 30 K above it after days, as they do (common practice, no source).</summary>
    public const double GlassOffset = 5;

    private const double LeastConversion = 1e-9, LeastTemperature = 150, GreatestTemperature = 900;

    private readonly double _rate1, _rate2, _over1, _over2, _m, _n;
    private readonly GlassTransitionCurve? _glass;

    /// <summary>Makes the rate of a resin.</summary>
    /// <param name="kinetics">How it reacts.</param>
    /// <param name="glass">Its glass curve; null when the reaction is never held back.</param>
    /// <param name="factor">Multiplies the rate; not below 0.</param>
    /// <exception cref="ArgumentException">Constants that are no kinetics.</exception>
    public CureRate(CureKinetics kinetics, GlassTransitionCurve? glass = null, double factor = 1)
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        Require.NotNegative(factor);
        _rate1 = factor * Require.NotNegative(kinetics.Rate1);
        _rate2 = factor * Require.NotNegative(kinetics.Rate2);
        _over1 = Require.NotNegative(kinetics.Activation1) / GasConstant;
        _over2 = Require.NotNegative(kinetics.Activation2) / GasConstant;
        _m = Require.NotNegative(kinetics.OrderM);
        _n = Require.NotNegative(kinetics.OrderN);
        Require.NotNegative(kinetics.HeatOfReaction);
        Require.Between(kinetics.InitialConversion, 0, 1);
        Require.Between(kinetics.GelConversion, 0, 1);
        if (glass is not null)
        {
            Require.Positive(glass.Uncured);
            Require.Positive(glass.Cured - glass.Uncured);
            Require.Positive(glass.Shape);
        }

        _glass = glass;
    }

    /// <summary>The rate of a resin.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="factor">Multiplies the rate.</param>
    public static CureRate Of(ResinSystem resin, double factor = 1)
    {
        ArgumentNullException.ThrowIfNull(resin);
        return new(resin.Kinetics, resin.GlassTransition, factor);
    }

    /// <summary>Rise of temperature when all the heat stays in the resin, K.</summary>
    public static double AdiabaticRise(ResinSystem resin)
    {
        ArgumentNullException.ThrowIfNull(resin);
        return resin.Kinetics.HeatOfReaction / resin.HeatCapacity;
    }

    /// <summary>Glass transition at a conversion, K.</summary>
    /// <param name="glass">The curve.</param>
    /// <param name="conversion">α.</param>
    public static double GlassTransition(GlassTransitionCurve glass, double conversion)
    {
        ArgumentNullException.ThrowIfNull(glass);
        return glass.Uncured + (glass.Cured - glass.Uncured) * glass.Shape * conversion / (1 - (1 - glass.Shape) * conversion);
    }

    /// <summary>Conversion at which the glass transition reaches a temperature; 0 below the curve, above 1 beyond it.</summary>
    /// <param name="glass">The curve.</param>
    /// <param name="temperature">K.</param>
    public static double ConversionAtGlass(GlassTransitionCurve glass, double temperature)
    {
        ArgumentNullException.ThrowIfNull(glass);
        double x = Math.Max(0, (temperature - glass.Uncured) / (glass.Cured - glass.Uncured));
        return x / (glass.Shape + (1 - glass.Shape) * x);
    }

    /// <summary>Rate dα/dt, 1/s.</summary>
    /// <param name="temperature">K.</param>
    /// <param name="conversion">α.</param>
    public double At(double temperature, double conversion) => At(temperature, conversion, out _, out _);

    /// <summary>Rate dα/dt, 1/s, and its derivatives.</summary>
    /// <param name="temperature">K.</param>
    /// <param name="conversion">α.</param>
    /// <param name="byTemperature">∂/∂T, 1/(s K).</param>
    /// <param name="byConversion">∂/∂α, 1/s.</param>
    public double At(double temperature, double conversion, out double byTemperature, out double byConversion)
    {
        double rate = At(new Vector<double>(temperature), new(conversion), out Vector<double> byT, out Vector<double> byA)[0];
        (byTemperature, byConversion) = (byT[0], byA[0]);
        return rate;
    }

    /// <summary>Rates of many places, 1/s.</summary>
    /// <param name="temperature">K, of each.</param>
    /// <param name="conversion">α of each.</param>
    /// <param name="rate">Takes dα/dt of each.</param>
    public void At(ReadOnlySpan<double> temperature, ReadOnlySpan<double> conversion, Span<double> rate)
    {
        int i = 0;
        for (; i <= rate.Length - Vector<double>.Count; i += Vector<double>.Count)
            At(new Vector<double>(temperature[i..]), new(conversion[i..]), out _, out _).CopyTo(rate[i..]);
        for (; i < rate.Length; i++)
            rate[i] = At(temperature[i], conversion[i]);
    }

    /// <summary>Rates of many places, 1/s, and their derivatives.</summary>
    /// <param name="temperature">K, of each.</param>
    /// <param name="conversion">α of each.</param>
    /// <param name="rate">Takes dα/dt of each.</param>
    /// <param name="byTemperature">Takes ∂/∂T of each, 1/(s K).</param>
    /// <param name="byConversion">Takes ∂/∂α of each, 1/s.</param>
    public void At(ReadOnlySpan<double> temperature, ReadOnlySpan<double> conversion, Span<double> rate, Span<double> byTemperature, Span<double> byConversion)
    {
        int i = 0;
        for (; i <= rate.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            At(new Vector<double>(temperature[i..]), new(conversion[i..]), out Vector<double> byT, out Vector<double> byA).CopyTo(rate[i..]);
            byT.CopyTo(byTemperature[i..]);
            byA.CopyTo(byConversion[i..]);
        }

        for (; i < rate.Length; i++)
            rate[i] = At(temperature[i], conversion[i], out byTemperature[i], out byConversion[i]);
    }

    /// <summary>Several at once: a third of the time of a cure went into rates when they were worked out one by one.</summary>
    private Vector<double> At(Vector<double> temperature, Vector<double> conversion, out Vector<double> byTemperature, out Vector<double> byConversion)
    {
        Vector<double> one = Vector<double>.One;
        Vector<double> t = Vector.Min(Vector.Max(temperature, new(LeastTemperature)), new(GreatestTemperature)), a = Vector.Min(Vector.Max(conversion, new(LeastConversion)), one);
        Vector<double> am = Vector.Exp(_m * Vector.Log(a)), rest = Vector.Max(one - a, new(1e-12)), bn = Vector.Exp(_n * Vector.Log(rest));
        Vector<double> k1 = _rate1 * Vector.Exp(new Vector<double>(-_over1) / t), k2 = _rate2 * Vector.Exp(new Vector<double>(-_over2) / t) * am;
        Vector<double> free = (k1 + k2) * bn, freeByT = (k1 * _over1 + k2 * _over2) / (t * t) * bn, freeByA = k2 * _m / a * bn - free * _n / rest;
        if (_glass is null)
        {
            (byTemperature, byConversion) = (freeByT, freeByA);
            return free;
        }

        double span = _glass.Cured - _glass.Uncured;
        Vector<double> x = Vector.Max(Vector<double>.Zero, (t + new Vector<double>(GlassOffset - _glass.Uncured)) / span), under = new Vector<double>(_glass.Shape) + (1 - _glass.Shape) * x;
        Vector<double> share = one / (one + Vector.Exp(GlassSteepness * (a - x / under))), slope = GlassSteepness * share * (one - share);
        // Below the glass curve's beginning nothing moves with the temperature.
        Vector<double> byX = Vector.ConditionalSelect(Vector.GreaterThan(x, Vector<double>.Zero), new Vector<double>(_glass.Shape) / (under * under * span), Vector<double>.Zero);
        byTemperature = freeByT * share + free * slope * byX;
        byConversion = freeByA * share - free * slope;
        return free * share;
    }

    /// <summary>Greatest rate over all conversions at a temperature, 1/s, and the conversion where it stands.</summary>
    /// <param name="temperature">K.</param>
    public (double Rate, double Conversion) Greatest(double temperature)
    {
        const int Samples = 1000;
        double best = 0, where = 0;
        for (int i = 0; i < Samples; i++)
        {
            double a = (double)i / Samples, rate = At(temperature, a);
            if (rate > best)
                (best, where) = (rate, a);
        }

        return (best, where);
    }
}
