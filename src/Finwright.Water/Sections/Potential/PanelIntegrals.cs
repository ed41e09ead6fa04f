namespace Finwright.Water.Sections.Potential;

/// <summary>
/// Stream function and velocity of one flat panel with vortices or sources spread along it, in closed form.
/// Local axes: the panel runs from (0, 0) to (L, 0); the field point is (x, y).
/// </summary>
/// <remarks>
/// Stream function of a vortex sheet: ∫ γ ln r ds / 2π, clockwise positive; of a source sheet: ∫ σ θ ds / 2π, with θ the angle from the source
/// to the field point (Katz and Plotkin, 2001, Low-Speed Aerodynamics, ch. 3 and 10). Strengths run linearly from the first to
/// the second end. The angle's cut leaves an outline that is traversed with its inside on the left along the outer normal, so it crosses neither
/// the section nor, for the blunt edge, anything ahead of it.
/// </remarks>
internal readonly struct PanelIntegrals
{
    private readonly double _x, _y, _length, _log1, _log2, _angle1, _angle2;

    private PanelIntegrals(double x, double y, double length, bool stream)
    {
        (_x, _y, _length) = (x, y, length);
        double ahead = x - length;
        double first = x * x + y * y, second = ahead * ahead + y * y;
        // At an end of the panel each logarithm is multiplied by a zero that wins, and the angle by a zero distance.
        double least = 1e-24 * length * length;
        _log1 = first > least ? 0.5 * Math.Log(first) : 0;
        _log2 = second > least ? 0.5 * Math.Log(second) : 0;
        _angle1 = first > least ? Angle(y, x, stream) : 0;
        _angle2 = second > least ? Angle(y, ahead, stream) : 0;
    }

    /// <summary>Prepares a panel and a field point for stream functions, with the angle's cut on the right of the panel.</summary>
    /// <param name="x">Field point along the panel from its first end.</param>
    /// <param name="y">Field point to the left of the panel.</param>
    /// <param name="length">Length of the panel.</param>
    public static PanelIntegrals ForStream(double x, double y, double length) => new(x, y, length, stream: true);

    /// <summary>Prepares a panel and a field point for velocities, which have no cut but the panel itself.</summary>
    /// <param name="x">Field point along the panel from its first end.</param>
    /// <param name="y">Field point to the left of the panel.</param>
    /// <param name="length">Length of the panel.</param>
    public static PanelIntegrals ForVelocity(double x, double y, double length) => new(x, y, length, stream: false);

    /// <summary>Stream function for unit vortex strength at each end, times 2π.</summary>
    public (double First, double Second) VortexStream()
    {
        double ahead = _x - _length;
        double whole = _x * _log1 - ahead * _log2 - _length + _y * (_angle2 - _angle1);
        double r1 = _x * _x + _y * _y, r2 = ahead * ahead + _y * _y;
        double moment = _x * whole - 0.5 * (r1 * (_log1 - 0.5) - r2 * (_log2 - 0.5));
        double second = moment / _length;
        return (whole - second, second);
    }

    /// <summary>Velocity along and across the panel for unit vortex strength at each end, times 2π.</summary>
    public (double FirstX, double FirstY, double SecondX, double SecondY) VortexVelocity()
    {
        double ahead = _x - _length, logs = _log1 - _log2, turn = _angle2 - _angle1;
        double whole = _x * _log1 - ahead * _log2 - _length + _y * turn;
        double byX = whole - _length * _log2, byY = _x * turn - _y * logs;
        // u = ∂ψ/∂y, v = -∂ψ/∂x.
        double secondX = byY / _length, secondY = -byX / _length;
        return (turn - secondX, -logs - secondY, secondX, secondY);
    }

    /// <summary>Stream function for unit source strength at each end, times 2π.</summary>
    public (double First, double Second) SourceStream()
    {
        double ahead = _x - _length;
        double whole = _x * _angle1 - ahead * _angle2 + _y * (_log1 - _log2);
        double r1 = _x * _x + _y * _y, r2 = ahead * ahead + _y * _y;
        double moment = _x * whole - 0.5 * (r1 * _angle1 - r2 * _angle2 + _y * _length);
        double second = moment / _length;
        return (whole - second, second);
    }

    /// <summary>Velocity along and across the panel for unit source strength at each end, times 2π.</summary>
    public (double FirstX, double FirstY, double SecondX, double SecondY) SourceVelocity()
    {
        double ahead = _x - _length, logs = _log1 - _log2, turn = _angle1 - _angle2;
        double whole = _x * _angle1 - ahead * _angle2 + _y * logs;
        double byX = whole - _length * _angle2, byY = _x * logs - (_y * turn + _length);
        double secondX = byY / _length, secondY = -byX / _length;
        return (logs - secondX, -turn - secondY, secondX, secondY);
    }

    private static double Angle(double y, double x, bool stream)
    {
        double angle = Math.Atan2(y, x);
        return stream && angle < -Math.PI / 2 ? angle + 2 * Math.PI : angle;
    }
}
