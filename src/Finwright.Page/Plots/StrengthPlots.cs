using Finwright.Assessment.Loaded;
using Finwright.Assessment.Verdicts;
using Finwright.Page.Words;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Page.Plots;

/// <summary>What the loads do to the fin, as plots.</summary>
internal sealed class StrengthPlots(Reader reader)
{
    private readonly PlotUnits _units = new(reader);

    /// <summary>How far the middle of the chord bends from root to tip, case by case, and under the weight of the bench test.</summary>
    /// <param name="loaded">The fin.</param>
    /// <param name="bench">The bench test; null for none.</param>
    /// <param name="beside">The fin beside it, and its name; null for none.</param>
    public PlotSheet? Deflection(FinLoaded loaded, BenchPrediction? bench, (string Name, FinLoaded Loaded)? beside)
    {
        if (loaded.Structure is not { } structure)
            return null;
        List<PlotLine> lines = [];
        List<string> notes = [];
        double greatest = 0, span = structure.Plate.Fin.Span;
        foreach (CaseLoaded own in loaded.Cases.Where(own => own.Load.Kind is LoadCaseKind.Cruise or LoadCaseKind.Overload && own.HasNumbers))
        {
            if (own.Status is LoadedStatus.NotCarried)
                notes.Add(reader["{0}: more than the fin carries before it stalls; drawn as if it did.", Name(own)]);
            lines.Add(new(Name(own), Bend(own), WaterPlots.Ink(own.Load.Kind), WaterPlots.Dash(own.Load.Kind)));
            greatest = Math.Max(greatest, own.Plate.DeflectionShare);
        }

        if (bench is { Status: PlateStatus.Solved })
        {
            lines.Add(new(reader["{0} on the bench", reader.Tongue.Mass(bench.Load.Mass)], [.. bench.Along.Select(section => new PlotPoint(_units.Length * section.Depth, _units.Length * section.MidChord))], PlotInk.Quiet, PlotDash.Dashed));
            greatest = Math.Max(greatest, bench.DeflectionShare);
        }

        if (lines.Count == 0)
            return null;
        if (beside?.Loaded[LoadCaseKind.Cruise] is { HasNumbers: true } theirs)
            lines.Add(new(beside.Value.Name, Bend(theirs), PlotInk.Ink, PlotDash.Dashed) { IsGhost = true });
        bool isFar = greatest > PlateSolution.LinearShare;
        if (isFar)
            notes.Add(reader["Beyond a tenth of the depth the true fin bends less than drawn."]);
        return new(reader["How far the middle of the chord bends"], Depth(structure), _units.LengthAxis("deflection", 1), lines)
        {
            IsUpright = true,
            Notes = notes,
            Limits = isFar ? [new(reader["a tenth of the depth"], _units.Length * PlateSolution.LinearShare * span, PlotInk.Fails)] : [],
        };
    }

    /// <summary>How far the sections turn from root to tip, case by case.</summary>
    /// <inheritdoc cref="Deflection"/>
    public PlotSheet? Twist(FinLoaded loaded, (string Name, FinLoaded Loaded)? beside)
    {
        CaseLoaded[] settled = [.. loaded.Cases.Where(own => own.Status is LoadedStatus.Settled)];
        if (loaded.Structure is not { } structure || settled.Length == 0)
            return null;
        List<PlotLine> lines = [.. settled.Select(own => new PlotLine(Name(own), Turn(own), WaterPlots.Ink(own.Load.Kind), WaterPlots.Dash(own.Load.Kind)))];
        if (beside?.Loaded[LoadCaseKind.Cruise] is { Status: LoadedStatus.Settled } theirs)
            lines.Add(new(beside.Value.Name, Turn(theirs), PlotInk.Ink, PlotDash.Dashed) { IsGhost = true });
        CaseLoaded[] left = [.. loaded.Cases.Where(own => own.Status is not LoadedStatus.Settled)];
        return new(reader["How far the sections turn"], Depth(structure), _units.AngleAxis("twist", 2), lines)
        {
            IsUpright = true,
            Notes = [reader["Positive: the trailing edge goes farther and the blade unloads."], .. left.Length == 0 ? Array.Empty<string>() : [reader["Left out, since no steady answer was found: {0}.", reader.Tongue.List([.. left.Select(Name)])]]],
        };
    }

