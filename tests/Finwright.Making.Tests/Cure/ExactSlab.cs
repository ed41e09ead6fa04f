namespace Finwright.Making.Tests.Cure;

/// <summary>Exact cooling of slabs and boxes with convection on all faces: θ = Σ C exp(-ζ² Fo), ζ tan ζ = Bi (Carslaw and Jaeger, Conduction of Heat in Solids, from memory).</summary>
internal static class ExactSlab
{
    /// <summary>Mean and middle of a box over its beginning: the product of three slabs.</summary>
    public static (double Mean, double Centre) Box(double x, double y, double z, double coefficient, double conductivity, double capacity, double time)
    {
        double mean = 1, centre = 1;
        foreach (double edge in new[] { x, y, z })
        {
            (double m, double c) = Series(coefficient * edge / 2 / conductivity, 4 * conductivity / capacity * time / (edge * edge));
            mean *= m;
            centre *= c;
        }

        return (mean, centre);
    }

    private static (double Mean, double Centre) Series(double biot, double fourier)
    {
        double mean = 0, centre = 0;
        for (int n = 0; n < 60; n++)
        {
            double low = n * Math.PI, high = low + Math.PI / 2;
            for (int i = 0; i < 80; i++)
            {
                double middle = (low + high) / 2;
                if (middle * Math.Tan(middle) < biot)
                    low = middle;
                else
                    high = middle;
            }

            double z = (low + high) / 2, c = 4 * Math.Sin(z) / (2 * z + Math.Sin(2 * z)), decay = Math.Exp(-z * z * fourier);
            centre += c * decay;
            mean += c * decay * Math.Sin(z) / z;
        }

        return (mean, centre);
    }
}
