using System.Text.Json;

namespace Finwright.Page.RunSheets;

/// <summary>The steps of a run sheet, laid out once from the design as it stood, in the reader's words.</summary>
public sealed record RunPlan
{
    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web) { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true };

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Two letters of the language in which it is written.</summary>
    public required string Language { get; init; }

    /// <summary>Whether temperatures are told in °F.</summary>
    public bool Fahrenheit { get; init; }

    /// <summary>Which design and revision it was laid out from, in words.</summary>
    public required string Origin { get; init; }

    /// <summary>Verdicts that fail, in words; they stand on top.</summary>
    public IReadOnlyList<string> Failing { get; init; } = [];

    /// <summary>What to do when a part or cup gets too hot; null for a print.</summary>
    public RunDanger? Danger { get; init; }

    /// <summary>Chapter by chapter.</summary>
    public required IReadOnlyList<RunChapter> Chapters { get; init; }

    /// <summary>All steps in order.</summary>
    public IEnumerable<RunStep> Steps() => Chapters.SelectMany(chapter => chapter.Steps);

    /// <summary>The plan as it is kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Form);

    /// <summary>A plan that was kept.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static RunPlan Of(string json)
    {
        try
        {
            RunPlan plan = JsonSerializer.Deserialize<RunPlan>(json, Form) ?? throw new InvalidDataException("The run sheet is empty.");
            return plan.IsWhole() ? plan : throw new InvalidDataException("The run sheet has gaps.");
        }
        catch (JsonException problem)
        {
            throw new InvalidDataException("The run sheet cannot be read.", problem);
        }
    }

    // Nothing in a list is left out; the serialiser holds that of fields alone.
    private bool IsWhole() =>
        AllThere(Failing) && (Danger is null || AllThere(Danger.Lines)) && AllThere(Chapters) && Chapters.All(chapter => AllThere(chapter.Steps))
        && Steps().All(step => AllThere(step.Cautions) && AllThere(step.Facts) && AllThere(step.Notes) && (step.Thermometer is null || AllThere(step.Thermometer.Curve)));

    private static bool AllThere<T>(IReadOnlyList<T> list)
        where T : class => list.All(one => one is not null);
}

/// <summary>What to do when something goes wrong.</summary>
/// <param name="Title">The limit.</param>
/// <param name="Lines">What to do.</param>
public sealed record RunDanger(string Title, IReadOnlyList<string> Lines);

/// <summary>Steps that belong together.</summary>
/// <param name="Title">What they are about.</param>
/// <param name="Said">A sentence; empty for none.</param>
/// <param name="Steps">The steps.</param>
public sealed record RunChapter(string Title, string Said, IReadOnlyList<RunStep> Steps);

/// <summary>A step to tick.</summary>
public sealed record RunStep
{
    /// <summary>What entries of this step are called.</summary>
    public required string Id { get; init; }

    /// <summary>What to do.</summary>
    public required string Text { get; init; }

    /// <summary>Why; empty for no reason.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Numbers and names that belong to the step.</summary>
    public IReadOnlyList<RunFact> Facts { get; init; } = [];

    /// <summary>Plain sentences that belong to the step.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What is timed; null when nothing is.</summary>
    public RunTimer? Timer { get; init; }

    /// <summary>When it is due after another step's clock was started; null when it is not tied to one.</summary>
    public RunDue? Due { get; init; }

    /// <summary>Temperatures that are read; null when none are.</summary>
    public RunThermometer? Thermometer { get; init; }
}

/// <summary>A fact of a step.</summary>
/// <param name="Name">What.</param>
/// <param name="Value">How much.</param>
public sealed record RunFact(string Name, string Value);

/// <summary>A clock of a step.</summary>
/// <param name="Start">What starts it, for the button.</param>
/// <param name="Seconds">How long it runs, s; null when the end is not known: it counts up.</param>
/// <param name="End">What is due at its end.</param>
/// <param name="Warn">Time before the end at which a warning is due, s after the start; null for none.</param>
/// <param name="Warning">The warning.</param>
/// <param name="Repeats">Whether it begins anew when it is acknowledged.</param>
public sealed record RunTimer(string Start, double? Seconds, string End, double? Warn = null, string Warning = "", bool Repeats = false);

/// <summary>When a step is due.</summary>
/// <param name="Step">The step whose clock counts.</param>
/// <param name="Early">Earliest, s after its start.</param>
/// <param name="Seconds">As expected.</param>
/// <param name="Late">Latest.</param>
public sealed record RunDue(string Step, double Early, double Seconds, double Late);

/// <summary>Temperatures of a part that cures.</summary>
/// <param name="Part">The part.</param>
/// <param name="Step">The step whose clock says when it was poured.</param>
/// <param name="Limit">Temperature at which the walls soften, K; null when it is not known.</param>
/// <param name="Curve">What the skin should show; empty when it is not known.</param>
public sealed record RunThermometer(string Part, string Step, double? Limit, IReadOnlyList<RunWarmth> Curve);

/// <summary>What the skin should show at a moment.</summary>
/// <param name="Seconds">After the part was poured.</param>
/// <param name="Low">Least, K.</param>
/// <param name="Expected">As expected, K.</param>
/// <param name="High">Greatest, K.</param>
public sealed record RunWarmth(double Seconds, double Low, double Expected, double High);
