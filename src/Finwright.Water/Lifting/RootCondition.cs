namespace Finwright.Water.Lifting;

/// <summary>What the fin meets at its root. The most important modelling choice of all.</summary>
public abstract record RootCondition
{
    /// <summary>Distance between the root of the fin and the hull or surface, metres, 0 or more.</summary>
    /// <remarks>The gap is taken as free of friction. A gap below about one per cent of the span is in truth half closed by viscosity, so its loss comes out too large.</remarks>
    public double Gap { get; init; }

    /// <summary>The hull as an endless rigid wall: the fin works as half of a wing of twice its span. Upper bound.</summary>
    public static RootCondition FullMirror { get; } = new FullMirror();

    /// <summary>No hull: the bare water surface at high speed, a negative image. Lower bound.</summary>
    public static RootCondition BareSurface { get; } = new BareSurface();

    /// <summary>A flat hull of finite width on the water surface.</summary>
    /// <param name="halfWidth">Half the width of the wetted bottom over the fin, metres, positive.</param>
    /// <param name="ahead">Length of wetted bottom ahead of the root's leading edge, metres, 0 or more.</param>
    /// <param name="behind">Length of wetted bottom behind the root's trailing edge, metres, 0 or more.</param>
    public static RootCondition Hull(double halfWidth, double ahead, double behind) => new FiniteHull(halfWidth, ahead, behind);
}

/// <summary>The hull as an endless rigid wall.</summary>
public sealed record FullMirror : RootCondition;

/// <summary>The bare water surface at high speed: the potential is zero on it.</summary>
public sealed record BareSurface : RootCondition;

/// <summary>A flat rigid hull of finite width lying on the water surface, which is a negative image beyond it.</summary>
/// <remarks>
/// The hull's underside is a rectangle in the plane y = 0. Linear and without gravity: the surface behind the transom keeps the potential it had there, so the hull is a
/// lifting plate with a Kutta condition at the transom. Rocker, chines and rounding of the tail are left out.
/// </remarks>
/// <param name="HalfWidth">Half the width of the wetted bottom over the fin, metres, positive.</param>
/// <param name="Ahead">Length of wetted bottom ahead of the root's leading edge, metres, 0 or more.</param>
/// <param name="Behind">Length of wetted bottom behind the root's trailing edge, metres, 0 or more.</param>
public sealed record FiniteHull(double HalfWidth, double Ahead, double Behind) : RootCondition;
