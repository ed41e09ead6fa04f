namespace Finwright.Making.Motion;

/// <summary>How long the moves of a file take when the head can only speed up and slow down so fast.</summary>
/// <remarks>
/// Each move speeds up, runs at its feed rate and slows down, all at one acceleration along the path. Where two moves meet, the head passes
/// at a speed at which its velocity changes by no more than the corner speed; it stands at both ends of a move of the filament alone and of a
/// pause. On an arc the acceleration towards its centre keeps within the same limit. Printers differ (limits for each axis, smoothing of
/// corners, how far they look ahead: here 128 moves and more), so the answer is a model's, not the printer's.
/// </remarks>
public sealed class PathTimer
{
    private const int Window = 256;
    private readonly double _acceleration, _cornerSpeed;
    private readonly double[] _length = new double[Window], _speed = new double[Window], _entry = new double[Window], _planned = new double[Window + 1];
    private int _count;
    private double _carried, _exitX, _exitY, _exitZ, _exitSpeed;
    private bool _standing = true;

    /// <summary>A head that stands.</summary>
    /// <param name="acceleration">Along the path, m/s².</param>
    /// <param name="cornerSpeed">Change of velocity that is made at once, m/s.</param>
    public PathTimer(double acceleration, double cornerSpeed) => (_acceleration, _cornerSpeed) = (acceleration, cornerSpeed);

    /// <summary>Time of all moves that are finished, s; complete after <see cref="Stand"/>.</summary>
    public double Seconds { get; private set; }

    /// <summary>Adds a move. Directions are unit vectors.</summary>
    /// <param name="length">Its length, metres; above 0.</param>
    /// <param name="speed">Its feed rate, m/s; above 0.</param>
    /// <param name="startX">Direction at its start, along x.</param>
    /// <param name="startY">Along y.</param>
    /// <param name="startZ">Along z.</param>
    /// <param name="endX">Direction at its end, along x.</param>
    /// <param name="endY">Along y.</param>
    /// <param name="endZ">Along z.</param>
    public void Move(double length, double speed, double startX, double startY, double startZ, double endX, double endY, double endZ)
    {
        double entry = 0;
        if (!_standing)
        {
            double dx = startX - _exitX, dy = startY - _exitY, dz = startZ - _exitZ, turn = Math.Sqrt(dx * dx + dy * dy + dz * dz);
            entry = Math.Min(speed, _exitSpeed);
            if (turn * entry > _cornerSpeed)
                entry = _cornerSpeed / turn;
        }

        (_length[_count], _speed[_count], _entry[_count]) = (length, speed, entry);
        _count++;
        (_exitX, _exitY, _exitZ, _exitSpeed, _standing) = (endX, endY, endZ, speed, false);
        if (_count == Window)
            Finish(Window / 2);
    }

    /// <summary>The head comes to a stand.</summary>
    /// <param name="pause">For how long, s.</param>
    public void Stand(double pause)
    {
        if (_count > 0)
            Finish(_count);
        Seconds += pause;
        (_standing, _carried) = (true, 0);
    }

    // As if the head stood at the end of the window: later moves can only make the speeds before it greater, so what was planned stays feasible.
    private void Finish(int moves)
    {
        double twice = 2 * _acceleration;
        _planned[_count] = 0;
        for (int i = _count - 1; i > 0; i--)
            _planned[i] = Math.Min(_entry[i], Math.Sqrt(_planned[i + 1] * _planned[i + 1] + twice * _length[i]));
        _planned[0] = _carried;
        for (int i = 0; i < moves; i++)
        {
            double reach = _planned[i] * _planned[i] + twice * _length[i];
            if (_planned[i + 1] * _planned[i + 1] > reach)
                _planned[i + 1] = Math.Sqrt(reach);
            Seconds += Duration(_length[i], _planned[i], _planned[i + 1], _speed[i], _acceleration);
        }

        _carried = _planned[moves];
        int rest = _count - moves;
        Array.Copy(_length, moves, _length, 0, rest);
        Array.Copy(_speed, moves, _speed, 0, rest);
        Array.Copy(_entry, moves, _entry, 0, rest);
        _count = rest;
    }

    /// <summary>Time of one move from speed to speed, s.</summary>
    internal static double Duration(double length, double from, double to, double top, double acceleration)
    {
        double run = length - (2 * top * top - from * from - to * to) / (2 * acceleration);
        if (run >= 0)
            return (2 * top - from - to) / acceleration + run / top;
        double peak = Math.Sqrt(acceleration * length + (from * from + to * to) / 2);
        return Math.Max(0, 2 * peak - from - to) / acceleration;
    }
}
