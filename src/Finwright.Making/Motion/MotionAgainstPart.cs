using System.Globalization;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Making.Motion;

/// <summary>Whether a motion file prints the part that it should: its size, layers and plastic.</summary>
public static class MotionAgainstPart
{
    // A brim is this wide at most on each side (5 to 10 mm is common practice, no source).
    private const double WidestBrim = 0.012;

    // Heights are printed to a micrometre; two layers of unlike rounding differ by two.
    private const double SameHeight = 5e-6;

    // Sizes of one scale agree this well; shrinkage is made good by 0.2 to 0.5 % (common practice, no source).
    private const double SameScale = 0.002;

    /// <summary>Compares a file with the plan of its part.</summary>
    /// <param name="summary">The file.</param>
    /// <param name="plan">The plan.</param>
    /// <returns>The numbers side by side, and what does not fit.</returns>
    public static MotionComparison Compare(MotionSummary summary, PlannedPart plan)
    {
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(plan);
        List<Finding> findings = [];
        if (summary.PartBox is not Bounds box || summary.Layers.Count is 0 && summary.Spirals.Count is 0)
        {
            Tell(Severity.Error, "nothing-laid", "The file lays no plastic, so it does not print this part.", "Give the file that was made for this part.", "0", "");
            return new(default, 0, 0, findings);
        }

        double top = Math.Max(summary.Layers.Count > 0 ? summary.Layers[^1].Height : 0, summary.Spirals.Select(s => s.To).DefaultIfEmpty(0).Max());
        Point3 size = new(box.Size.X + plan.LineWidth, box.Size.Y + plan.LineWidth, top);
        Point3 upper = summary.UpperBox is Bounds above ? new(above.Size.X + plan.LineWidth, above.Size.Y + plan.LineWidth, top) : size;
        if (!Fits(size, plan))
        {
            bool brim = Fits(upper, plan) && size.X - upper.X < 2 * WidestBrim && size.Y - upper.Y < 2 * WidestBrim;
            if (brim)
                Tell(Severity.Note, "brim", $"Above the first millimetre the file has the part's size; below it is larger by {Millimetres(Math.Max(size.X - upper.X, size.Y - upper.Y))}: a brim.", "Trim it off.", Shown(size), Shown(plan.Size));
            else
                Tell(Severity.Caution, "size-differs", $"The file prints {Shown(size)}, but the part lies {Shown(plan.Size)} on the bed.{Scale(size, plan.Size)}", "Check the part's place on the bed, its scale, and that the file is this part's alone.", Shown(size), Shown(plan.Size));
        }

        if (Math.Abs(top - plan.Size.Z) > plan.LayerHeight)
            Tell(Severity.Caution, "height-differs", $"The file ends at {Millimetres(top)}, but the part is {Millimetres(plan.Size.Z)} high as it lies.", "Check how the part lies, and its scale.", Millimetres(top), Millimetres(plan.Size.Z));
        Layers(summary, plan, Tell);
        double plastic = summary.PartVolume + summary.StandingVolume;
        if (plastic < plan.Plastic.Low || plastic > plan.Plastic.High)
        {
            Tell(Severity.Caution, "plastic-differs", $"The file lays {Millilitres(plastic)} of plastic in the part; planned are {Millilitres(plan.Plastic.Value)}, at least {Millilitres(plan.Plastic.Low)} and at most {Millilitres(plan.Plastic.High)}.",
                "Check walls, solid layers, infill and line width, and the filament's diameter; the resin that the part takes changes with them.", Millilitres(plastic), $"{Millilitres(plan.Plastic.Low)} to {Millilitres(plan.Plastic.High)}");
        }

        return new(size, summary.Layers.Count, plastic, findings);

        void Tell(Severity severity, string code, string message, string remedy, string value, string limit) =>
            findings.Add(new(code, severity, "file", message, remedy) { Value = value, Limit = limit.Length > 0 ? limit : null });
    }

