using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections.Coupling;

/// <summary>How the stagnation point parts the stations into an upper and a lower side.</summary>
internal sealed class Sides
{
    private readonly SectionPanels _panels;
    private readonly double[] _length;

    public Sides(SectionPanels panels, int stations)
    {
        _panels = panels;
        _length = new double[stations];
    }

    /// <summary>The stagnation point lies between this node, the first of the upper side, and the next, the first of the lower.</summary>
    public int LastUpper { get; private set; }

    /// <summary>Length along the surface from the first node to the stagnation point.</summary>
    public double Stagnation { get; private set; }

    /// <summary>How far the stagnation point moves down the outline per rise of speed at the upper side's first station.</summary>
    public double MoveByUpper { get; private set; }

    /// <summary>The same for the lower side's first station.</summary>
    public double MoveByLower { get; private set; }

    /// <summary>Length from the stagnation point to each station.</summary>
    public ReadOnlySpan<double> Length => _length;

    /// <summary>Number of nodes on the section.</summary>
    public int Nodes => _panels.Count;

    /// <summary>Stations of one side, from the stagnation point on.</summary>
    public int CountOf(int side) => side > 0 ? LastUpper + 1 : Nodes - LastUpper - 1;

    /// <summary>Station of one side by its place in the order from the stagnation point.</summary>
    public int Station(int side, int order) => side > 0 ? LastUpper - order : LastUpper + 1 + order;

    /// <summary>+1 on the upper side and in the wake, -1 on the lower: speed along the side over strength.</summary>
    public int SpeedSign(int station) => station <= LastUpper || station >= Nodes ? 1 : -1;

    /// <summary>-1 on the upper side, +1 on the lower and in the wake: signed mass over mass.</summary>
    public int MassSign(int station) => station <= LastUpper ? -1 : 1;

    /// <summary>Parts the sides at the first place where the strengths change sign.</summary>
    /// <param name="strengths">Signed speeds at the nodes.</param>
    /// <returns>False when there is no such place.</returns>
    public bool Part(ReadOnlySpan<double> strengths)
    {
        // The change nearest the nose counts: noise at the trailing edge does not part the stream.
        for (int away = 0; away < Nodes; away++)
        {
            foreach (int at in (ReadOnlySpan<int>)[_panels.Nose + away, _panels.Nose - 1 - away])
            {
                if (at < 2 || at > Nodes - 4 || strengths[at] <= 0 || strengths[at + 1] > 0)
                    continue;
                LastUpper = at;
                return true;
            }
        }

        return false;
    }

    /// <summary>Parts the sides after a given node.</summary>
    public void PartAfter(int lastUpper) => LastUpper = lastUpper;

    /// <summary>Measures lengths from the stagnation point.</summary>
    public void Measure(ReadOnlySpan<double> speeds, Wake wake)
    {
        double above = speeds[LastUpper], below = speeds[LastUpper + 1], sum = above + below;
        double panel = _panels.Length[LastUpper];
        Stagnation = _panels.Arc[LastUpper] + panel * above / sum;
        MoveByUpper = panel * below / (sum * sum);
        MoveByLower = -panel * above / (sum * sum);
        for (int i = 0; i <= LastUpper; i++)
            _length[i] = Stagnation - _panels.Arc[i];
        for (int i = LastUpper + 1; i < Nodes; i++)
            _length[i] = _panels.Arc[i] - Stagnation;
        double distance = 1;
        for (int w = 0; w < Wake.Count; w++)
        {
            _length[Nodes + w] = distance;
            if (w + 1 < Wake.Count)
                distance += wake.Length[w];
        }
    }
}
