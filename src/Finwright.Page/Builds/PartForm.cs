using System.Globalization;
using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Workshop.Builds;

namespace Finwright.Page.Builds;

/// <summary>What is said of one printed part of a build, as it is typed.</summary>
public sealed class PartForm
{
    /// <summary>Names of the fields.</summary>
    public const string Part = "part", PrintedOn = "printed-on", Filament = "part-filament", Plastic = "part-plastic", Hours = "part-hours", Note = "part-note";

    private const int LongestName = 80, LongestNote = 2000;

    /// <summary>The form of a part.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="part">The part as it is kept; null for a further one.</param>
    /// <param name="today">The day.</param>
    public PartForm(Reader reader, BuildPart? part, DateOnly today)
    {
        (Form, Today, Before) = (new(reader), today, part);
        Form[Part] = part?.Part ?? "";
        Form.Put(PrintedOn, part?.PrintedOn);
        Form[Filament] = part?.FilamentId?.ToString(CultureInfo.InvariantCulture) ?? "";
        Form.Put(Plastic, part?.PlasticGrams);
        Form.Put(Hours, part?.PrintHours);
        Form[Note] = part?.Note ?? "";
    }

    /// <summary>What is typed.</summary>
    public TypedForm Form { get; }

    private DateOnly Today { get; }

    private BuildPart? Before { get; }

    /// <summary>The part as typed; null when something is wrong, which is said at its field.</summary>
    public BuildPart? ToKeep()
    {
        Form.Judge();
        BuildPart part = new(
            Form.Text(Part, LongestName, isNeeded: true), Form.Day(PrintedOn, Today, kept: Before?.PrintedOn), Form.Chosen(Filament), Form.Number(Plastic, 0, 5000), Form.Number(Hours, 0, 500), Form.Text(Note, LongestNote));
        return Form.IsSound ? part : null;
    }
}
