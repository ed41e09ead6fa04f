using Finwright.Geometry.Sections;

namespace Finwright.Water.Tests.Evidence;

/// <summary>
/// Sections of the 6-series, whose form no formula gives: ordinates of Abbott, von Doenhoff and Stivers, 1945, NACA TR-824, and of the 64A010 of Loftin, 1948, NACA TR-903, from memory.
/// </summary>
internal static class SixSeries
{
    private static readonly double[] Stations = [0, 0.5, 0.75, 1.25, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100];

    // Half the thickness at each station, both in percent of the chord.
    private static readonly Dictionary<string, double[]> Halves = new()
    {
        ["63-006"] = [0, 0.503, 0.609, 0.771, 1.057, 1.462, 1.766, 2.010, 2.386, 2.656, 2.841, 2.954, 3.000, 2.971, 2.877, 2.723, 2.517, 2.267, 1.982, 1.670, 1.342, 1.008, 0.683, 0.383, 0.138, 0],
        ["63-009"] = [0, 0.749, 0.906, 1.151, 1.582, 2.196, 2.655, 3.024, 3.591, 3.997, 4.275, 4.442, 4.500, 4.447, 4.296, 4.056, 3.739, 3.358, 2.928, 2.458, 1.966, 1.471, 0.990, 0.550, 0.196, 0],
        ["63-012"] = [0, 0.985, 1.194, 1.519, 2.102, 2.925, 3.542, 4.039, 4.799, 5.342, 5.712, 5.930, 6.000, 5.920, 5.704, 5.370, 4.935, 4.420, 3.840, 3.210, 2.556, 1.902, 1.274, 0.707, 0.250, 0],
        ["64-006"] = [0, 0.494, 0.596, 0.754, 1.024, 1.405, 1.692, 1.928, 2.298, 2.572, 2.772, 2.907, 2.981, 2.995, 2.919, 2.775, 2.575, 2.331, 2.050, 1.740, 1.412, 1.072, 0.737, 0.423, 0.157, 0],
        ["64-009"] = [0, 0.739, 0.892, 1.128, 1.533, 2.109, 2.543, 2.898, 3.455, 3.868, 4.170, 4.373, 4.479, 4.490, 4.364, 4.136, 3.826, 3.452, 3.026, 2.561, 2.069, 1.564, 1.069, 0.611, 0.227, 0],
        ["64A010"] = [0, 0.804, 0.969, 1.225, 1.688, 2.327, 2.805, 3.199, 3.813, 4.272, 4.606, 4.837, 4.968, 4.995, 4.894, 4.684, 4.388, 4.021, 3.597, 3.127, 2.623, 2.103, 1.582, 1.062, 0.541, 0.021],
    };

    /// <summary>A section, drawn through its ordinates as a file of coordinates is.</summary>
    public static Section Named(string name)
    {
        double[] half = Halves[name];
        IEnumerable<IReadOnlyList<double>> Side(double sign) => Stations.Select((x, i) => (IReadOnlyList<double>)[x / 100, sign * half[i] / 100]);
        CoordinateReading reading = CoordinateReader.FromPoints(name, [.. Side(1).Reverse(), .. Side(-1).Skip(1)]);
        return reading.Section ?? throw new InvalidOperationException(reading.Problems[0].Message);
    }
}
