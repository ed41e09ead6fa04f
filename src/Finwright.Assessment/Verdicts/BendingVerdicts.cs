using Finwright.Assessment.Loaded;
using Finwright.Numerics;
using Finwright.Strength.Beams;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>How far the fin bends and twists, and whether the calculation reaches that far.</summary>
internal static class BendingVerdicts
{
    // Judgement: a fin that bends by a tenth of its depth at cruise sails on another outline than was drawn.
    private const double TightDeflectionPercent = 6, GreatestDeflectionPercent = 10;

    // Judgement: 2 to 5 degrees of leeway are usual, so a tip that turns by 3 has given up most of its load.
    private const double TightTwistDegrees = 1.5, GreatestTwistDegrees = 3;

    // Thickening beyond half as much again would make another fin.
    private const double MostThickening = 1.5;

    // Judgement: load and twist make each other grow to 1/(1 - q/q_D), to 1.8 times at two thirds of the speed of divergence and to 1.33 times at half of it.
    private const double LeastDivergenceFactor = 1.5, AmpleDivergenceFactor = 2;

    // A blade shorter than this many root chords is no beam.
    private const double LeastSlenderness = 1.6;

    // Range of the beam's answer: sections that warp and a root that is skewed (judgement).
    private const double BeamRange = 0.15;

    // A strike while the board is walked in at knee depth should be survived (judgement). No plastic fin survives one while planing, so that fails nobody.
    private const double WalkingSpeed = 1;

    private const string DeflectionCode = "deflection", DeflectionWhat = "deflection at cruise over the span",
        DeflectionWhy = "A bent fin pulls the board up to windward with part of its force and sails on a shorter span; some bending is felt as softness and wanted.",
        DeflectionChange = "Thicken the root, add or lengthen carbon rods, or shorten the span.";

    public static IEnumerable<Verdict> Of(FinLoaded loaded, FinVibration? vibration, double topSpeed)
    {
        if (loaded[LoadCaseKind.Cruise] is { } cruise && loaded.Structure is { } structure)
        {
            if (cruise.HasNumbers)
            {
                yield return Deflection(cruise);
                yield return Twist(cruise);
                yield return SecondOpinion(structure, cruise);
            }
            else
            {
                yield return NoDeflection(cruise);
            }

            yield return Divergence(loaded, topSpeed);
        }

        if (loaded[LoadCaseKind.Overload] is { HasNumbers: true } overload && overload.Plate.DeflectionShare > PlateSolution.LinearShare)
            yield return TooFar(overload);
        if (loaded.Grounding is { } strike)
            yield return Grounding(strike);
        if (vibration is { Eddies: not null, Wet.Count: > 0 })
            yield return Hum(vibration);
    }

    private static Verdict NoDeflection(CaseLoaded cruise) => cruise.Status is LoadedStatus.BeyondRange
        ? WaterVerdicts.Unknown(
            DeflectionCode, DeflectionWhat, DeflectionWhy,
            $"At cruise the blade would bend by more than {100 * CaseLoaded.FarthestShare:0} % of its span, which a linear calculation does not reach.", DeflectionChange) with
        { State = VerdictState.Fails }
        : WaterVerdicts.Unknown(DeflectionCode, DeflectionWhat, DeflectionWhy, "Load and shape did not settle at cruise: the blade is too soft, near divergence, or the flow over it did not converge.", DeflectionChange);

    private static Verdict Deflection(CaseLoaded cruise)
    {
        double percent = 100 * cruise.Plate.DeflectionShare;
        VerdictState state = WaterVerdicts.Below(percent, TightDeflectionPercent, GreatestDeflectionPercent);
        return new()
        {
            Code = DeflectionCode,
            Checked = DeflectionWhat,
            State = state,
            Value = new(percent, "%", 1),
            Limit = new(GreatestDeflectionPercent, "%", 0),
            Uncertainty = new(0.2 * percent, "%", 1),
            Certainty = Certainty.Judgement,
            HowSure = "Stiffness is good to some 15 to 20 % before a bench test, to half of that after one. The limit is judgement.",
            Found = $"At cruise the tip bends {1e3 * Math.Abs(cruise.Tip.MidChord):0.0} mm to leeward.",
            Why = DeflectionWhy,
            Change = state == VerdictState.Holds ? "" : DeflectionChange + Thicker(percent),
        };
    }

