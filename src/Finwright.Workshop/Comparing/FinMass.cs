using Finwright.Numerics;

namespace Finwright.Workshop.Comparing;

/// <summary>Mass of a finished fin from what goes into it.</summary>
internal static class FinMass
{
    // What sanding takes away and lacquer adds, of the whole (judgement).
    private const double Finishing = 0.01;

    /// <summary>The mass; its range joins those of its parts as independent.</summary>
    /// <param name="plastic">Plastic.</param>
    /// <param name="resin">Resin.</param>
    /// <param name="hardware">Rods, nuts, strip.</param>
    /// <returns>In the unit of the parts.</returns>
    public static Ranged Of(Ranged plastic, Ranged resin, Ranged hardware)
    {
        double mass = plastic.Value + resin.Value + hardware.Value;
        double low = Spread(part => part.Value - part.Low), high = Spread(part => part.High - part.Value);
        return new(mass, mass - low, mass + high);

        double Spread(Func<Ranged, double> of) => Math.Sqrt(Square(of(plastic)) + Square(of(resin)) + Square(of(hardware)) + Square(Finishing * mass));
    }

    private static double Square(double value) => value * value;
}
