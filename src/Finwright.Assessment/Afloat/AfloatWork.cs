using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using Finwright.Water;
using Finwright.Water.FromDesign;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;

namespace Finwright.Assessment.Afloat;

/// <summary>Brings load, lifting surface and margins together, load case by load case.</summary>
internal static class AfloatWork
{
    // First guess of the depth of the load, share of the span; replaced by what the lifting surface answers at cruise.
    private const double FirstEffortDepth = 0.42;

    // Wetted bottom ahead of the fin while planing, m. Judgement; beyond 0.4 m the length no longer matters (own comparison of hull lengths).
    private const double WettedAhead = 0.6;

    private const double SweepStep = 0.5 * Math.PI / 180;
    private const int SweepSteps = 36, SweepPlaces = 20;

    // Thin sheet of the strip: modulus and Poisson's ratio of PETG (handbook values, from memory).
    private const double SheetModulus = 2.0e9, SheetPoisson = 0.38;

    // Depth over which the overhang of the strip runs out at its ends, m: a step in the edge would be a vortex of its own.
    private const double StripRunOut = 0.01;

    // Where along the span the pressure is shown: near the middle of the load.
    private const double PressurePlace = 0.4;

    private static readonly LoadCaseKind[] Kinds = [LoadCaseKind.GettingGoing, LoadCaseKind.Cruise, LoadCaseKind.TopSpeed, LoadCaseKind.Overload];

    /// <summary>Works out what a fin does.</summary>
    /// <param name="design">Brief and shape.</param>
    /// <param name="blade">The blade.</param>
    /// <param name="polars">Its sections.</param>
    /// <param name="progress">Takes the share that is done.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static FinAfloat Of(FinDesign design, Blade blade, FinPolars polars, IProgress<double>? progress, CancellationToken cancellation) =>
        WithCurves(WithoutCurves(design, blade, polars, progress, cancellation), cancellation);

    /// <summary>Works out everything but the curves over leeway.</summary>
    /// <inheritdoc cref="Of"/>
    public static FinAfloat WithoutCurves(FinDesign design, Blade blade, FinPolars polars, IProgress<double>? progress, CancellationToken cancellation)
    {
        WaterProperties water = WaterFromDesign.Properties(design.Brief);
        SailingBrief brief = SailingFromDesign.Brief(design.Brief);
        Planform planform = Planform.Of(blade.SplineOutline);
        FinAfloat answer = new()
        {
            Problem = polars.Problem,
            Water = water,
            Balance = SailingBalance.Of(brief, FirstEffortDepth * blade.Span),
            RulesOfThumb = RulesOfThumb.For(brief, planform.Area, blade.Span),
            Planform = planform,
            BoxMiddle = 0.25 * blade.Outline.Chord(0) - 1e-3 * design.Base.BladeOffsetMm,
            Weed = SpotFromDesign.Weed(design.Brief, planform),
            Draught = SpotFromDesign.Draught(design.Brief, planform),
        };
        if (polars.Family is not { } family)
            return answer;

        LiftingFin fin = Fin(design, blade, family);
        LiftingOptions options = new() { Tip = design.Shape.Tip == TipStyle.Flat ? TipForm.Square : TipForm.Faired };
        LiftingSurface hull, mirror, bare;
        try
        {
            hull = LiftingSurface.Create(fin, Hull(design.Brief, blade), options);
            mirror = LiftingSurface.Create(fin, RootCondition.FullMirror, options);
            bare = LiftingSurface.Create(fin, RootCondition.BareSurface, options);
        }
        catch (ArgumentException problem)
        {
            // An outline that can be drawn and printed, and that the lattice still cannot take.
            return answer with { Problem = $"The fin cannot be laid out as a lifting surface: {RefusalText.Of(problem)} Look at outline.svg, and smooth the edge that looks odd." };
        }

        progress?.Report(0.3);
        cancellation.ThrowIfCancellationRequested();

        // The depth of the load moves the side force a little, so the balance is struck once more with what the fin answers.
        LoadCase first = answer.Balance[LoadCaseKind.Cruise];
        LiftingResult start = hull.LeewayFor(answer.Flow(first.Speed, 0), first.SideForce).Result;
        SailingBalance balance = start.CentreOfEffort is { Y: > 0 } effort ? SailingBalance.Of(brief, Math.Min(effort.Y, blade.Span)) : answer.Balance;
        AirPath air = SailingFromDesign.AirPath(design.Brief, blade.Outline.Chord(0));
        LiftingSurface[] surfaces = [hull, mirror, bare];
        LeewayResult[] found = new LeewayResult[Kinds.Length * surfaces.Length];
        Parallel.For(0, found.Length, new() { CancellationToken = cancellation }, i =>
        {
            LoadCase load = balance[Kinds[i / surfaces.Length]];
            found[i] = surfaces[i % surfaces.Length].LeewayFor(answer.Flow(load.Speed, 0), load.SideForce);
        });
        progress?.Report(0.8);
        CaseAfloat[] cases =
        [
            .. Kinds.Select((kind, i) => new CaseAfloat
            {
                Load = balance[kind],
                UnderHull = found[i * surfaces.Length],
                UnderMirror = found[i * surfaces.Length + 1],
                UnderBareSurface = found[i * surfaces.Length + 2],
                Margins = VentilationMargins.Of(Margins(answer, blade, found[i * surfaces.Length], balance[kind].Speed, air)),
            }),
        ];
        return answer with
        {
            Balance = balance,
            Cases = cases,
            Surface = hull,
            SurfaceUnderMirror = mirror,
            SurfaceUnderBareSurface = bare,
            Slope = Slope(mirror, planform, answer.Flow(balance[LoadCaseKind.Cruise].Speed, 0)),
            Pressure = Pressure(answer, blade, family, cases[1].UnderHull.Result),
        };
    }

