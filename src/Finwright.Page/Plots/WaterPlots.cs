using Finwright.Assessment.Afloat;
using Finwright.Page.Words;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sailing;

namespace Finwright.Page.Plots;

/// <summary>What the fin does when it sails, as plots.</summary>
internal sealed class WaterPlots(Reader reader)
{
    // Angles and station at which a section's lift and drag are shown; drag beyond stall leaves every scale.
    private const double GreatestAngle = 16, AngleStep = 0.5, PolarPlace = 0.4;

    // The line of boiling water is drawn when it is not farther away than this many times the greatest suction.
    private const double FarAway = 1.6;

    // A stagnation point, and a little.
    private const double GreatestPressure = 1.1;

    private readonly PlotUnits _units = new(reader);

    /// <summary>Side force over leeway at the speed of cruise, between the bounds of the hull's effect; null when nothing was worked out.</summary>
    /// <param name="afloat">The fin.</param>
    /// <param name="beside">The fin beside it, and its name; null for none.</param>
    public PlotSheet? SideForce(FinAfloat afloat, (string Name, FinAfloat Afloat)? beside)
    {
        if (afloat[LoadCaseKind.Cruise] is not { } cruise || afloat.Sweep.Count == 0)
            return null;
        List<PlotLine> lines =
        [
            new(reader["under an endless hull"], Forces(afloat.SweepUnderMirror), PlotInk.Quiet, PlotDash.Dashed),
            new(reader["with no hull"], Forces(afloat.SweepUnderBareSurface), PlotInk.Quiet, PlotDash.Dotted),
            new(reader["under this board"], Forces(afloat.Sweep), PlotInk.Water),
        ];
        if (cruise.IsCarried)
            lines.Add(new(reader["carries it"], [new(Leeway(cruise.UnderHull.Result), _units.Force * cruise.UnderHull.Result.SideForce)], PlotInk.Ink, PlotDash.Marks));
        if (beside is { Afloat.Sweep.Count: > 0 } other)
            lines.Add(new(other.Name, Forces(other.Afloat.Sweep), PlotInk.Ink, PlotDash.Dashed) { IsGhost = true });
        PlotLimit needed = new(reader["needed {0}", reader.Tongue.Force(cruise.Load.SideForce)], _units.Force * cruise.Load.SideForce, PlotInk.Ink);
        PlotLimit[] stall = cruise.UnderHull.Limits.Onset is { } onset
            ? [new(reader["starts to stall"], _units.Force * Math.Abs(onset.SideForce), PlotInk.Fails)]
            : [];
        return new(reader["Side force against leeway at {0}", reader.Tongue.Speed(cruise.Load.Speed)], _units.AngleAxis("leeway") with { Least = 0 }, _units.ForceAxis("side force") with { Least = 0 }, lines)
        {
            Bands = [new(0, 1, PlotInk.Quiet)],
            Limits = [needed, .. stall],
            Notes = beside is { } other2 && other2.Afloat[LoadCaseKind.Cruise] is { } theirs && !theirs.Load.Speed.Equals(cruise.Load.Speed)
                ? [reader["{0} is drawn at its own {1}.", other2.Name, reader.Tongue.Speed(theirs.Load.Speed)]]
                : [],
        };
    }

    /// <summary>Drag over leeway at the speed of cruise.</summary>
    /// <inheritdoc cref="SideForce"/>
    public PlotSheet? Drag(FinAfloat afloat, (string Name, FinAfloat Afloat)? beside)
    {
        if (afloat[LoadCaseKind.Cruise] is not { } cruise || afloat.Sweep.Count == 0)
            return null;
        List<PlotLine> lines = [new(reader["all drag"], Drags(afloat, drag => drag.Total), PlotInk.Water), new(reader["of it induced"], Drags(afloat, drag => drag.Induced), PlotInk.Ink, PlotDash.Dashed)];
        if (cruise.IsCarried)
            lines.Add(new(reader["at cruise"], [new(Leeway(cruise.UnderHull.Result), _units.Force * cruise.UnderHull.Result.Drag.Total)], PlotInk.Ink, PlotDash.Marks));
        if (beside is { Afloat.Sweep.Count: > 0 } other)
            lines.Add(new(other.Name, Drags(other.Afloat, drag => drag.Total), PlotInk.Ink, PlotDash.Dashed) { IsGhost = true });
        return new(reader["Drag against leeway at {0}", reader.Tongue.Speed(cruise.Load.Speed)], _units.AngleAxis("leeway") with { Least = 0 }, _units.ForceAxis("drag") with { Least = 0, Decimals = 1 }, lines);
    }

