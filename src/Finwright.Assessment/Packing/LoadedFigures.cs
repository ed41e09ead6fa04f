using Finwright.Assessment.Figures;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Verdicts;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;
using OxyPlot;

namespace Finwright.Assessment.Packing;

/// <summary>The figures of a pack that show what loads do to the fin: deflection, twist, use of strength, frequencies.</summary>
internal static class LoadedFigures
{
    // Steps of the map within one of the grid on which walls are judged, and rows round the tip.
    private const int Finer = 2, TipRows = 12;

    /// <summary>Draws the figures that there is something to draw for.</summary>
    /// <returns>Name of the file, what it shows, the figure.</returns>
    public static IEnumerable<(string File, string What, Figure Figure)> Of(string name, FinLoaded? loaded, FinOnBench? bench, FinVibration? vibration)
    {
        if (loaded?.Structure is { } structure)
        {
            if (Deflection(name, structure, loaded, bench?.Prediction) is { } deflection)
                yield return ("deflection.svg", "how far the fin bends from root to tip when it sails, and under the weight of the bench test", deflection);
            if (Twist(name, structure, loaded) is { } twist)
                yield return ("twist.svg", "how far the sections turn from root to tip when the fin sails", twist);
            if (loaded[LoadCaseKind.Overload] is { } overload && Stress(name, structure, overload) is { } stress)
                yield return ("stress.svg", "where the walls use how much of their strength in a gust or landing", stress);
        }

        if (bench?.Prediction is { Status: PlateStatus.Solved } prediction)
            yield return ("bench.svg", "what the bench test should show from root to tip, with its range, to mark what you read on", BenchFigure.Draw($"{name}: the bench test", prediction));
        if (vibration is { Dry.Count: > 0 })
            yield return ("frequencies.svg", "at which frequencies the fin swings in air and in water, against the eddies of its trailing edge", FrequencyFigure.Draw($"{name}: first frequencies", vibration.Dry, vibration.Wet, vibration.Eddies is { } eddies ? (eddies.Low, eddies.High) : null));
    }

    private static Figure? Deflection(string name, FinStructure structure, FinLoaded loaded, BenchPrediction? bench)
    {
        List<DepthLine> lines = [];
        List<string> notes = [];
        double greatest = 0, span = structure.Plate.Fin.Span;
        foreach (LoadCaseKind kind in (LoadCaseKind[])[LoadCaseKind.Cruise, LoadCaseKind.Overload])
        {
            if (loaded[kind] is not { } own)
                continue;
            string word = CaseWords.Name(kind);
            if (!HasLoad(own))
            {
                notes.AddRange(LeftOut([own]));
                continue;
            }

            if (own.Status is LoadedStatus.NotCarried)
                notes.Add($"{Capital(word)}: more than the fin carries before it stalls; drawn as if it did.");
            lines.Add(new(word, kind is LoadCaseKind.Cruise ? FigureSheet.Water : FigureSheet.Ink, LineStyle.Solid, [.. own.Along.Select(section => Bend(section, own))]));
            greatest = Math.Max(greatest, own.Plate.DeflectionShare);
        }

        if (bench is { Status: PlateStatus.Solved })
        {
            lines.Add(new($"{bench.Load.Mass:0.#} kg on the bench", FigureSheet.QuietInk, LineStyle.Dash, [.. bench.Along.Select(section => (1e3 * section.Depth, 1e3 * section.MidChord))]));
            greatest = Math.Max(greatest, bench.DeflectionShare);
        }

        if (lines.Count == 0)
            return null;
        bool isFar = greatest > PlateSolution.LinearShare;
        if (isFar)
            notes.Add($"Beyond a tenth of the depth, {1e3 * PlateSolution.LinearShare * span:0} mm, the true fin bends less than drawn.");
        string words = string.Join(' ', lines.Select(line => $"{Capital(line.Name)}: {line.Samples[^1].Value:0.0} mm at the tip."));
        return OverDepthFigure.Draw(
            $"{name}: deflection of the middle of the chord", notes, "deflection, mm", " mm", 1e3 * span, lines, isFar ? (1e3 * PlateSolution.LinearShare * span, "a tenth of the depth") : null, words);
    }

    private static Figure? Twist(string name, FinStructure structure, FinLoaded loaded)
    {
        CaseLoaded[] settled = [.. loaded.Cases.Where(own => own.Status is LoadedStatus.Settled)];
        if (settled.Length == 0)
            return null;
        DepthLine[] lines = [.. settled.Select(own => Line(own, own.Along.Select(section => (1e3 * section.Depth, Way(own) * double.RadiansToDegrees(section.Twist)))))];
        string words = string.Join(' ', lines.Select(line => $"{Capital(line.Name)}: the tip turns {line.Samples[^1].Value:0.0}°."));
        return OverDepthFigure.Draw(
            $"{name}: twist of the sections",
            LeftOut([.. loaded.Cases.Where(own => own.Status is not LoadedStatus.Settled)]),
            "twist, ° (positive: the trailing edge goes farther and the blade unloads)",
            "°",
            1e3 * structure.Plate.Fin.Span,
            lines,
            null,
            words);
    }

