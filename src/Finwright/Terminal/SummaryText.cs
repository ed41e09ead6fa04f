using Finwright.Assessment.Packing;
using Finwright.Design;

namespace Finwright.Terminal;

/// <summary>A fin's numbers and findings as plain text: one sentence first, then tables, then findings.</summary>
internal static class SummaryText
{
    // Room for the names of files; a longer one pushes its words to the right.
    private const int NameWidth = 26;

    /// <summary>Writes the numbers and the findings.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">The numbers.</param>
    /// <param name="file">The design file, as the person named it.</param>
    /// <param name="findings">The findings.</param>
    public static void Write(TextStreams streams, FinSummary summary, string file, IReadOnlyList<Finding> findings)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name ?? file);
        if (summary.Planform is { } planform)
            WritePlanform(streams, summary, planform);
        if (summary.Parts.Count > 0)
            WriteParts(o, summary);
        if (summary.Hardware.Count > 0)
            WriteHardware(streams, summary);
        WriteMaking(streams, summary);
        o.WriteLine();
        string verdict = summary.CanBeMade ? "The fin can be made." : summary.Planform is null ? "Nothing could be worked out yet." : "The fin cannot be made as described.";
        o.WriteLine($"Found: {FindingText.Count(findings)}. {verdict}");
        FindingText.Write(o, findings, file, streams.Width);
    }

    /// <summary>Writes where files went.</summary>
    public static void WriteFiles(TextStreams streams, IReadOnlyList<PackFile> files, string folder)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine($"Wrote {files.Count} files to {folder}:");
        foreach (PackFile file in files)
        {
            string name = file.Path.Length < NameWidth ? file.Path.PadRight(NameWidth) : file.Path + "  ";
            streams.Out.WriteLine($"  {name}{Wrapping.Wrap(file.What, streams.Width, NameWidth + 2, name.Length + 2)}");
        }
    }

    private static void WritePlanform(TextStreams streams, FinSummary summary, PlanformSummary planform)
    {
        TextWriter o = streams.Out;
        string parts = summary.Parts.Count > 0 ? $" {summary.Parts.Count} parts on {summary.Plates} {(summary.Plates == 1 ? "plate" : "plates")}." : "";
        o.WriteLine(Wrapping.Wrap($"{planform.SpanMm:0.#} mm deep, {planform.AreaCm2:0.#} cm², leading edge swept {planform.LeadingEdgeSweepDegrees:0.#}° at mid-span.{parts}", streams.Width));
        o.WriteLine();
        NumberTable table = new(o);
        table.Row("span", planform.SpanMm, "0.0", "mm");
        table.Row("area", planform.AreaCm2, "0.0", "cm²");
        table.Row("aspect ratio", planform.AspectRatio, "0.00", "", "span² over area, of the single fin");
        table.Row("mean chord", planform.MeanChordMm, "0.0", "mm");
        table.Row("aerodynamic chord", planform.MeanAerodynamicChordMm, "0.0", "mm", "mean, weighted by chord");
        table.Row("middle of area", planform.CentroidDepthMm, "0.0", "mm", $"deep, {planform.CentroidAftMm:0.0} mm aft of the root quarter chord");
        table.Row("rake", planform.RakeDegrees, "0.0", "°", "quarter-chord line, from straight down");
        if (summary.PartsVolumeCm3 is double volume)
            table.Row("volume of the parts", volume, "0.0", "cm³", "plastic, infill and resin together");
        o.WriteLine();
        o.WriteLine("   depth     chord  thickness             twist   sweep of the leading edge");
        foreach (StationSummary s in summary.Stations)
            o.WriteLine($"{s.DepthMm,8:0.0} {s.ChordMm,9:0.0} {s.ThicknessMm,10:0.0} mm {s.ThicknessPercent,6:0.0} % {s.TwistDegrees,6:0.0}° {s.LeadingEdgeSweepDegrees,6:0.0}°");
    }

    private static void WriteParts(TextWriter o, FinSummary summary)
    {
        o.WriteLine();
        o.WriteLine("  part                plate  lies      size on the bed, mm      volume, cm³");
        foreach (PartSummary part in summary.Parts)
            o.WriteLine($"  {part.Name,-20}{(part.Plate is int plate ? $"{plate}" : "-"),5}  {Choice.Of(part.Attitude),-9} {$"{part.SizeXMm:0.0} x {part.SizeYMm:0.0} x {part.SizeZMm:0.0}",-24} {part.VolumeCm3,8:0.0}");
    }

    private static void WriteMaking(TextStreams streams, FinSummary summary)
    {
        (string What, string? Sentence)[] lines = [("print", summary.PrintSentence), ("pour", summary.PourSentence), ("cure", summary.CureSentence), ("cost", summary.PlanSentence)];
        if (lines.All(line => line.Sentence is null))
            return;
        streams.Out.WriteLine();
        foreach ((string what, string? sentence) in lines)
            if (sentence is not null)
                streams.Out.WriteLine($"  {what,-7}{Wrapping.Wrap(sentence, streams.Width, 9, 9)}");
    }

    private static void WriteHardware(TextStreams streams, FinSummary summary)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine("  to buy and cut");
        foreach (HardwareSummary item in summary.Hardware)
            streams.Out.WriteLine("  " + Wrapping.Wrap(item.Words, streams.Width, 6, 2));
    }
}
