using System.Globalization;
using Finwright.Page.Settings;
using Finwright.Page.Works;
using Finwright.Papers;
using Finwright.Papers.Words;

namespace Finwright.Page.Words;

/// <summary>How the page speaks to its reader: words in their language, numbers and units as they want them.</summary>
public sealed class Reader
{
    /// <summary>The reader of this computer.</summary>
    /// <param name="settings">Their choice.</param>
    /// <param name="desk">Knows the program's version.</param>
    /// <param name="time">The clock.</param>
    public Reader(ReaderSettings settings, Desk desk, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(time);
        Choice = settings.Choice;
        Paper = new() { Language = Choice.Language, Units = Choice.Units, Date = DateOnly.FromDateTime(time.GetLocalNow().DateTime), ProgramVersion = desk.MadeBy };
        Tongue = new(Paper);
        Time = time;
    }

    /// <summary>Their choice.</summary>
    public ReaderChoice Choice { get; }

    /// <summary>Numbers, units, verdicts.</summary>
    public Tongue Tongue { get; }

    /// <summary>How papers are made for this reader today.</summary>
    public PaperSettings Paper { get; }

    /// <summary>Two letters of the language, as HTML names it.</summary>
    public string Letters => Choice.Language is PaperLanguage.German ? "de" : "en";

    private TimeProvider Time { get; }

    /// <summary>A text in the reader's language.</summary>
    /// <param name="english">The text in English, as it stands in the source.</param>
    public string this[string english] => Choice.Language is PaperLanguage.German ? GermanTexts.Of(english) : english;

    /// <summary>A text with numbers or names in it.</summary>
    /// <param name="english">The text in English, with places {0}, {1}, …</param>
    /// <param name="values">What goes there, as the reader wants it.</param>
    public string this[string english, params object?[] values] => string.Format(CultureInfo.InvariantCulture, this[english], values);

    /// <summary>A time of day on this computer, to the second: 14:02:11.</summary>
    public string Clock(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, Time.LocalTimeZone).ToString("HH:mm:ss", CultureInfo.InvariantCulture);

    /// <summary>A day on this computer.</summary>
    public string Day(DateTimeOffset moment) => Tongue.Date(DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, Time.LocalTimeZone).DateTime));
}