    /// <summary>Load along the span at cruise, beside what each section could carry.</summary>
    /// <inheritdoc cref="SideForce"/>
    public PlotSheet? SpanLoad(FinAfloat afloat, (string Name, FinAfloat Afloat)? beside)
    {
        if (afloat[LoadCaseKind.Cruise] is not { } cruise)
            return null;
        LiftingResult at = cruise.UnderHull.Result;
        List<PlotLine> lines = [new(reader["load"], Along(at, strip => strip.Load), PlotInk.Water), new(reader["ellipse of the same force"], Along(at, strip => strip.EllipticLoad), PlotInk.Quiet, PlotDash.Dotted)];
        if (at.Strips.All(strip => strip.ClPeak is not null))
            lines.Add(new(reader["where the section stalls"], Along(at, strip => StallLoad(strip, at.Flow)), PlotInk.Fails, PlotDash.DashDot));
        if (beside?.Afloat[LoadCaseKind.Cruise] is { } theirs)
            lines.Add(new(beside.Value.Name, Along(theirs.UnderHull.Result, strip => strip.Load), PlotInk.Ink, PlotDash.Dashed) { IsGhost = true });
        string title = cruise.IsCarried
            ? reader["Load along the span, {0} at {1}", reader.Tongue.Force(cruise.Load.SideForce), reader.Tongue.Speed(cruise.Load.Speed)]
            : reader["Load along the span at its most, {0} at {1}", reader.Tongue.Force(Math.Abs(at.SideForce)), reader.Tongue.Speed(cruise.Load.Speed)];
        return new(title, Depth(afloat), _units.LineLoadAxis("side force per depth") with { Least = Math.Min(0, at.Strips.Min(strip => _units.LineLoad * strip.Load)) }, lines) { IsUpright = true };
    }

    /// <summary>How near each depth works to the stall of its section, case by case.</summary>
    /// <param name="afloat">The fin.</param>
    public PlotSheet? StallShare(FinAfloat afloat)
    {
        PlotLine[] lines = [.. afloat.Cases.Where(own => own.IsCarried && own.Load.Kind is not LoadCaseKind.Overload && own.UnderHull.Result.Strips.Any(strip => strip.StallShare > 0))
            .Select(own => new PlotLine(Case(own.Load.Kind), [.. own.UnderHull.Result.Strips.Select(strip => new PlotPoint(_units.Length * strip.Depth, 100 * strip.StallShare))], Ink(own.Load.Kind), Dash(own.Load.Kind)))];
        return lines.Length == 0
            ? null
            : new(reader["How near each depth is to the stall of its section"], Depth(afloat), _units.PercentAxis("angle, of that at stall") with { Least = 0 }, lines) { IsUpright = true, Limits = [new(reader["stall"], 100, PlotInk.Fails)] };
    }

    /// <summary>Lift of the section at two fifths of the span over angle of attack, at the Reynolds number of each case there.</summary>
    /// <param name="afloat">The fin.</param>
    /// <param name="family">Its sections.</param>
    public PlotSheet? Lift(FinAfloat afloat, SectionPolarFamily family) => Polar(
        afloat,
        family,
        reader["Lift of the section at {0} of the depth", reader.Tongue.Percent(PolarPlace)],
        _units.AngleAxis("angle of attack"),
        _units.RatioAxis("lift coefficient", 2),
        points => points.Select(point => new PlotPoint(point.Degrees, point.Forces.Cl)));

    /// <summary>Its drag over its lift, to the peak of lift.</summary>
    /// <inheritdoc cref="Lift"/>
    public PlotSheet? SectionDrag(FinAfloat afloat, SectionPolarFamily family) => Polar(
        afloat,
        family,
        reader["Drag of the section over its lift, up to its peak"],
        _units.RatioAxis("lift coefficient", 2),
        _units.RatioAxis("drag coefficient", 4) with { Least = 0 },
        points =>
        {
            List<PlotPoint> rising = [];
            foreach ((_, SectionForces forces) in points)
                if (rising.Count == 0 || forces.Cl > rising[^1].X)
                    rising.Add(new(forces.Cl, forces.Cd));
                else
                    break;
            return rising;
        });

