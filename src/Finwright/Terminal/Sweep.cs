using System.Globalization;

namespace Finwright.Terminal;

/// <summary>A row of evenly spaced values, as it is given on the command line: <c>first:last:step</c>, or one value alone.</summary>
/// <param name="First">First value.</param>
/// <param name="Last">Last value; the row ends there or less than a step before.</param>
/// <param name="Step">Distance from one to the next, toward the last.</param>
internal sealed record Sweep(double First, double Last, double Step)
{
    // What a person may mean; more is a slip of the step.
    private const int MostValues = 401;

    // Decimals that a person may give; beyond lies the rounding of the arithmetic.
    private const int Decimals = 9;

    /// <summary>The values, in the order asked for.</summary>
    public IReadOnlyList<double> Values { get; } = [.. Enumerable.Range(0, Count(First, Last, Step)).Select(i => Math.Round(First + i * Step, Decimals))];

    /// <summary>Reads a row.</summary>
    /// <param name="option">Name of the option, for messages.</param>
    /// <param name="text">What was given.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="greatest">Greatest value allowed.</param>
    /// <param name="unit">Unit of the values, for messages.</param>
    /// <param name="why">Why values beyond are refused.</param>
    /// <exception cref="WrongInputException">It is no such row.</exception>
    public static Sweep Read(string option, string text, double least, double greatest, string unit, string why)
    {
        string[] parts = text.Split(':');
        double[] numbers = [.. parts.Select(part => Number(option, text, part))];
        Sweep sweep = numbers.Length switch
        {
            1 => new(numbers[0], numbers[0], 1),
            3 => Checked(option, text, numbers),
            _ => throw new WrongInputException($"{option} takes first:last:step, not \"{text}\".", $"Write for example {option} 0:12:1, or one value alone."),
        };
        foreach (double end in (double[])[sweep.First, sweep.Last])
            if (end < least || end > greatest)
                throw new WrongInputException($"{option} {text}: {end} {unit} is outside {least} to {greatest} {unit}, {why}.", $"Keep within {least} to {greatest} {unit}.");
        return sweep;
    }

    private static Sweep Checked(string option, string text, double[] numbers)
    {
        (double first, double last, double step) = (numbers[0], numbers[1], numbers[2]);
        if (step is 0)
            throw new WrongInputException($"{option} {text}: the step is 0.", $"Give a step that leads from {first} to {last}.");
        if ((last - first) * step < 0)
            throw new WrongInputException($"{option} {text}: a step of {step} leads away from {last}.", $"Turn the step's sign, or write {last}:{first}:{step}.");
        double count = Math.Abs((last - first) / step) + 1;
        return count <= MostValues + 0.5
            ? new(first, last, step)
            : throw new WrongInputException($"{option} {text} asks for {count:0} values; at most {MostValues} are worked out.", "Take a larger step.");
    }

    private static double Number(string option, string text, string part) =>
        double.TryParse(part.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : throw new WrongInputException($"{option} takes numbers as first:last:step, not \"{(text.Length <= 40 ? text : text[..37] + "...")}\".", $"Write for example {option} 0:12:1.");

    private static int Count(double first, double last, double step) => (int)Math.Floor((last - first) / step + 1e-9) + 1;
}
