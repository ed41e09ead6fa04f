namespace Finwright.Strength.Joints;

/// <summary>What the blade does to the joint. Moments about the centroid of the footprint, where the axial force acts too.</summary>
/// <param name="MomentX">
/// Moment about x, N·m, by the right hand: a force to starboard on the blade, times its depth below the joint; presses the starboard side.
/// </param>
/// <param name="MomentZ">Moment about z, N·m, by the right hand: minus a force aft on the blade, times its depth; when negative it presses the aft end.</param>
/// <param name="AxialForce">Force down the span, N: positive pulls the parts asunder.</param>
public readonly record struct JointLoad(double MomentX, double MomentZ, double AxialForce)
{
    /// <summary>The load times a factor.</summary>
    public JointLoad Times(double factor) => new(factor * MomentX, factor * MomentZ, factor * AxialForce);
}
