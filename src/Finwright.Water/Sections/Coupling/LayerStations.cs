namespace Finwright.Water.Sections.Coupling;

/// <summary>The unknowns at every station: nodes of the section in their order, then the wake.</summary>
internal sealed class LayerStations
{
    public LayerStations(int count)
    {
        Momentum = new double[count];
        Mass = new double[count];
        Amplification = new double[count];
        Stress = new double[count];
        Speed = new double[count];
        IsTurbulent = new bool[count];
    }

    /// <summary>θ.</summary>
    public double[] Momentum { get; }

    /// <summary>Edge speed times δ*.</summary>
    public double[] Mass { get; }

    /// <summary>n; of meaning while laminar.</summary>
    public double[] Amplification { get; }

    /// <summary>√C_τ; of meaning while turbulent.</summary>
    public double[] Stress { get; }

    /// <summary>Edge speed along the side, away from the stagnation point.</summary>
    public double[] Speed { get; }

    /// <summary>Which of the two third unknowns holds.</summary>
    public bool[] IsTurbulent { get; }

    /// <summary>Number of stations.</summary>
    public int Count => Momentum.Length;

    /// <summary>δ*.</summary>
    public double Displacement(int station) => Mass[station] / Speed[station];

    /// <summary>n or √C_τ, whichever holds.</summary>
    public double Third(int station) => IsTurbulent[station] ? Stress[station] : Amplification[station];

    /// <summary>Takes over everything from another set.</summary>
    public void CopyFrom(LayerStations other)
    {
        other.Momentum.CopyTo(Momentum, 0);
        other.Mass.CopyTo(Mass, 0);
        other.Amplification.CopyTo(Amplification, 0);
        other.Stress.CopyTo(Stress, 0);
        other.Speed.CopyTo(Speed, 0);
        other.IsTurbulent.CopyTo(IsTurbulent, 0);
    }
}
