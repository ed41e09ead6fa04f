using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry.Solids;

namespace Finwright.Assessment.Tests.Made;

/// <summary>What a change of the design makes print, pour and cure do again, by the keys under which they are kept.</summary>
public sealed class MakingStagesTests
{
    private static readonly FinDesign Design = new() { Name = "test", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 190, RootChordMm = 110 } } };

    [Fact]
    public void Prices_change_the_plan_alone()
    {
        FinDesign dearer = Design with { Prices = new() { FilamentPerKg = 40, ResinPerKg = 60, SpoolKg = 0.75 } };
        Assert.True(IsKept(FinStages.Printed, dearer) && IsKept(FinStages.Poured, dearer) && IsKept(FinStages.Cured, dearer));
        Assert.False(IsKept(FinStages.Plan, dearer));
    }

    [Fact]
    public void Hours_and_cold_of_the_bath_cure_anew_but_print_nothing_anew()
    {
        foreach (Pour pour in (Pour[])[Design.Pour with { BathHours = 20 }, Design.Pour with { BathCelsius = 10 }, Design.Pour with { Cooling = Cooling.StillAir }])
        {
            Assert.True(IsKept(FinStages.Parts, Design with { Pour = pour }) && IsKept(FinStages.Printed, Design with { Pour = pour }));
            Assert.False(IsKept(FinStages.Cured, Design with { Pour = pour }));
        }
    }

    [Fact]
    public void Infill_cuts_the_same_parts_or_not_but_prints_pours_and_cures_anew()
    {
        FinDesign denser = Design with { Print = Design.Print with { InfillPercent = 25 } };
        Assert.True(IsKept(FinStages.Solid, denser));
        Assert.False(IsKept(FinStages.Printed, denser) || IsKept(FinStages.Poured, denser) || IsKept(FinStages.Cured, denser));
    }

    [Fact]
    public void A_bench_weight_and_a_rider_change_nothing_of_the_making()
    {
        FinDesign heavier = Design with { Prove = new() { MassKg = 22 }, Brief = new() { RiderMassKg = 64 }, Note = "softer tip" };
        Assert.True(IsKept(FinStages.Plan, heavier));
    }

    private static bool IsKept(Stage stage, FinDesign changed) => Key(stage, Design) == Key(stage, changed);

    private static StageKey Key(Stage stage, FinDesign design) => new StageRun(design, new MemoryStageCache(), NoKernel, null, TestContext.Current.CancellationToken).KeyOf(stage);

    private static ISolidKernel NoKernel() => throw new InvalidOperationException("No key needs a kernel.");
}
