namespace Finwright.Water.Sections.Potential;

/// <summary>
/// Places between the nodes of an outline, each a cubic through the four nodes about it. Positions and strengths use the same weights, so that
/// vortices lie on the curved surface and vary smoothly: flat panels between the nodes themselves would make a circle's flow too fast by
/// an eighth of the square of the angle between neighbours.
/// </summary>
internal sealed class FineOutline
{
    /// <summary>Fine panels to each panel. Beyond four the remaining error is that of the cubic.</summary>
    public const int Share = 4;

    private const int Reach = 4;

    private readonly double[] _weights;
    private readonly int[] _first;

    public FineOutline(SectionPanels panels)
    {
        int count = (panels.Count - 1) * Share + 1;
        (X, Y, _weights, _first) = (new double[count], new double[count], new double[count * Reach], new int[count]);
        for (int f = 0; f < count; f++)
        {
            int panel = Math.Min(f / Share, panels.Count - 2);
            double at = panels.Arc[panel] + panels.Length[panel] * (f - panel * Share) / Share;
            int first = Math.Clamp(panel - 1, 0, panels.Count - Reach);
            _first[f] = first;
            for (int i = 0; i < Reach; i++)
            {
                double weight = 1;
                for (int j = 0; j < Reach; j++)
                    if (j != i)
                        weight *= (at - panels.Arc[first + j]) / (panels.Arc[first + i] - panels.Arc[first + j]);
                _weights[f * Reach + i] = weight;
                X[f] += weight * panels.X[first + i];
                Y[f] += weight * panels.Y[first + i];
            }
        }
    }

    /// <summary>x/c of the fine places.</summary>
    public double[] X { get; }

    /// <summary>y/c of the fine places.</summary>
    public double[] Y { get; }

    /// <summary>Shares a coefficient of one fine place out to the nodes about it.</summary>
    public void Distribute(int fine, double coefficient, Span<double> nodes)
    {
        for (int i = 0; i < Reach; i++)
            nodes[_first[fine] + i] += coefficient * _weights[fine * Reach + i];
    }
}
