namespace Finwright.Making.Cure;

/// <summary>A surface's coefficient over its temperature in one surroundings, worked out once: the solver asks for it some ten million times.</summary>
internal sealed class FilmTable
{
    // Half a kelvin: between two points a coefficient of Ra^(1/4) bends by less than a thousandth, except within the first kelvin, where no heat flows.
    private const double Spacing = 0.5;
    private const double Below = 80, Above = 420;

    private readonly double[] _coefficients;

    public FilmTable(SurfaceCooling cooling, double surroundings, double factor)
    {
        Surroundings = surroundings;
        _coefficients = new double[(int)((Below + Above) / Spacing) + 1];
        for (int i = 0; i < _coefficients.Length; i++)
            _coefficients[i] = factor * cooling.At(Math.Max(150, surroundings - Below + i * Spacing), surroundings);
    }

    /// <summary>Temperature of the surroundings, K.</summary>
    public double Surroundings { get; }

    /// <summary>Temperature of the surface when heat comes to it from a cell, K.</summary>
    /// <param name="cell">Temperature of the cell's middle, K.</param>
    /// <param name="conductance">From there to the surface, W/K.</param>
    /// <param name="area">Of the surface, m².</param>
    /// <param name="guess">Where to start, K.</param>
    /// <param name="slope">Change of the heat that leaves with the cell's temperature, W/K.</param>
    public double Surface(double cell, double conductance, double area, double guess, out double slope)
    {
        const double AtRest = 1e-9;
        const int Most = 60;
        double surface = guess, film = 0;
        // Newton's method on a piecewise smooth, rising function; a cell that is farther away than the range of the table meets the table's last value.
        for (int i = 0; i < Most; i++)
        {
            double coefficient = Coefficient(surface, out double change), over = surface - Surroundings;
            film = area * Math.Max(coefficient + change * over, 0.1 * coefficient);
            double step = (conductance * (cell - surface) - area * coefficient * over) / (conductance + film);
            surface += step;
            if (Math.Abs(step) < AtRest)
                break;
        }

        slope = conductance * film / (conductance + film);
        return surface;
    }

    private double Coefficient(double surface, out double change)
    {
        double place = (surface - Surroundings + Below) / Spacing;
        int i = Math.Clamp((int)place, 0, _coefficients.Length - 2);
        if (!(place >= 0 && place <= _coefficients.Length - 1))
        {
            change = 0;
            return place > 0 ? _coefficients[^1] : _coefficients[0];
        }

        change = (_coefficients[i + 1] - _coefficients[i]) / Spacing;
        return _coefficients[i] + (place - i) * (_coefficients[i + 1] - _coefficients[i]);
    }
}
