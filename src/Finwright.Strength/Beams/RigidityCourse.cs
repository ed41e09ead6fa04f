namespace Finwright.Strength.Beams;

/// <summary>How rigidities run between stations.</summary>
internal static class RigidityCourse
{
    /// <summary>Gauss's four points on 0 to 1: exact for a load that grows by steps on a uniform beam, and to seven digits on a tapered one with a dozen stations.</summary>
    public static readonly double[] Places = [0.06943184420297371, 0.33000947820757187, 0.66999052179242813, 0.93056815579702629];

    public static readonly double[] Weights = [0.17392742256872693, 0.32607257743127307, 0.32607257743127307, 0.17392742256872693];

    /// <summary>Bending and torsion: the fourth root runs straight, as for a section whose chord and thickness shrink together.</summary>
    public static double OfFourthPower(double from, double to, double share)
    {
        double root = Math.Sqrt(Math.Sqrt(from)) * (1 - share) + Math.Sqrt(Math.Sqrt(to)) * share;
        return root * root * root * root;
    }

    /// <summary>Shearing: the square root runs straight.</summary>
    public static double OfSquare(double from, double to, double share)
    {
        double root = Math.Sqrt(from) * (1 - share) + Math.Sqrt(to) * share;
        return root * root;
    }
}
