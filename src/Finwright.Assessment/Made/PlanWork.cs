using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Making.FromDesign;
using Finwright.Making.Quantities;

namespace Finwright.Assessment.Made;

/// <summary>Adds up what a fin takes, costs, and how long it takes.</summary>
internal static class PlanWork
{
    private const double Hour = 3600;

    /// <summary>The plan.</summary>
    public static FinPlan Of(FinDesign design, FinSolids solids, PartPlan plan, FinPrinted printed, FinPoured poured, FinCured cured)
    {
        IReadOnlyList<HardwareItem> hardware = HardwareList.Of(solids, plan, design.Parts);
        double resin = poured.Parts.Sum(part => part.Batches.Batches.Sum(batch => batch.Mass.Value));
        double gauge = printed.Parts.Where(part => part.Part.IsGauge).Sum(part => part.Time.Seconds.Value);
        MakingWork work = new()
        {
            Plates = [.. printed.Plates.Where(plate => !plate.IsGauge).Select(plate => plate.Time.Seconds.Value)],
            Gauge = gauge,
            Stops = printed.Parts.Sum(part => part.Stops.Count),
            BladePours = Math.Max(1, design.Pour.Stages.Count),
            BladePourSpan = design.Pour.Stages.Count > 0 ? design.Pour.Stages[^1].AfterHours * Hour : 0,
            BladeCure = Handling(cured, isBase: false),
            HasBase = poured.Parts.Any(part => part.IsBase),
            BaseCure = Handling(cured, isBase: true),
            Cups = poured.Parts.Sum(part => part.Batches.Batches.Count),
            IsBathed = design.Pour.Cooling == Cooling.WaterBath,
            HasStrip = design.Shape.Strip is not null,
            Bonds = hardware.Where(item => item.Kind is HardwareKind.CarbonRod or HardwareKind.Dowel).Sum(item => item.Count) + plan.Cuts.Count,
        };
        return new(
            Bill.Of(PricesFromDesign.Of(design.Prices), printed.Parts.Where(part => !part.Part.IsGauge).Sum(part => part.Time.Mass), printed.Parts.Where(part => part.Part.IsGauge).Sum(part => part.Time.Mass), resin, printed.Plates.Sum(plate => plate.Time.Seconds.Value), hardware),
            MakingSchedule.Of(work));
    }

    private static double? Handling(FinCured cured, bool isBase)
    {
        double longest = cured.Parts.Where(part => part.Part.IsBase == isBase).Select(part => part.Band.Nominal.Handling).DefaultIfEmpty(0).Max();
        return longest > 0 && double.IsFinite(longest) ? longest : null;
    }
}