    private static SlopeOpinions Slope(LiftingSurface mirror, Planform planform, FlowState flow)
    {
        double span = mirror.Fin.Span, aspect = 2 * span * span / mirror.Area, swept = 0, chords = 0;
        for (int i = 0; i < SweepPlaces; i++)
        {
            double depth = span * (i + 0.5) / SweepPlaces, chord = mirror.Fin.Chord(depth);
            swept += chord * planform.QuarterChordSweep(depth);
            chords += chord;
        }

        double sweep = swept / chords;
        return new(mirror.Slope(flow) / (0.5 * flow.Density * flow.Speed * flow.Speed * mirror.Area), LiftFormula.SlopeOnWall(aspect, sweep), aspect, sweep);
    }

    /// <summary>Adds the curves over leeway at cruise speed.</summary>
    /// <param name="answer">What was worked out without them.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static FinAfloat WithCurves(FinAfloat answer, CancellationToken cancellation)
    {
        if (answer is not { Surface: { } hull, SurfaceUnderMirror: { } mirror, SurfaceUnderBareSurface: { } bare })
            return answer;
        LiftingSurface[] surfaces = [hull, mirror, bare];
        LiftingResult[][] sweeps = [.. surfaces.Select(_ => new LiftingResult[SweepSteps + 1])];
        double speed = answer.Balance[LoadCaseKind.Cruise].Speed;
        Parallel.For(0, surfaces.Length * (SweepSteps + 1), new() { CancellationToken = cancellation }, i =>
        {
            (int surface, int step) = Math.DivRem(i, SweepSteps + 1);
            sweeps[surface][step] = surfaces[surface].Solve(answer.Flow(speed, step * SweepStep));
        });
        return answer with { Sweep = sweeps[0], SweepUnderMirror = sweeps[1], SweepUnderBareSurface = sweeps[2] };
    }

    private static RootCondition Hull(Brief brief, Blade blade) => RootCondition.Hull(
        0.5e-3 * brief.TailWidthMm,
        WettedAhead,
        Math.Max(1e-3 * brief.FinToTailMm - 0.5 * blade.Outline.Chord(0), 0));

    private static LiftingFin Fin(FinDesign design, Blade blade, SectionPolarFamily family)
    {
        ISectionPolar Polar(double depth) => family.At(depth / blade.Span);
        if (design.Shape.Strip is not { OverhangMm: > 0 } strip)
            return blade.ToLiftingFin(Polar);
        double from = 1e-2 * strip.FromPercent * blade.Span, to = 1e-2 * strip.ToPercent * blade.Span, sheet = 1e-3 * strip.SheetMm;
        double rigidity = SheetModulus * sheet * sheet * sheet / (12 * (1 - SheetPoisson * SheetPoisson));
        LiftingFin plain = blade.ToLiftingFin(Polar, new FlexibleStrip(1e-3 * strip.OverhangMm, rigidity, from, to));
        double Overhang(double depth) => 1e-3 * strip.OverhangMm * Math.Clamp(Math.Min(depth - from, to - depth) / StripRunOut, 0, 1);
        return plain with { TrailingEdge = depth => blade.Outline.TrailingEdge(depth) + Overhang(depth) };
    }

    private static VentilationCase Margins(FinAfloat answer, Blade blade, LeewayResult found, double speed, AirPath air)
    {
        LiftingResult result = found.Result;
        return new()
        {
            Water = answer.Water,
            Speed = speed,
            Span = blade.Span,
            Area = result.Area,
            SideForce = Math.Abs(found.Asked),
            Strips = found.Status == LeewayStatus.NotConverged ? [] : [.. result.Strips.Where(strip => strip.Section is not null).Select(Condition)],
            AirPath = air,
        };

        // Angle from the one without lift, and the stalling angle likewise: their ratio is the strip's share of stall.
        StripCondition Condition(StripResult strip)
        {
            double stall = strip.StallShare > 0 ? Math.Abs(strip.SectionAngle) / strip.StallShare : Math.PI / 2;
            return new(
                Math.Clamp(strip.Depth, 0, blade.Span),
                Math.Min(Math.Abs(strip.SectionAngle), Math.PI / 2),
                stall > 0 ? stall : Math.PI / 2,
                Math.Clamp(strip.Section!.Value.Separation, 0, 1),
                strip.MinimumCp ?? strip.Section.Value.MinimumCp,
                Math.Abs(strip.Load));
        }
    }

    private static PressureAlong? Pressure(FinAfloat answer, Blade blade, SectionPolarFamily family, LiftingResult cruise) =>
        SectionPressure.Along(answer, blade, family, cruise, cruise.Strips.MinBy(own => Math.Abs(own.Depth - PressurePlace * blade.Span))!);
}
