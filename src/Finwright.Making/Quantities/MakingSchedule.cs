using Finwright.Numerics;

namespace Finwright.Making.Quantities;

/// <summary>What is made, as far as its time depends on it.</summary>
public sealed record MakingWork
{
    /// <summary>Time each plate takes to print, in order, s; the gauge's plate is not among them.</summary>
    public required IReadOnlyList<double> Plates { get; init; }

    /// <summary>Time the gauge takes to print, s; 0 when there is none.</summary>
    public double Gauge { get; init; }

    /// <summary>Pauses at which something is put in.</summary>
    public int Stops { get; init; }

    /// <summary>Pours one after the other of the blade's pieces, which are poured side by side.</summary>
    public int BladePours { get; init; } = 1;

    /// <summary>Time from the first pour of the blade to the last, s.</summary>
    public double BladePourSpan { get; init; }

    /// <summary>Time until the blade can be handled after its last pour, s; null when it is not known.</summary>
    public double? BladeCure { get; init; }

    /// <summary>Whether the base is a part of its own and is poured.</summary>
    public bool HasBase { get; init; }

    /// <summary>Time until the base can be handled, s; null when it is not known.</summary>
    public double? BaseCure { get; init; }

    /// <summary>Cups mixed in all.</summary>
    public int Cups { get; init; } = 1;

    /// <summary>Whether the pour stands in a bath.</summary>
    public bool IsBathed { get; init; }

    /// <summary>Whether there is a strip along the trailing edge.</summary>
    public bool HasStrip { get; init; }

    /// <summary>Rods, dowels and joints that are bonded.</summary>
    public int Bonds { get; init; }
}

/// <summary>One step of making a fin.</summary>
/// <param name="Name">What is done.</param>
/// <param name="Start">When it begins after the first print does, s.</param>
/// <param name="Elapsed">How long it takes, s.</param>
/// <param name="HandsOn">How long someone is busy with it, s.</param>
/// <param name="Reason">Why it takes that long, or why it is done.</param>
/// <param name="Cautions">What to take care of.</param>
public sealed record ScheduleStep(string Name, double Start, double Elapsed, double HandsOn, string Reason, IReadOnlyList<string> Cautions);

/// <summary>All steps from the first print to sailing. Times of hand work are estimates (judgement).</summary>
/// <param name="Steps">In order.</param>
public sealed record MakingSchedule(IReadOnlyList<ScheduleStep> Steps)
{
    private const double Minute = 60, Hour = 3600, Day = 24 * Hour;

    // Slow epoxy: handled after 8 to 30 h, sanded after 12 to 24 h or more, full strength after 5 to 7 days (common practice, no source).
    private const double UsualCure = 24 * Hour, SandingCure = 24 * Hour, FullCure = 6 * Day;

    /// <summary>From the first print to sailing, s.</summary>
    public double Elapsed => Steps.Count == 0 ? 0 : Steps.Max(step => step.Start + step.Elapsed);

    /// <summary>Time someone is busy, s.</summary>
    public double HandsOn => Steps.Sum(step => step.HandsOn);

    /// <summary>Lays the steps out one after the other.</summary>
    /// <param name="work">What is made.</param>
    public static MakingSchedule Of(MakingWork work)
    {
        ArgumentNullException.ThrowIfNull(work);
        List<ScheduleStep> steps = [];
        double now = 0, lastResin = 0;
        if (work.Gauge > 0)
        {
            Do("print the gauge", work.Gauge, 5 * Minute, "A thin slice of the base, to try before anything long is printed.");
            Do("try the gauge in the box", 15 * Minute, 15 * Minute, "It must need a firm push; correct the allowances of the base if not.");
        }

        foreach ((int plate, double time) in work.Plates.Index())
        {
            int stops = plate == 0 ? work.Stops : 0;
            Do(work.Plates.Count == 1 ? "print" : $"print plate {plate + 1} of {work.Plates.Count}", time, 10 * Minute + stops * 5 * Minute,
                stops > 0 ? $"With {stops} {(stops == 1 ? "pause" : "pauses")}: be there in time, or the print waits." : "Look at the first layers before you leave it.", [Cautions.Nozzle]);
            Do("let it cool on the bed", 45 * Minute, 5 * Minute, "Long parts warp when they are pulled off warm (common practice, no source).");
        }

        Do("try nuts, rods and dowels dry; roughen, wipe and bond them", Hour + work.Bonds * 5 * Minute, 30 * Minute + work.Bonds * 5 * Minute, "What does not go in dry will not go in wet.", [Cautions.Skin]);
        Do("seal the print, let it dry, look for leaks under water", 8 * Hour, 45 * Minute, "Two thin coats; a leak found now costs a brush stroke, later the pour.", [Cautions.Skin]);
        double cupTime = Math.Max(1, work.Cups) * 12 * Minute;
        Do(work.BladePours > 1 ? $"pour the blade, {work.BladePours} pours" : "pour the blade", work.BladePourSpan + 30 * Minute + cupTime, 30 * Minute + cupTime, "Feed low, vent high, slowly; rock and tap it; top it up as it settles.", PourCautions(work));
        Cure(work.BladeCure, "let the blade cure");
        if (work.HasBase)
        {
            Do("turn to the base and pour it", 25 * Minute, 25 * Minute, "The base is the thickest part: the coolest cup, the longest bath.", PourCautions(work));
            Cure(work.BaseCure, "let the base cure");
        }

        if (work.HasStrip)
            Do("bond the strip", 12 * Hour, 40 * Minute, "Roughen, wipe, thickened epoxy, clamp between boards with film.", [Cautions.Solvents, Cautions.Skin, Cautions.Edges]);
        Do("let the resin harden for sanding", Math.Max(0, lastResin + SandingCure - now), 0, "Half-cured resin clogs the paper, and its dust is the worst.");
        Do("sand: 80 to shape, 180 to fair, 240 to 400 wet", 3 * Hour, 3 * Hour, "Check against the sections; leave the trailing edge a small square flat.", [Cautions.Dust, Cautions.Edges]);
        Do("fit the base to the box", 45 * Minute, 45 * Minute, "Rub dry soap on, bolt up, take out: shiny places touch. A knock must be needed.", [Cautions.Dust]);
        Do("wait for the full cure", Math.Max(0, lastResin + FullCure - now), 0, "Cool-cured epoxy gains strength for five to seven days.");
        Do("hang the weight on the bench and read", Hour, Hour, "What it shows against what it should show says whether to trust it.", [Cautions.Proof]);
        return new(steps);

        void Do(string name, double elapsed, double handsOn, string reason, IReadOnlyList<string>? cautions = null)
        {
            if (!(Require.NotNegative(elapsed) > 0))
                return;
            steps.Add(new(name, now, elapsed, handsOn, reason, cautions ?? []));
            now += elapsed;
        }

        void Cure(double? time, string name)
        {
            lastResin = now;
            Do(name, time ?? UsualCure, 10 * Minute, time is null
                ? "How long it takes is not known; a day is usual for a slow resin."
                : "Until it can be handled, as worked out for this part.", [Cautions.SealedCup]);
        }
    }

    private static string[] PourCautions(MakingWork work) =>
        [Cautions.Skin, Cautions.Runaway, Cautions.SealedCup, Cautions.Waste, .. work.IsBathed ? (string[])[Cautions.Bath] : []];
}