    private static void Layers(MotionSummary summary, PlannedPart plan, Action<Severity, string, string, string, string, string> tell)
    {
        if (summary.Spirals.Count > 0)
        {
            tell(Severity.Error, "spiral", $"From {Millimetres(summary.Spirals[0].From)} the file rises in one spiral of a single wall; such a part has no infill and holds no resin as planned.", "Switch the spiral mode off.", "spiral", "layers");
            return;
        }

        if (Math.Abs(summary.Layers.Count - plan.Layers) > 1)
            tell(Severity.Caution, "layers-differ", $"The file has {summary.Layers.Count} layers; planned are {plan.Layers}.", "Check layer height and scale.", Count(summary.Layers.Count), Count(plan.Layers));
        double before = 0;
        int odd = 0;
        (double Height, double At) first = default;
        for (int i = 0; i < summary.Layers.Count; i++)
        {
            double height = summary.Layers[i].Height - before;
            before = summary.Layers[i].Height;
            // The first layer is often thicker or thinner; the last may be what is left.
            if (i is 0 || i == summary.Layers.Count - 1 || Math.Abs(height - plan.LayerHeight) <= SameHeight)
                continue;
            first = odd++ is 0 ? (height, before) : first;
        }

        if (odd > 0)
        {
            tell(Severity.Caution, "layer-heights-differ", $"{odd} layers are not {Millimetres(plan.LayerHeight)} thick; the first of them, at {Millimetres(first.At)}, is {Millimetres(first.Height)}.",
                "Check the layer height; changing heights move the stops and the strength.", Millimetres(first.Height), Millimetres(plan.LayerHeight));
        }
    }

    // Turned by a quarter is the same part. A line's width each: the printer's path lies half a line inside, and corners are cut.
    private static bool Fits(Point3 size, PlannedPart plan) =>
        Near(size.X, plan.Size.X, plan.LineWidth) && Near(size.Y, plan.Size.Y, plan.LineWidth)
        || Near(size.X, plan.Size.Y, plan.LineWidth) && Near(size.Y, plan.Size.X, plan.LineWidth);

    private static bool Near(double size, double planned, double tolerance) => Math.Abs(size - planned) <= tolerance;

    private static string Scale(Point3 size, Point3 planned)
    {
        double height = size.Z / planned.Z, straight = size.X / planned.X;
        return Math.Abs(height - 1) > SameScale && Math.Abs(straight / height - 1) <= SameScale && Math.Abs(size.Y / planned.Y / height - 1) <= SameScale
            ? string.Create(CultureInfo.InvariantCulture, $" All three directions are {100 * height:0.#} % of the plan.")
            : "";
    }

    private static string Shown(Point3 size) => string.Create(CultureInfo.InvariantCulture, $"{size.X * 1e3:0.0} × {size.Y * 1e3:0.0} × {size.Z * 1e3:0.0} mm");

    private static string Millimetres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres * 1e3:0.##} mm");

    private static string Millilitres(double volume) => string.Create(CultureInfo.InvariantCulture, $"{volume * 1e6:0.0} ml");

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What a motion file should print. SI.</summary>
public sealed record PlannedPart
{
    /// <summary>Size of the part as it lies on the bed, metres; along x and y in either order.</summary>
    public required Point3 Size { get; init; }

    /// <summary>Width of a printed line, metres.</summary>
    public required double LineWidth { get; init; }

    /// <summary>Height of a layer, metres.</summary>
    public required double LayerHeight { get; init; }

    /// <summary>Layers.</summary>
    public required int Layers { get; init; }

    /// <summary>Plastic in the part, m³, with its range.</summary>
    public required Ranged Plastic { get; init; }
}

/// <summary>A motion file beside the plan of its part.</summary>
/// <param name="Size">Size that the file prints, metres: round the middles of the lines, and a line's width more.</param>
/// <param name="Layers">Layers in the file.</param>
/// <param name="Plastic">Plastic that it lays in the part, m³.</param>
/// <param name="Findings">What does not fit; empty when all does.</param>
public sealed record MotionComparison(Point3 Size, int Layers, double Plastic, IReadOnlyList<Finding> Findings);