    /// <summary>Pressure along one section at cruise; suction upward, as is the custom.</summary>
    /// <param name="afloat">The fin.</param>
    public PlotSheet? Pressure(FinAfloat afloat)
    {
        if (afloat.Pressure is not { } pressure)
            return null;
        PlotPoint[] points = [.. pressure.X.Zip(pressure.Cp, (x, cp) => new PlotPoint(100 * x, cp))];
        int nose = 0;
        for (int i = 1; i < points.Length; i++)
            if (points[i].X < points[nose].X)
                nose = i;
        double least = pressure.Cp.Min();
        PlotLimit[] boiling = pressure.BoilingCp > FarAway * Math.Min(least, -1) ? [new(reader["water boils here"], pressure.BoilingCp, PlotInk.Fails)] : [];
        return new(
            reader["Pressure along the section {0} below the hull at cruise", reader.Tongue.Length(pressure.Depth, 0)],
            _units.PercentAxis("place along the chord") with { Least = 0, Greatest = 100, Decimals = 1 },
            _units.RatioAxis("pressure coefficient", 2) with { IsReversed = true, Least = 1.05 * Math.Min(least, boiling.Length > 0 ? pressure.BoilingCp : least), Greatest = GreatestPressure },
            [
                new(reader["suction side"], Rising(points[..(nose + 1)]), PlotInk.Water),
                new(reader["pressure side"], Rising(points[nose..]), PlotInk.Ink, PlotDash.Dashed),
            ])
        {
            Limits = boiling,
        };
    }

    /// <summary>Load at which a strip's section peaks, N/m.</summary>
    internal static double StallLoad(StripResult strip, FlowState flow) => flow.DynamicPressure * strip.Chord * Math.Abs(strip.ClPeak ?? 0);

    private PlotSheet? Polar(FinAfloat afloat, SectionPolarFamily family, string title, PlotAxis x, PlotAxis y, Func<IReadOnlyList<(double Degrees, SectionForces Forces)>, IEnumerable<PlotPoint>> drawn)
    {
        ISectionPolar polar = family.At(PolarPlace);
        PlotLine[] lines = [.. afloat.Cases.Where(own => own.Load.Kind is not LoadCaseKind.Overload).Select(own =>
        {
            double reynolds = own.UnderHull.Result.Strips.MinBy(strip => Math.Abs(strip.Depth - PolarPlace * afloat.Planform.Span))!.ReynoldsNumber;
            (double, SectionForces)[] points = [.. Enumerable.Range(0, (int)(GreatestAngle / AngleStep) + 1).Select(i => (i * AngleStep, polar.At(double.DegreesToRadians(i * AngleStep), reynolds)))];
            return new PlotLine(reader["{0}, Re {1} million", reader.Tongue.Speed(own.Load.Speed), reader.Tongue.Number(1e-6 * reynolds, 2)], [.. drawn(points)], Ink(own.Load.Kind), Dash(own.Load.Kind));
        })];
        return lines.Length == 0 ? null : new(title, x, y, lines);
    }

    private PlotAxis Depth(FinAfloat afloat) => _units.LengthAxis("depth below the hull") with { Least = 0, Greatest = _units.Length * afloat.Planform.Span };

    private PlotPoint[] Along(LiftingResult result, Func<StripResult, double> of) => [.. result.Strips.Select(strip => new PlotPoint(_units.Length * strip.Depth, _units.LineLoad * of(strip)))];

    private PlotPoint[] Forces(IReadOnlyList<LiftingResult> sweep) => [.. Good(sweep).Select(result => new PlotPoint(Leeway(result), _units.Force * result.SideForce))];

    private PlotPoint[] Drags(FinAfloat afloat, Func<DragSplit, double> of) => [.. Good(afloat.Sweep).Select(result => new PlotPoint(Leeway(result), _units.Force * of(result.Drag)))];

    private static IEnumerable<LiftingResult> Good(IReadOnlyList<LiftingResult> sweep) => sweep.Where(result => result.Status is LiftingStatus.Attached or LiftingStatus.Stalled);

    // The sweep goes by half degrees: what arithmetic leaves beyond that is no place of its own.
    private static double Leeway(LiftingResult result) => Math.Round(double.RadiansToDegrees(result.Flow.Leeway), 6);

    private static PlotPoint[] Rising(IEnumerable<PlotPoint> points) => [.. points.GroupBy(point => point.X).Select(group => group.First()).OrderBy(point => point.X)];

    private string Case(LoadCaseKind kind) => reader[Finwright.Assessment.Verdicts.CaseWords.Name(kind)];

    internal static PlotInk Ink(LoadCaseKind kind) => kind switch
    {
        LoadCaseKind.GettingGoing => PlotInk.Tight,
        LoadCaseKind.Cruise => PlotInk.Water,
        LoadCaseKind.TopSpeed => PlotInk.Holds,
        _ => PlotInk.Ink,
    };

    internal static PlotDash Dash(LoadCaseKind kind) => kind switch
    {
        LoadCaseKind.GettingGoing => PlotDash.Dotted,
        LoadCaseKind.Cruise => PlotDash.Solid,
        LoadCaseKind.TopSpeed => PlotDash.Dashed,
        _ => PlotDash.DashDot,
    };
}
