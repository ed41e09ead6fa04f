namespace Finwright.Workshop.Season;

/// <summary>The six builds of the invented season, with what was measured and sailed.</summary>
internal static class SeasonBuilds
{
    // Where the invented tracks lie: in the open sea, far from any place of any name.
    private const double Latitude = 56, Longitude = 3;

    // One knot.
    private const double Knot = 1852.0 / 3600;

    private const string FairwayPlace = "Vannholm fairway", BanksPlace = "Ostrel estuary, east banks", MeadowsPlace = "Skarvik meadows";

    /// <summary>Two of the upright fin; the second is a knot faster.</summary>
    public static readonly IReadOnlyList<SeasonBuild> Fairway =
    [
        new("Fairway grey", 2, new(2027, 3, 27), SeasonStock.Grey, SeasonStock.EarlyResin, new(2027, 4, 3))
        {
            PlasticG = 335.5,
            ResinMl = 546,
            MassG = 901,
            PrintHours = 18.6,
            RoomCelsius = 19,
            BathCelsius = 15.5,
            Cost = 39.1,
            PeakCelsius = 26.9,
            Note = "Number one of the season.",
            Outings = [.. FairwayDays.Select((day, i) => On(day, 11, 0, 100 + (ulong)i, FairwayPlace, 7.8, "big slalom board"))],
        },
        new("Fairway black", 3, new(2027, 5, 15), SeasonStock.Black, SeasonStock.LateResin, new(2027, 5, 22))
        {
            PlasticG = 325.2,
            ResinMl = 532,
            MassG = 887,
            PrintHours = 18.3,
            RoomCelsius = 21.5,
            BathCelsius = 16,
            Cost = 37.9,
            PeakCelsius = 26.6,
            Outings = [.. FairwayDays.Select((day, i) => On(day, 14, Knot, 200 + (ulong)i, FairwayPlace, 7.8, "big slalom board") with { Grip = 5, Speed = 4 })],
        },
    ];

    /// <summary>Two of the wide fin, equally fast.</summary>
    public static readonly IReadOnlyList<SeasonBuild> Sandbar =
    [
        new("Sandbar one", 1, new(2027, 4, 10), SeasonStock.Grey, SeasonStock.EarlyResin, new(2027, 4, 17))
        {
            PlasticG = 191,
            ResinMl = 270,
            MassG = 494,
            PrintHours = 11.2,
            RoomCelsius = 18,
            BathCelsius = 15,
            Cost = 30.2,
            PeakCelsius = 25.1,
            Outings = [.. SandbarDays.Select((day, i) => On(day, 10, 0, 300 + (ulong)i, BanksPlace, 6.4, "middle slalom board") with { SpinOuts = i })],
        },
        new("Sandbar two", 2, new(2027, 5, 29), SeasonStock.Black, SeasonStock.LateResin, new(2027, 6, 5))
        {
            PlasticG = 192.3,
            ResinMl = 277,
            MassG = 509,
            PrintHours = 11.3,
            RoomCelsius = 22,
            BathCelsius = 16,
            Cost = 29.4,
            PeakCelsius = 24.9,
            Note = "The strip went in without filing this time.",
            Outings = [.. SandbarDays.Select((day, i) => On(day, 13, 0, 400 + (ulong)i, BanksPlace, 6.4, "middle slalom board") with { Feel = 3 })],
        },
    ];

    /// <summary>Two of the raked fin; the first leaked.</summary>
    public static readonly IReadOnlyList<SeasonBuild> Eelgrass =
    [
        new("Eelgrass one", 1, new(2027, 4, 24), SeasonStock.Grey, SeasonStock.EarlyResin, new(2027, 5, 1))
        {
            PlasticG = 185.4,
            ResinMl = 352,
            MassG = 498.5,
            PrintHours = 10.2,
            RoomCelsius = 18.5,
            BathCelsius = 15,
            Cost = 28.6,
            PeakCelsius = 25,
            Problems = "Resin ran out at the lower cut before it gelled; sealed with tape and topped up.",
            Outings =
            [
                new(new(2027, 5, 30, 12, 0, 0, TimeSpan.Zero), MeadowsPlace, 16, 22, 5.7, "small board") { Grip = 3, SpinOuts = 2, Feel = 3, Note = "Long grass stayed on; no track." },
            ],
        },
        new("Eelgrass two", 2, new(2027, 7, 3), SeasonStock.Black, SeasonStock.LateResin, new(2027, 7, 10))
        {
            PlasticG = 180.3,
            ResinMl = 318,
            MassG = 499,
            PrintHours = 10,
            RoomCelsius = 24,
            BathCelsius = 17,
            Cost = 27.3,
            PeakCelsius = 26.2,
            Note = "Cuts taped from outside before the pour.",
            Outings =
            [
                new(new(2027, 8, 21, 13, 0, 0, TimeSpan.Zero), MeadowsPlace, 17, 23, 5.7, "small board") { Grip = 4, Note = "Stayed clean all afternoon; no track." },
                On(new(new(2027, 8, 28), 16, 23, 12.2), 12, 0, 500, MeadowsPlace, 5.7, "small board"),
            ],
        },
    ];

    // Days on which both of a pair were sailed, turn about, with the same sail.
    private static IReadOnlyList<SeasonDay> FairwayDays => [new(new(2027, 6, 19), 14, 19, 13.1), new(new(2027, 7, 17), 15, 21, 13.6), new(new(2027, 8, 14), 14, 20, 13.3)];

    private static IReadOnlyList<SeasonDay> SandbarDays => [new(new(2027, 6, 26), 15, 21, 12.4), new(new(2027, 7, 24), 17, 23, 12.9), new(new(2027, 9, 4), 15, 20, 12.2)];

    private static SeasonOuting On(SeasonDay day, int hour, double faster, ulong seed, string place, double sail, string board)
    {
        DateTimeOffset start = new(day.Date, new(hour, 0), TimeSpan.Zero);
        return new(start, place, day.WindLow, day.WindHigh, sail, board) { Track = new(seed, start, Latitude, Longitude, 14, day.Speed + faster) };
    }

    /// <summary>A day on the water.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="WindLow">Wind in the lulls, knots.</param>
    /// <param name="WindHigh">Wind in the gusts, knots.</param>
    /// <param name="Speed">Speed on runs that the day allows, m/s.</param>
    private sealed record SeasonDay(DateOnly Date, double WindLow, double WindHigh, double Speed);
}