    // Stiffness goes with the cube of the thickness.
    private static string Thicker(double percent)
    {
        double factor = Math.Cbrt(percent / TightDeflectionPercent);
        return factor is > 1 and < MostThickening ? $" Sections about {100 * (factor - 1):0} % thicker, all else alike, would bend by {TightDeflectionPercent:0} %." : "";
    }

    private static Verdict Twist(CaseLoaded cruise)
    {
        double degrees = double.RadiansToDegrees(cruise.Tip.Twist);
        VerdictState state = WaterVerdicts.Below(Math.Abs(degrees), TightTwistDegrees, GreatestTwistDegrees);
        string force = cruise.SideForceShare is double share ? $" At the leeway of a stiff fin it would carry {100 * (share - 1):+0;-0;0} % side force." : "";
        string leeway = cruise is { BentLeeway: double bent, StiffLeeway: double stiff } ? $" For the same force it makes {double.RadiansToDegrees(Math.Abs(bent)):0.0}° of leeway instead of {double.RadiansToDegrees(Math.Abs(stiff)):0.0}°." : "";
        return new()
        {
            Code = "twist",
            Ground = degrees >= 0 ? "washes-out" : "washes-in",
            Checked = "twist of the tip at cruise",
            State = state,
            Value = new(Math.Abs(degrees), "°", 1),
            Limit = new(GreatestTwistDegrees, "°", 0),
            Uncertainty = new(0.25 * Math.Abs(degrees), "°", 1),
            Certainty = Certainty.Judgement,
            HowSure = "Twist is less sure than bending: it hangs on shear stiffness, which scatters more. The limit is judgement.",
            Found = $"The tip turns {Math.Abs(degrees):0.0}° and {(degrees >= 0 ? "washes out: it unloads itself as the load grows" : "washes in: it loads itself up as the load grows")}.{force}{leeway}",
            Why = "A tip that unloads forgives gusts and gives away drive; a tip that loads up stalls and vibrates first.",
            Change = state == VerdictState.Holds ? "" : degrees >= 0 ? "Less rake, a thicker outer blade, or a rod nearer the trailing edge makes it stiffer." : "Take more rake, or move the rods forward.",
        };
    }

    private static Verdict SecondOpinion(FinStructure structure, CaseLoaded cruise)
    {
        const string code = "second-opinion", what = "bending at cruise, by plate and by beam";
        double slenderness = structure.Plate.Fin.Span / structure.Sections[0].Chord;
        if (slenderness < LeastSlenderness)
            return WaterVerdicts.Unknown(code, what, TwoOpinions.Why, $"The blade is {slenderness:0.0} times as deep as its root is long: too short to be looked at as a beam.", "Trust the bench rather than either method.") with { Ground = "no-beam" };
        (double plate, double beam) = (cruise.Tip.MidChord, BeamTip(structure, cruise));
        return new TwoOpinions(code, what, plate, beam, BeamRange)
        {
            Certainty = Certainty.Derived,
            HowSure = "The beam knows each section by finite elements of its own, but not how a skewed root or a wide blade bends along the chord.",
            Found = $"At cruise the plate bends {1e3 * plate:0.0} mm at the tip, the beam {1e3 * beam:0.0} mm.",
            Change = "Take the bench test before relying on the numbers; wide or steeply raked blades are the plate's business.",
        }.Verdict;
    }

    /// <summary>Deflection of the tip by the beam, on the same root as the plate.</summary>
    internal static double BeamTip(FinStructure structure, CaseLoaded loaded)
    {
        BeamModel beam = structure.Beam;
        BeamShape shape = beam.Solve([.. loaded.Forces.Select(load => new BeamLoad(load.X, Math.Clamp(load.Y, beam.Root, beam.Tip), load.Force))]);
        PlateFin fin = structure.Plate.Fin;
        double middle = (fin.LeadingEdge(beam.Tip) + fin.TrailingEdge(beam.Tip)) / 2, slope = (shape.DeflectionAt(middle, beam.Tip) - shape.DeflectionAt(middle, 0.95 * beam.Tip)) / (0.05 * beam.Tip);
        double tip = shape.DeflectionAt(middle, beam.Tip) + slope * (fin.Span - beam.Tip);
        if (structure.Root.Kind is Design.RootHold.Clamped)
            return tip;
        // The root turns as a whole, and gives way sideways as its springs do.
        double turn = loaded.RootMoment / (structure.Root.ClosedStiffness * structure.Root.StiffnessShare(loaded.RootMoment));
        return tip + turn * fin.Span;
    }

