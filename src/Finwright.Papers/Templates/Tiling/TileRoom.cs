namespace Finwright.Papers.Templates.Tiling;

/// <summary>Room for a tile on a page, metres.</summary>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
public readonly record struct TileRoom(double Width, double Height)
{
    /// <summary>A tile must have so much room each way, or a template falls into too many pieces, metres.</summary>
    public const double Least = 60e-3;

    /// <summary>Whether it is wide and high enough.</summary>
    public bool IsEnough => Width >= Least && Height >= Least;
}
