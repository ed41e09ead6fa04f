namespace Finwright.Making.Cure;

/// <summary>Highest point of something followed in time, between steps too: a cubic through values and slopes.</summary>
internal sealed class PeakTrack
{
    private double _time, _value, _slope;
    private bool _isBegun;

    /// <summary>Highest value so far.</summary>
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>When, s.</summary>
    public double Time { get; private set; }

    /// <summary>Takes the next point.</summary>
    /// <param name="time">s, not before the last.</param>
    /// <param name="value">The value.</param>
    /// <param name="slope">Its change, 1/s.</param>
    /// <returns>True when it rose.</returns>
    public bool Take(double time, double value, double slope)
    {
        double before = Value;
        if (value > Value)
            (Value, Time) = (value, time);
        if (_isBegun && _slope > 0 && slope < 0 && time > _time)
        {
            const int Parts = 64;
            for (int i = 1; i < Parts; i++)
            {
                double x = (double)i / Parts, there = Between(x, time - _time, _value, _slope, value, slope);
                if (there > Value)
                    (Value, Time) = (there, _time + x * (time - _time));
            }
        }

        (_time, _value, _slope, _isBegun) = (time, value, slope, true);
        return Value > before;
    }

    /// <summary>Value of the cubic at a share of the way.</summary>
    public static double Between(double x, double step, double from, double fromSlope, double to, double toSlope)
    {
        double y = 1 - x;
        return y * y * (1 + 2 * x) * from + x * x * (1 + 2 * y) * to + x * y * step * (y * fromSlope - x * toSlope);
    }

    /// <summary>Share of the way at which a rising cubic passes a value that lies between its ends.</summary>
    public static double Passing(double level, double step, double from, double fromSlope, double to, double toSlope)
    {
        double low = 0, high = 1;
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            if (Between(middle, step, from, fromSlope, to, toSlope) < level)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}

/// <summary>When each cell passes a conversion.</summary>
internal sealed class PassTimes
{
    private readonly double _level;
    private readonly double[] _conversion, _rate;
    private double _time;

    public PassTimes(int cells, double level, double initial)
    {
        _level = level;
        _conversion = new double[cells];
        _rate = new double[cells];
        Times = new double[cells];
        Array.Fill(_conversion, initial);
        Array.Fill(Times, initial >= level ? 0 : double.PositiveInfinity);
    }

    /// <summary>Time of each cell, s; infinite when it has not passed.</summary>
    public double[] Times { get; }

    /// <summary>Takes the next state.</summary>
    public void Take(double time, double[] conversion, double[] rate)
    {
        double step = time - _time;
        for (int i = 0; i < Times.Length; i++)
        {
            if (double.IsPositiveInfinity(Times[i]) && conversion[i] >= _level)
                Times[i] = _time + step * PeakTrack.Passing(_level, step, _conversion[i], _rate[i], conversion[i], rate[i]);
            _conversion[i] = conversion[i];
            _rate[i] = rate[i];
        }

        _time = time;
    }
}

/// <summary>One moment of a cure, for plots. Temperatures in K.</summary>
/// <param name="Time">s from the first pour.</param>
/// <param name="Hottest">Hottest resin.</param>
/// <param name="Mean">Mean of the resin.</param>
/// <param name="WallInside">Hottest place of the wall's inner face.</param>
/// <param name="WallOutside">Hottest place of the surface.</param>
/// <param name="Surroundings">Air, or water where the part stands in it.</param>
/// <param name="MeanConversion">Mean conversion of the resin.</param>
/// <param name="LeastConversion">Least conversion of the resin.</param>
public readonly record struct CureMoment(double Time, double Hottest, double Mean, double WallInside, double WallOutside, double Surroundings, double MeanConversion, double LeastConversion);

/// <summary>A highest temperature and its time.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Time">s from the first pour.</param>
public readonly record struct CurePeak(double Temperature, double Time);

/// <summary>Where the heat went, J.</summary>
/// <param name="Released">Set free by the reaction.</param>
/// <param name="Stored">Gained by resin and plastic, less what came in with poured resin.</param>
/// <param name="Lost">Left through the surface.</param>
public readonly record struct HeatBalance(double Released, double Stored, double Lost)
{
    /// <summary>What is left unexplained, over the greatest of the three.</summary>
    public double Gap => Math.Max(Math.Max(Math.Abs(Released), Math.Abs(Stored)), Math.Abs(Lost)) is > 0 and double most ? Math.Abs(Released - Stored - Lost) / most : 0;
}
