using System.Globalization;
using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Workshop.Outings;

namespace Finwright.Page.Outings;

/// <summary>What is said of an outing, as it is typed.</summary>
public sealed class OutingForm
{
    /// <summary>Names of the fields.</summary>
    public const string Day = "day", Place = "place", WindLow = "wind-low", WindHigh = "wind-high", Sail = "sail", SailM2 = "sail-m2", Board = "board", Rider = "rider", Build = "build",
        Grip = "grip", SpinOuts = "spin-outs", Speed = "speed", Feel = "feel", Note = "note";

    private const double MostWindKnots = 100;
    private const int LongestWord = 200, LongestNote = 4000;

    private readonly Reader _reader;
    private readonly Outing? _before;

    /// <summary>The form of an outing.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="outing">The outing as it is kept; null for a further one.</param>
    /// <param name="today">The day.</param>
    public OutingForm(Reader reader, Outing? outing, DateOnly today)
    {
        (_reader, _before, Form, Today) = (reader, outing, new(reader), today);
        Form.Put(Day, outing?.SailedOn);
        Form[Place] = outing?.Place ?? "";
        Form.Put(WindLow, outing?.WindLowKnots);
        Form.Put(WindHigh, outing?.WindHighKnots);
        Form[Sail] = outing?.Sail ?? "";
        Form.Put(SailM2, outing?.SailM2);
        Form[Board] = outing?.Board ?? "";
        Form[Rider] = outing?.Rider ?? "";
        Form[Build] = Number(outing?.BuildId);
        Form[Grip] = Number(outing?.Grip);
        Form[SpinOuts] = Number(outing?.SpinOuts);
        Form[Speed] = Number(outing?.Speed);
        Form[Feel] = Number(outing?.Feel);
        Form[Note] = outing?.Note ?? "";
    }

    /// <summary>What is typed.</summary>
    public TypedForm Form { get; }

    private DateOnly Today { get; }

    /// <summary>The outing as typed; null when something is wrong, which is said at its field.</summary>
    public Outing? ToKeep()
    {
        Form.Judge();
        double? low = Form.Number(WindLow, 0, MostWindKnots), high = Form.Number(WindHigh, 0, MostWindKnots);
        if (low > high)
            Form.Refuse(WindHigh, _reader["Gusts below the lulls: write the lower end first."]);
        Outing outing = (_before ?? new() { SailedOn = Today }) with
        {
            SailedOn = Form.Day(Day, Today, isNeeded: true, kept: _before?.SailedOn) ?? Today,
            Place = Form.Text(Place, LongestWord),
            // One number is a steady wind.
            WindLowKnots = low ?? high,
            WindHighKnots = high ?? low,
            Sail = Form.Text(Sail, LongestWord),
            SailM2 = Form.Number(SailM2, 0.5, 20),
            Board = Form.Text(Board, LongestWord),
            Rider = Form.Text(Rider, LongestWord),
            BuildId = Form.Chosen(Build),
            Grip = Form.Whole(Grip, 1, 5),
            SpinOuts = Form.Whole(SpinOuts, 0, 1000),
            Speed = Form.Whole(Speed, 1, 5),
            Feel = Form.Whole(Feel, 1, 5),
            Note = Form.Text(Note, LongestNote),
        };
        return Form.IsSound ? outing : null;
    }

    private static string Number(long? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
