namespace Finwright.Geometry.Blades;

/// <summary>What a run of rows along the span is.</summary>
internal enum RowKind
{
    /// <summary>A straight run of depth at constant offset.</summary>
    Straight,

    /// <summary>A level step: the offset changes, the depth stays.</summary>
    Step,

    /// <summary>The quarter circle between flange and skin.</summary>
    Fillet,

    /// <summary>The run to the tip, slowing toward it, so that what closes there like a square root closes evenly.</summary>
    Tip,
}

/// <summary>A smooth run of rows along the span: depth and offset from the skin over a parameter w from 0 to 1.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Depth at w = 0, metres.</param>
/// <param name="To">Depth at w = 1, metres.</param>
/// <param name="OffsetFrom">Offset at w = 0, metres.</param>
/// <param name="OffsetTo">Offset at w = 1, metres.</param>
internal readonly record struct RowSegment(RowKind Kind, double From, double To, double OffsetFrom, double OffsetTo)
{
    // Shorter runs than this share of the span would only make slivers.
    private const double ShortestRun = 1e-3;

    // Lengths below this, metres, would be lost in the single precision of mesh files.
    private const double Nothing = 1e-6;

    /// <summary>Depth and offset at w.</summary>
    public (double Depth, double Offset) At(double w)
    {
        // The ends are met to the last bit, so that neighbouring segments share them.
        if (w <= 0)
            return (From, OffsetFrom);
        if (w >= 1)
            return (To, OffsetTo);
        if (Kind == RowKind.Fillet)
        {
            (double sine, double cosine) = Math.SinCos(w * Math.PI / 2);
            return (From + (To - From) * (1 - cosine), OffsetFrom + (OffsetTo - OffsetFrom) * sine);
        }

        double along = Kind == RowKind.Tip ? w * (2 - w) : w;
        return (From + (To - From) * along, OffsetFrom + (OffsetTo - OffsetFrom) * w);
    }

    /// <summary>The runs of a loft, from the root face to the tip.</summary>
    public static List<RowSegment> Of(Blade blade, LoftOptions options)
    {
        List<RowSegment> runs = [];
        if (options.RootExtension > Nothing)
            runs.Add(new(RowKind.Straight, -options.RootExtension, 0, 0, 0));
        double depth = 0;
        if (options.Flange is { } flange)
        {
            if (options.RootExtension > Nothing)
                runs.Add(new(RowKind.Step, 0, 0, 0, flange.Overhang));
            runs.Add(new(RowKind.Straight, 0, flange.Thickness, flange.Overhang, flange.Overhang));
            double radius = flange.FilletRadius < Nothing ? 0
                : flange.Overhang - flange.FilletRadius < Nothing ? flange.Overhang
                : flange.FilletRadius;
            if (radius < flange.Overhang)
                runs.Add(new(RowKind.Step, flange.Thickness, flange.Thickness, flange.Overhang, radius));
            depth = flange.Thickness + radius;
            if (radius > 0)
                runs.Add(new(RowKind.Fillet, flange.Thickness, depth, radius, 0));
        }

        // Sections, twist and thickness may change their curvature at a station, so rows stop there.
        bool closing = blade.Closes || blade.TipRounding > 0;
        double tipStart = blade.TipRounding > 0 ? blade.Span - blade.TipRounding : blade.Span;
        double least = blade.Span * ShortestRun;
        foreach (double station in blade.StationDepths)
            if (station > depth + least && station < tipStart - least)
            {
                runs.Add(new(RowKind.Straight, depth, station, 0, 0));
                depth = station;
            }

        if (blade.TipRounding > 0 && tipStart > depth + least)
        {
            runs.Add(new(RowKind.Straight, depth, tipStart, 0, 0));
            depth = tipStart;
        }

        runs.Add(new(closing ? RowKind.Tip : RowKind.Straight, depth, blade.Span, 0, 0));
        return runs;
    }
}
