namespace Finwright.Workshop.Season;

/// <summary>Numbers that look like chance and are the same every time.</summary>
/// <remarks>G. L. Steele, D. Lea, C. H. Flood, 2014, Fast splittable pseudorandom number generators, OOPSLA, figure 17; normal ones after G. E. P. Box, M. E. Muller, 1958, Annals of Mathematical Statistics 29, 610-611.</remarks>
internal sealed class SeasonNoise(ulong seed)
{
    private ulong _state = seed;

    /// <summary>Between 0 and 1.</summary>
    public double Even()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Normal, mean 0, standard deviation 1.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Even())) * Math.Cos(2 * Math.PI * Even());
}