    /// <summary>How much of their strength the walls use at each depth, at their most strained place there.</summary>
    /// <param name="loaded">The fin.</param>
    public PlotSheet? WallUse(FinLoaded loaded)
    {
        if (loaded.Structure is not { } structure)
            return null;
        PlotLine[] lines = [.. loaded.Cases.Where(own => own.Load.Kind is LoadCaseKind.Cruise or LoadCaseKind.Overload && own.HasNumbers).Select(own => new PlotLine(
            Name(own),
            [.. WallUseAlong.Of(structure, own.Plate).Select(place => new PlotPoint(_units.Length * place.Depth, 100 * place.Use))],
            WaterPlots.Ink(own.Load.Kind),
            WaterPlots.Dash(own.Load.Kind)))];
        // Points of parts other than the walls stand where they are strained most.
        if (loaded[LoadCaseKind.Overload] is { HasNumbers: true } overload)
        {
            lines =
            [
                .. lines,
                .. overload.Peaks.Where(peak => peak.Part is not (StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers) && peak.Stress > 0)
                    .Select(peak => new PlotLine(reader[peak.Name], [new(_units.Length * Math.Clamp(peak.Y, 0, structure.Plate.Fin.Span), 100 / peak.Reserve)], PlotInk.Ink, PlotDash.Marks)),
            ];
        }

        return lines.Length == 0
            ? null
            : new(reader["How much of their strength walls, core and rods use"], Depth(structure), _units.PercentAxis("stress over strength") with { Least = 0 }, lines)
            {
                IsUpright = true,
                Limits = [new(reader["breaks"], 100, PlotInk.Fails)],
            };
    }

    /// <summary>First frequencies in air and in water, beside those of the eddies of the trailing edge.</summary>
    /// <param name="vibration">How the fin swings.</param>
    public PlotSheet? Frequencies(FinVibration vibration)
    {
        if (vibration.Dry.Count == 0)
            return null;
        double[] all = [.. vibration.Dry, .. vibration.Wet, .. vibration.Eddies is { } band ? new[] { band.Low, band.High } : []];
        List<PlotLine> lines = [new(reader["in air"], Numbered(vibration.Dry), PlotInk.Quiet, PlotDash.Marks)];
        if (vibration.Wet.Count > 0)
            lines.Add(new(reader["in water"], Numbered(vibration.Wet), PlotInk.Water, PlotDash.Marks));
        return new(
            reader["First frequencies of the blade"],
            _units.RatioAxis("number", 0) with { Least = 0.5, Greatest = vibration.Dry.Count + 0.5 },
            _units.FrequencyAxis("frequency") with { IsLogarithmic = true, Least = all.Min() / 1.5, Greatest = all.Max() * 1.5 },
            lines)
        {
            Limits = vibration.Eddies is { } eddies ? [new(reader["eddies of the trailing edge"], eddies.Low, PlotInk.Tight) { To = eddies.High }] : [],
        };
    }

    private string Name(CaseLoaded own) => reader[CaseWords.Name(own.Load.Kind)];

    private PlotAxis Depth(FinStructure structure) => _units.LengthAxis("depth below the hull") with { Least = 0, Greatest = _units.Length * structure.Plate.Fin.Span };

    // The side the load pushes to counts as positive.
    private static int Way(CaseLoaded own) => own.Load.SideForce < 0 ? -1 : 1;

    private PlotPoint[] Bend(CaseLoaded own) => [.. own.Along.Select(section => new PlotPoint(_units.Length * section.Depth, Way(own) * _units.Length * section.MidChord))];

    private PlotPoint[] Turn(CaseLoaded own) => [.. own.Along.Select(section => new PlotPoint(_units.Length * section.Depth, Way(own) * double.RadiansToDegrees(section.Twist)))];

    private static PlotPoint[] Numbered(IReadOnlyList<double> frequencies) => [.. frequencies.Select((hertz, i) => new PlotPoint(i + 1, hertz))];
}
