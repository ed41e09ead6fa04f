using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Sections;
using Finwright.Water;
using Finwright.Water.Finishes;
using Finwright.Water.FromDesign;
using Finwright.Water.Polars;

namespace Finwright.Assessment.Afloat;

/// <summary>Chooses where along the span, and for which Reynolds numbers, the sections of a blade are solved, and solves them.</summary>
internal static class PolarsOfBlade
{
    // Sections change slowly along the span. The last node stands clear of the rounding of a tip.
    private static readonly double[] Places = [0, 0.25, 0.5, 0.75, 0.95];

    // Steeper sweep counts as this, as in the lifting surface, radians (60 degrees).
    private const double SteepestSweep = Math.PI / 3;

    // Where the least Reynolds number of the last node is taken: nearly at the tip.
    private const double NearTip = 0.99;

    // Half the distance over which the sweep of the quarter-chord line is taken, share of the span.
    private const double SweepStep = 0.02;

    // Thickness ratios of the section method, with what a section given by points may be off.
    private const double Thinnest = 0.0395, Thickest = 0.2005;

    /// <summary>Solves the sections of a blade.</summary>
    /// <param name="design">Sections, finishes, speeds and water.</param>
    /// <param name="blade">The blade.</param>
    /// <param name="solver">Solves one curve.</param>
    /// <param name="progress">Takes the share that is done.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static FinPolars Solve(FinDesign design, Blade blade, SectionCurveSolver solver, IProgress<double>? progress, CancellationToken cancellation)
    {
        SurfaceFinish starboard = FinishFromDesign.Starboard(design), port = FinishFromDesign.Port(design);
        FinPolars none = new()
        {
            Family = null,
            CriticalAmplification = WaterFromDesign.CriticalAmplification(design.Brief.WaterState),
            StarboardFinish = starboard.Description,
            PortFinish = port.Description,
        };
        PolarNode[] nodes = [.. Nodes(design, blade, none.CriticalAmplification, starboard, port)];
        foreach (PolarNode node in nodes)
        {
            double ratio = SectionGeometry.Properties(node.Section).MaximumThickness;
            if (!(ratio >= Thinnest && ratio <= Thickest))
                return none with { Problem = $"At {100 * node.Position:0} % of the span the section is {100 * ratio:0.#} % thick; the flow is worked out for 4 to 20 %, where the method was compared with measurements. Change the thickness there." };
        }

        PolarSweepResult solved;
        try
        {
            solved = PolarSweep.Solve(nodes, solver, maximumLiftFactor: 1, progress, cancellation);
        }
        catch (ArgumentException problem)
        {
            // A section of the maker's own that passes every check of shape, and that the flow still cannot take.
            return none with { Problem = $"The flow past the sections cannot be worked out: {RefusalText.Of(problem)} Look at the sections in sections.svg, and smooth the one that looks odd." };
        }

        if (solved.Family is not null)
            return none with { Family = solved.Family };
        string places = string.Join(", ", solved.EmptyNodes.Select(n => $"{100 * nodes[n].Position:0} %"));
        return none with { Problem = $"The flow past the section at {places} of the span did not converge at any speed. Smooth that section, or take one of the named ones." };
    }

    private static IEnumerable<PolarNode> Nodes(FinDesign design, Blade blade, double amplification, SurfaceFinish starboard, SurfaceFinish port)
    {
        WaterProperties water = WaterFromDesign.Properties(design.Brief);
        double tip = water.ReynoldsNumber(design.Brief.GettingGoingSpeedMPerS, Math.Min(Normal(blade, NearTip), Normal(blade, Places[^1])));
        double[] least = [.. Places.Select(place => water.ReynoldsNumber(design.Brief.GettingGoingSpeedMPerS, Normal(blade, place)))];
        double[] greatest = [.. Places.Select(place => water.ReynoldsNumber(design.Brief.TopSpeedMPerS, blade.Outline.Chord(place * blade.Span)))];
        for (int i = 0; i < Places.Length; i++)
        {
            double depth = Places[i] * blade.Span, chord = blade.Outline.Chord(depth);
            // Between two nodes both are asked at the Reynolds number there, so each covers its neighbours' too.
            int before = Math.Max(i - 1, 0), after = Math.Min(i + 1, Places.Length - 1);
            IReadOnlyList<double> row = PolarGrid.ReynoldsNumbers(
                i == Places.Length - 1 ? Math.Min(tip, least[before]) : Math.Min(least[i], Math.Min(least[before], least[after])),
                Math.Max(greatest[i], Math.Max(greatest[before], greatest[after])));
            yield return new(Places[i], blade.SectionAt(depth), amplification, starboard.OnChord(chord), port.OnChord(chord), row);
        }
    }

    /// <summary>Chord that counts for the Reynolds number of the stream square to the quarter-chord line: chord times cos² of its sweep.</summary>
    private static double Normal(Blade blade, double place)
    {
        double from = Math.Max(place - SweepStep, 0) * blade.Span, to = Math.Min(place + SweepStep, 1) * blade.Span;
        double run = QuarterChord(blade, to) - QuarterChord(blade, from);
        double sweep = Math.Min(Math.Abs(Math.Atan2(run, to - from)), SteepestSweep), cosine = Math.Cos(sweep);
        return blade.Outline.Chord(place * blade.Span) * cosine * cosine;
    }

    private static double QuarterChord(Blade blade, double depth) => blade.Outline.LeadingEdge(depth) + 0.25 * blade.Outline.Chord(depth);
}
