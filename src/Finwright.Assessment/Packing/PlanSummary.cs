using Finwright.Assessment.Made;
using Finwright.Making.Quantities;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What a fin takes, costs, and how long it takes, as <c>plan.json</c> and <c>finwright plan --json</c> give it. Field names are these properties in lower case with
/// underscores; each carries its unit.
/// </summary>
public sealed record PlanSummary() : DesignAnswer("finwright-plan")
{
    /// <summary>Currency of all costs.</summary>
    public string? Currency { get; init; }

    /// <summary>Cost of what the fin takes.</summary>
    public double? CostOfFin { get; init; }

    /// <summary>Cost of what must be bought for the first fin when nothing is at hand.</summary>
    public double? CostToBuy { get; init; }

    /// <summary>Cost of what one more copy takes.</summary>
    public double? CostOfSpareCopy { get; init; }

    /// <summary>The bill.</summary>
    public IReadOnlyList<BillLineSummary> Bill { get; init; } = [];

    /// <summary>From the first print to sailing.</summary>
    public double? ElapsedHours { get; init; }

    /// <summary>Time someone is busy.</summary>
    public double? HandsOnMinutes { get; init; }

    /// <summary>Step by step.</summary>
    public IReadOnlyList<ScheduleStepSummary> Schedule { get; init; } = [];

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static PlanSummary Of(MakingResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        (Bill? bill, MakingSchedule? schedule) = (result.Plan?.Bill, result.Plan?.Schedule);
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Name,
            DesignSha256 = result.DesignHash,
            Sentence = bill is null || schedule is null
                ? "The plan was not worked out."
                : $"It takes material for {bill.Used:0.00} {bill.Currency} ({bill.Bought:0.00} to buy when nothing is at hand; a spare copy {bill.SpareCopy:0.00}), {schedule.HandsOn / 3600:0.0} h of work, and {schedule.Elapsed / 86_400:0.0} days from the first print to sailing.",
            Currency = bill?.Currency,
            CostOfFin = Money(bill?.Used),
            CostToBuy = Money(bill?.Bought),
            CostOfSpareCopy = Money(bill?.SpareCopy),
            Bill = bill is null ? [] : [.. bill.Lines.Select(BillLineSummary.Of)],
            ElapsedHours = schedule is null ? null : Rounded.Digits(schedule.Elapsed / 3600),
            HandsOnMinutes = schedule is null ? null : Rounded.Digits(schedule.HandsOn / 60),
            Schedule = schedule is null ? [] : [.. schedule.Steps.Select(step => new ScheduleStepSummary(
                step.Name, Rounded.Digits(step.Start / 3600), Rounded.Digits(step.Elapsed / 3600), Rounded.Digits(step.HandsOn / 60), step.Reason, step.Cautions))],
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }

    internal static double? Money(double? amount) => amount is double value ? Math.Round(value, 2) : null;
}

/// <summary>A line of the bill.</summary>
/// <param name="Item">What.</param>
/// <param name="Amount">How much the fin takes.</param>
/// <param name="Unit">In which unit.</param>
/// <param name="Packs">How many packs, spools, rods or pieces to buy for the first fin; 0 where nothing is bought by the pack.</param>
/// <param name="PackSize">Size of one of them, in the unit.</param>
/// <param name="Cost">Cost of what the fin takes.</param>
/// <param name="CostToBuy">Cost of what must be bought.</param>
public sealed record BillLineSummary(string Item, double Amount, string Unit, int Packs, double PackSize, double Cost, double CostToBuy)
{
    private const double JoulesPerKwh = 3.6e6;

    internal static BillLineSummary Of(BillLine line)
    {
        // Nobody buys joules.
        (double factor, string unit) = line.Unit == "J" ? (1 / JoulesPerKwh, "kWh") : (1, line.Unit);
        return new(line.Item, Rounded.Digits(factor * line.Amount), unit, line.Packs, Rounded.Digits(factor * line.PackSize), Math.Round(line.Used, 2), Math.Round(line.Bought, 2));
    }
}

/// <summary>A step of the schedule.</summary>
/// <param name="Step">What is done.</param>
/// <param name="StartHours">When it begins after the first print does.</param>
/// <param name="ElapsedHours">How long it takes.</param>
/// <param name="HandsOnMinutes">How long someone is busy with it.</param>
/// <param name="Reason">Why it takes that long, or why it is done.</param>
/// <param name="Cautions">What to take care of.</param>
public sealed record ScheduleStepSummary(string Step, double StartHours, double ElapsedHours, double HandsOnMinutes, string Reason, IReadOnlyList<string> Cautions);
