namespace Finwright.Making.Resins;

/// <summary>A maker's own test: a cup of mixed resin left standing, its temperature read from time to time. SI.</summary>
/// <param name="Mass">Mass of the mix, kg.</param>
/// <param name="RoomTemperature">Temperature of the air round it, K.</param>
/// <param name="CupDiameter">Inner diameter of the cup, metres.</param>
/// <param name="Readings">The readings, in rising time.</param>
public sealed record CupTest(double Mass, double RoomTemperature, double CupDiameter, IReadOnlyList<CupReading> Readings);

/// <summary>One reading of a cup test.</summary>
/// <param name="Seconds">Time since mixing, s.</param>
/// <param name="Temperature">Temperature in the middle of the mix, K.</param>
public sealed record CupReading(double Seconds, double Temperature);
