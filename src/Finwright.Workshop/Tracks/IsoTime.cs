namespace Finwright.Workshop.Tracks;

/// <summary>Times as XML files tell them: ISO 8601, as XML Schema's dateTime narrows it.</summary>
internal static class IsoTime
{
    private const long TicksOfSecond = TimeSpan.TicksPerSecond;

    /// <summary>Reads a time such as 2026-07-14T13:05:07.25Z or 2026-07-14T15:05:07+02:00; without a zone it is taken as universal time, as the format demands.</summary>
    /// <param name="text">The text without white space round it.</param>
    /// <param name="ticks">Universal time in ticks of 100 ns.</param>
    /// <returns>Whether it is a time.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, out long ticks)
    {
        ticks = 0;
        if (text.Length < 19 || text[4] != '-' || text[7] != '-' || text[10] is not ('T' or 't' or ' ') || text[13] != ':' || text[16] != ':')
            return false;
        if (!Digits(text[..4], out int year) || !Digits(text[5..7], out int month) || !Digits(text[8..10], out int day)
            || !Digits(text[11..13], out int hour) || !Digits(text[14..16], out int minute) || !Digits(text[17..19], out int second))
            return false;
        // The year 1 and the last year are kept free, so that a zone cannot leave the calendar. A leap second is second 60.
        if (year is < 2 or > 9998 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) || hour > 23 || minute > 59 || second > 60)
            return false;
        ticks = new DateTime(year, month, day, hour, minute, 0, DateTimeKind.Utc).Ticks + second * TicksOfSecond;
        ReadOnlySpan<char> rest = text[19..];
        if (rest.Length > 0 && rest[0] is '.' or ',')
        {
            long unit = TicksOfSecond;
            int i = 1;
            for (; i < rest.Length && char.IsAsciiDigit(rest[i]); i++)
            {
                unit /= 10;
                ticks += (rest[i] - '0') * unit;
            }

            if (i == 1)
                return false;
            rest = rest[i..];
        }

        return Zone(rest, ref ticks);
    }

    private static bool Zone(ReadOnlySpan<char> zone, ref long ticks)
    {
        if (zone.Length == 0 || zone is "Z" or "z")
            return true;
        if (zone.Length is not (5 or 6) || zone[0] is not ('+' or '-') || (zone.Length == 6 && zone[3] != ':'))
            return false;
        if (!Digits(zone[1..3], out int hours) || !Digits(zone[^2..], out int minutes) || hours > 14 || minutes > 59)
            return false;
        long offset = (hours * 60 + minutes) * TimeSpan.TicksPerMinute;
        ticks += zone[0] == '+' ? -offset : offset;
        return true;
    }

    private static bool Digits(ReadOnlySpan<char> text, out int number)
    {
        number = 0;
        foreach (char sign in text)
        {
            if (!char.IsAsciiDigit(sign))
                return false;
            number = 10 * number + (sign - '0');
        }

        return true;
    }
}