    private static Verdict Divergence(FinLoaded loaded, double topSpeed)
    {
        const string code = "divergence", what = "speed at which the blade would twist without end, over top speed", why = "At divergence the load twists the blade faster than the blade resists; it breaks at once.";
        if (loaded.DivergenceSpeed is not double speed)
        {
            return new()
            {
                Code = code,
                Checked = what,
                State = VerdictState.Holds,
                Certainty = Certainty.Derived,
                HowSure = "Potential flow on the plate's own flexibility; swept blades do not diverge.",
                Found = "The blade washes out under load and never diverges.",
                Why = why,
            };
        }

        double factor = speed / topSpeed;
        VerdictState state = factor < LeastDivergenceFactor ? VerdictState.Fails : factor < AmpleDivergenceFactor ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = code,
            Checked = what,
            State = state,
            Value = new(Math.Min(factor, 99), "", 1),
            Limit = new(LeastDivergenceFactor, "", 1),
            MustStayAbove = true,
            Uncertainty = new(0.15 * Math.Min(factor, 99), "", 1),
            Certainty = Certainty.Derived,
            HowSure = "Potential flow on the plate's own flexibility, good to some 15 % in speed.",
            Found = $"The blade would diverge at {speed:0} m/s; top speed is {topSpeed:0.#} m/s.",
            Why = why,
            Change = state == VerdictState.Holds ? "" : "Rake the blade farther aft, or stiffen it in torsion: thicker sections, more walls.",
        };
    }

    private static Verdict TooFar(CaseLoaded overload) => WaterVerdicts.Unknown(
        "large-deflection",
        "whether the calculation reaches the load of a gust or landing",
        "Beyond a tenth of the span the blade stiffens and unloads in ways that a linear calculation does not know.",
        $"In a gust or landing the blade would bend by {100 * overload.Plate.DeflectionShare:0} % of its span; numbers are good up to {100 * PlateSolution.LinearShare:0} %. True deflections are smaller.",
        "Stiffen the blade, or take the numbers of that load as upper ends.");

    private static Verdict Grounding(GroundStrike strike)
    {
        VerdictState state = strike.BearableSpeed < WalkingSpeed ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = "grounding",
            Checked = "speed of a strike on hard ground that it bears",
            State = state,
            Value = new(strike.BearableSpeed, "m/s", 1),
            Limit = new(WalkingSpeed, "m/s", 1),
            MustStayAbove = true,
            Uncertainty = new(0.5 * strike.BearableSpeed, "m/s", 1),
            Certainty = Certainty.Judgement,
            HowSure = "By energy: the moving mass against the give of blade and joint; ground that gives, and a rider who flies off, make it better. Half to twice.",
            Found = $"{strike.Mass:0} kg against {1e-3 / strike.Compliance:0} N/mm: about {1e-3 * strike.BearableForce:0.0} kN are borne, then {strike.GivesFirst} gives. At {strike.Load.Speed:0.#} m/s hard ground would push with {1e-3 * strike.ForceAtSpeed:0.0} kN{(strike.RidesUp ? ", sliding up along the raked edge" : "")}.",
            Why = "No fin of plastic stops a planing board on rock; what gives first should be the fin, not the box.",
            Change = state == VerdictState.Holds ? "" : "Keep clear of the ground: draught is the remedy. More rake lets the fin slide up.",
        };
    }

    private static Verdict Hum(FinVibration vibration)
    {
        bool meets = vibration.Humming.Count > 0;
        string frequencies = string.Join(", ", vibration.Wet.Select(hertz => $"{hertz:0}"));
        return new()
        {
            Code = "hum",
            Checked = "eddies of the trailing edge against the first frequencies in water",
            State = meets ? VerdictState.Tight : VerdictState.Holds,
            Certainty = Certainty.CommonPractice,
            HowSure = "The eddies' rate stands on a band of common practice without a source that measured a fin.",
            Found = $"The fin swings at {frequencies} Hz in water; eddies leave the edge at {vibration.Eddies!.Low:0} to {vibration.Eddies.High:0} Hz from getting going to top speed.",
            Why = "Eddies that keep time with the blade make it hum, and tire it.",
            Change = meets ? "A thinner or one-sided bevelled trailing edge moves the eddies up; a loose base hums as well: check it first." : "",
        };
    }
}
