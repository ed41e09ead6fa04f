using Finwright.Making.Cure;
using Finwright.Numerics;

namespace Finwright.Making.Resins;

/// <summary>A resin with its hardener, mixed: everything about it that pouring and curing need. SI; shares as fractions.</summary>
public sealed record ResinSystem
{
    /// <summary>Name for commands and design files: small letters, digits, hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>Name in words.</summary>
    public required string Title { get; init; }

    /// <summary>What to know before using it.</summary>
    public required string Remark { get; init; }

    /// <summary>How it reacts.</summary>
    public required CureKinetics Kinetics { get; init; }

    /// <summary>Where the reaction stops being free to go on; null when that is not known, and then it is never held back.</summary>
    public GlassTransitionCurve? GlassTransition { get; init; }

    /// <summary>How it thickens; null when that is not known, and then filling time is not told.</summary>
    public ResinViscosity? Viscosity { get; init; }

    /// <summary>Density of the mix, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Heat capacity of the mix, J/(kg K).</summary>
    public required double HeatCapacity { get; init; }

    /// <summary>Heat conductivity of the mix, W/(m K).</summary>
    public required double Conductivity { get; init; }

    /// <summary>Hardener for each kilogram of resin, kg; null when that is not known.</summary>
    public double? HardenerByMass { get; init; }

    /// <summary>Density of the resin before mixing, kg/m³; null when that is not known.</summary>
    public double? ResinPartDensity { get; init; }

    /// <summary>Density of the hardener before mixing, kg/m³; null when that is not known.</summary>
    public double? HardenerPartDensity { get; init; }

    /// <summary>Share of its volume that it loses from liquid to solid; 0 when that is not known.</summary>
    public double Shrinkage { get; init; }

    /// <summary>What the maker's data sheet says of the working time; null when it says nothing.</summary>
    public PotLifeStatement? PotLife { get; init; }

    /// <summary>Viscosity, Pa s; infinite once it no longer flows.</summary>
    /// <param name="temperature">K.</param>
    /// <param name="conversion">Share reacted.</param>
    /// <exception cref="InvalidOperationException">The resin does not tell how it thickens.</exception>
    public double ViscosityAt(double temperature, double conversion)
    {
        ResinViscosity own = Viscosity ?? throw new InvalidOperationException($"{Name} does not tell its viscosity.");
        double gel = Kinetics.GelConversion;
        if (conversion >= gel)
            return double.PositiveInfinity;
        double fresh = own.Reference * Math.Exp(own.Activation / CureRate.GasConstant * (1 / temperature - 1 / own.ReferenceTemperature));
        return fresh * Math.Pow(gel / (gel - conversion), own.ExponentA + own.ExponentB * conversion);
    }

    /// <summary>Each number's range and source, by field name of its file; empty for a system made in code.</summary>
    public IReadOnlyDictionary<string, ResinNumber> Numbers { get; init; } = new Dictionary<string, ResinNumber>(StringComparer.Ordinal);
}

/// <summary>The rate of cure: dα/dt = (k₁ + k₂ αᵐ)(1 − α)ⁿ, kᵢ = Aᵢ exp(−Eᵢ / (R T)).</summary>
/// <param name="Rate1">A₁, 1/s.</param>
/// <param name="Activation1">E₁, J/mol.</param>
/// <param name="Rate2">A₂, 1/s.</param>
/// <param name="Activation2">E₂, J/mol.</param>
/// <param name="OrderM">m.</param>
/// <param name="OrderN">n.</param>
/// <param name="HeatOfReaction">Heat set free from α = 0 to 1, J for each kilogram of mix.</param>
/// <param name="InitialConversion">α when it is poured.</param>
/// <param name="GelConversion">α at which it no longer flows.</param>
/// <remarks>M. R. Kamal and S. Sourour, "Kinetics and thermal characterization of thermoset cure", Polymer Engineering and Science 13 (1973) 59.</remarks>
public sealed record CureKinetics(
    double Rate1, double Activation1, double Rate2, double Activation2, double OrderM, double OrderN,
    double HeatOfReaction, double InitialConversion, double GelConversion);

/// <summary>Glass transition over conversion: Tg = T₀ + (T₁ − T₀) λ α / (1 − (1 − λ) α) (DiBenedetto's equation).</summary>
/// <param name="Uncured">T₀, at α = 0, K.</param>
/// <param name="Cured">T₁, at α = 1, K.</param>
/// <param name="Shape">λ, above 0, at most 1.</param>
public sealed record GlassTransitionCurve(double Uncured, double Cured, double Shape);

/// <summary>Viscosity over temperature and conversion: μ = μ₀(T) (α_gel / (α_gel − α))^(A + B α), μ₀ = reference × exp(E/R (1/T − 1/T_ref)).</summary>
/// <param name="Reference">Viscosity of the fresh mix at the reference temperature, Pa s.</param>
/// <param name="ReferenceTemperature">Reference temperature, K.</param>
/// <param name="Activation">E, J/mol.</param>
/// <param name="ExponentA">A.</param>
/// <param name="ExponentB">B.</param>
/// <remarks>J. M. Castro and C. W. Macosko, "Studies of mold filling and curing in the reaction injection molding process", AIChE Journal 28 (1982) 250 (form and exponents from memory).</remarks>
public sealed record ResinViscosity(double Reference, double ReferenceTemperature, double Activation, double ExponentA, double ExponentB);

/// <summary>A data sheet's working time.</summary>
/// <param name="Seconds">How long, s.</param>
/// <param name="Mass">In a cup of this mass, kg.</param>
/// <param name="Temperature">Started at, K.</param>
public sealed record PotLifeStatement(double Seconds, double Mass, double Temperature);

/// <summary>One number of a resin with its range and source.</summary>
/// <param name="Range">Value and range, in the unit of its field.</param>
/// <param name="Certainty">How sure.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record ResinNumber(Ranged Range, Certainty Certainty, string Source);
