using Finwright.Geometry.Outlines;
using Finwright.Water;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Afloat;

/// <summary>What a fin does when it sails, as far as it could be worked out.</summary>
public sealed record FinAfloat
{
    /// <summary>Why there are no load cases, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>The water.</summary>
    public required WaterProperties Water { get; init; }

    /// <summary>The loads, and where they come from.</summary>
    public required SailingBalance Balance { get; init; }

    /// <summary>What the trade says of the fin's size.</summary>
    public required IReadOnlyList<RuleOfThumb> RulesOfThumb { get; init; }

    /// <summary>Measures of the outline.</summary>
    public required Planform Planform { get; init; }

    /// <summary>Middle of the box, m aft of the root quarter chord.</summary>
    public required double BoxMiddle { get; init; }

    /// <summary>The load cases in which the water matters; empty when there is a <see cref="Problem"/>.</summary>
    public IReadOnlyList<CaseAfloat> Cases { get; init; } = [];

    /// <summary>The fin at cruise speed over leeway, under its hull.</summary>
    public IReadOnlyList<LiftingResult> Sweep { get; init; } = [];

    /// <summary>The same under an endless hull.</summary>
    public IReadOnlyList<LiftingResult> SweepUnderMirror { get; init; } = [];

    /// <summary>The same with no hull.</summary>
    public IReadOnlyList<LiftingResult> SweepUnderBareSurface { get; init; } = [];

    /// <summary>Pressure along one section at cruise; null when it could not be worked out.</summary>
    public PressureAlong? Pressure { get; init; }

    /// <summary>Lift slopes on an endless wall at cruise speed, per radian on the fin's area; null when there is a <see cref="Problem"/>.</summary>
    public SlopeOpinions? Slope { get; init; }

    /// <summary>How smooth it has to be at cruise; null when cruise was not worked out.</summary>
    public Smoothness? Smoothness => this[LoadCaseKind.Cruise] is { } cruise ? Smoothness.Of(Water, cruise.Load.Speed, Planform.MeanChord) : null;

    /// <summary>Whether weed slides off.</summary>
    public required Margin Weed { get; init; }

    /// <summary>Whether the fin is short enough for the spot.</summary>
    public required Margin Draught { get; init; }

    /// <summary>The lifting surface under the hull, ready for further states; null when there is a <see cref="Problem"/>.</summary>
    public LiftingSurface? Surface { get; init; }

    /// <summary>The lifting surface under an endless hull.</summary>
    internal LiftingSurface? SurfaceUnderMirror { get; init; }

    /// <summary>The lifting surface with no hull.</summary>
    internal LiftingSurface? SurfaceUnderBareSurface { get; init; }

    /// <summary>One load case; null when it was not worked out.</summary>
    /// <param name="kind">Which.</param>
    public CaseAfloat? this[LoadCaseKind kind] => Cases.FirstOrDefault(own => own.Load.Kind == kind);

    /// <summary>The water, at a speed and leeway.</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="leeway">Radians.</param>
    public FlowState Flow(double speed, double leeway) => new(speed, Water.Density, Water.KinematicViscosity, leeway);
}

/// <summary>The lift slope by the lifting surface, and by a formula that knows nothing of it.</summary>
/// <param name="Surface">By the lifting surface.</param>
/// <param name="Formula">By the formula (see <see cref="LiftFormula"/>); null where that does not reach.</param>
/// <param name="Aspect">Effective aspect ratio: twice span² over area.</param>
/// <param name="Sweep">Mean sweep of the quarter-chord line, weighted by chord, radians.</param>
public sealed record SlopeOpinions(double Surface, double? Formula, double Aspect, double Sweep);

/// <summary>Pressure round one section of the fin.</summary>
/// <param name="Depth">Depth of the section, m.</param>
/// <param name="X">Places, chords from the nose, from the upper trailing edge over the nose to the lower one.</param>
/// <param name="Cp">Pressure coefficients on the speed of sailing.</param>
/// <param name="BoilingCp">Pressure coefficient at which water boils there.</param>
public sealed record PressureAlong(double Depth, IReadOnlyList<double> X, IReadOnlyList<double> Cp, double BoilingCp);