    private static Figure? Stress(string name, FinStructure structure, CaseLoaded overload)
    {
        if (!HasLoad(overload) || overload.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers).MinBy(peak => peak.Reserve) is not { Stress: > 0 } worst)
            return null;
        double greatest = 100 / worst.Reserve;
        string[] about = [$"{greatest:0} %: most used,", $"{worst.Name},", $"{1e3 * worst.Y:0} mm below the hull"];
        string[] notes = overload.Status is LoadedStatus.NotCarried ? ["More than the fin carries before it stalls; drawn as if it did."] : [];
        return StressFigure.Draw(
            $"{name}: use of the walls' strength in a gust or landing, {overload.Load.SideForce:0} N",
            notes,
            WallUse(structure, overload.Plate),
            new(1e3 * worst.X, 1e3 * worst.Y),
            greatest,
            about,
            $"The walls use at most {greatest:0} % of their strength: {worst.Name}, {1e3 * worst.Y:0} mm below the hull. Close to the edges and to the root, what is found nearby is carried on.");
    }

    /// <summary>Use of the walls' strength over the planform, per cent, places in millimetres.</summary>
    /// <remarks>The grid holds that on which walls are judged. Outside it, at the edges, the tip and the clamped root, a plate's stresses are not those of the solid: there the nearest judged value stands.</remarks>
    internal static FieldGrid WallUse(FinStructure structure, PlateSolution plate)
    {
        PlateFin fin = structure.Plate.Fin;
        JudgedZone zone = LayerMargins.Judged(fin);
        int chordSteps = Finer * zone.ChordSteps, spanSteps = Finer * zone.SpanSteps, columns = chordSteps + 3;
        double[] inner = [.. Enumerable.Range(0, chordSteps + 1).Select(i => zone.EdgeShare + (1 - 2 * zone.EdgeShare) * i / chordSteps)], shares = [0, .. inner, 1];
        double[] judged = [.. Enumerable.Range(0, spanSteps + 1).Select(j => zone.FromDepth + (zone.ToDepth - zone.FromDepth) * j / spanSteps)];
        double[] use = [.. judged.SelectMany(_ => inner, (y, share) => 100 * LayerMargins.WallUse(plate, structure.Materials, structure.Direction, At(fin, share, y), y))];
        // Rows draw together towards a round tip.
        double[] depths = [0, .. judged, .. Enumerable.Range(1, TipRows).Select(j => zone.ToDepth + (fin.Span - zone.ToDepth) * Math.Sin(j * Math.PI / (2 * TipRows)))];
        double[] values = new double[depths.Length * columns];
        DataPoint[] places = new DataPoint[values.Length];
        for (int j = 0; j < depths.Length; j++)
        {
            for (int i = 0; i < columns; i++)
            {
                places[j * columns + i] = new(1e3 * At(fin, shares[i], depths[j]), 1e3 * depths[j]);
                values[j * columns + i] = use[Math.Clamp(j - 1, 0, spanSteps) * (chordSteps + 1) + Math.Clamp(i - 1, 0, chordSteps)];
            }
        }

        return new(columns, places, values);
    }

    private static double At(PlateFin fin, double share, double depth) => fin.LeadingEdge(depth) + share * (fin.TrailingEdge(depth) - fin.LeadingEdge(depth));

    private static bool HasLoad(CaseLoaded own) => own.Status is LoadedStatus.Settled or LoadedStatus.NotCarried;

    // The side the load pushes to counts as positive.
    private static int Way(CaseLoaded own) => own.Load.SideForce < 0 ? -1 : 1;

    private static (double DepthMm, double Value) Bend(SectionBend section, CaseLoaded own) => (1e3 * section.Depth, Way(own) * 1e3 * section.MidChord);

    private static DepthLine Line(CaseLoaded own, IEnumerable<(double DepthMm, double Value)> samples)
    {
        (OxyColor colour, LineStyle style) = own.Load.Kind switch
        {
            LoadCaseKind.Cruise => (FigureSheet.Water, LineStyle.Solid),
            LoadCaseKind.GettingGoing => (FigureSheet.QuietInk, LineStyle.Dot),
            LoadCaseKind.TopSpeed => (FigureSheet.Tight, LineStyle.Dash),
            _ => (FigureSheet.Ink, LineStyle.Solid),
        };
        return new(CaseWords.Name(own.Load.Kind), colour, style, [.. samples]);
    }

    private static IReadOnlyList<string> LeftOut(IReadOnlyList<CaseLoaded> cases) =>
    [
        .. cases.GroupBy(own => own.Status is LoadedStatus.NotCarried ? "the fin stalls before it carries that load" : "load and shape did not settle", StringComparer.Ordinal)
            .Select(group => $"Left out, since {group.Key}: {string.Join(", ", group.Select(own => CaseWords.Name(own.Load.Kind)))}."),
    ];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
