using System.Globalization;
using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Builds;

/// <summary>What is said of a build, as it is typed.</summary>
public sealed class BuildForm
{
    /// <summary>Names of the fields.</summary>
    public const string Name = "name", Of = "revision", MadeOn = "made-on", Filament = "filament", Resin = "resin", Plastic = "plastic", ResinMl = "resin-ml", Mass = "mass", Hours = "hours",
        Room = "room", Bath = "bath", Peak = "peak", Cost = "cost", Currency = "currency", Problems = "problems", Note = "note";

    private const int LongestText = 4000;

    private readonly Build _before;

    /// <summary>The form of a build.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="build">The build as it is kept, or as proposed.</param>
    /// <param name="today">The day.</param>
    public BuildForm(Reader reader, Build build, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(build);
        (_before, Form, Today) = (build, new(reader), today);
        Form[Name] = build.Name;
        Form[Of] = Number(build.RevisionId);
        Form.Put(MadeOn, build.MadeOn);
        Form[Filament] = Number(build.FilamentId);
        Form[Resin] = Number(build.ResinId);
        Form.Put(Plastic, build.PlasticGrams);
        Form.Put(ResinMl, build.ResinMl);
        Form.Put(Mass, build.MassGrams);
        Form.Put(Hours, build.PrintHours);
        Form.Put(Room, build.RoomCelsius, "°C");
        Form.Put(Bath, build.BathCelsius, "°C");
        Form.Put(Peak, build.PeakCelsius, "°C");
        Form.Put(Cost, build.Cost);
        Form[Currency] = build.Currency;
        Form[Problems] = build.Problems;
        Form[Note] = build.Note;
    }

    /// <summary>What is typed.</summary>
    public TypedForm Form { get; }

    private DateOnly Today { get; }

    /// <summary>A name that no build has: the design's and a number.</summary>
    public static string FreeName(WorkshopStore store, string design)
    {
        ArgumentNullException.ThrowIfNull(store);
        int number = 1;
        while (store.Builds.Find(string.Create(CultureInfo.InvariantCulture, $"{design} {number}")) is not null)
            number++;
        return string.Create(CultureInfo.InvariantCulture, $"{design} {number}");
    }

    /// <summary>A build of a revision with nothing said of it yet.</summary>
    public static Build Proposal(WorkshopStore store, Revision revision, string currency)
    {
        ArgumentNullException.ThrowIfNull(revision);
        return new() { RevisionId = revision.Id, Name = FreeName(store, revision.DesignName), Currency = currency };
    }

    /// <summary>The build as typed; null when something is wrong, which is said at its field.</summary>
    public Build? ToKeep()
    {
        Form.Judge();
        Build build = _before with
        {
            Name = Form.Text(Name, 80, isNeeded: true),
            RevisionId = Form.Chosen(Of) ?? _before.RevisionId,
            MadeOn = Form.Day(MadeOn, Today, kept: _before.MadeOn),
            FilamentId = Form.Chosen(Filament),
            ResinId = Form.Chosen(Resin),
            PlasticGrams = Form.Number(Plastic, 0, 5000),
            ResinMl = Form.Number(ResinMl, 0, 5000),
            MassGrams = Form.Number(Mass, 0, 10000),
            PrintHours = Form.Number(Hours, 0, 500),
            RoomCelsius = Form.Number(Room, -20, 60, "°C"),
            BathCelsius = Form.Number(Bath, 0, 60, "°C"),
            PeakCelsius = Form.Number(Peak, 0, 300, "°C"),
            Cost = Form.Number(Cost, 0, 1e6),
            Currency = Form.Text(Currency, 8),
            Problems = Form.Text(Problems, LongestText),
            Note = Form.Text(Note, LongestText),
        };
        return Form.IsSound ? build : null;
    }

    private static string Number(long? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
