using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Cure;
using Finwright.Making.Pores;
using Finwright.Making.Printing;
using Finwright.Numerics;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;
using Finwright.Strength.Bench;

namespace Finwright.Papers.Tests.Sheet;

/// <summary>Every number of the sheet is the assessment's.</summary>
public sealed class SheetNumbersTests
{
    private static readonly Tongue Tongue = new(ReadSheet.Settings());

    private static SheetWords Words => Tongue.Words.Sheet;

    private static AssessmentResult Fin => MadeFins.Fairway;

    [Fact]
    public void Cover_tells_span_area_time_and_cost()
    {
        string cover = Sheets.Fairway.Chapter("");
        ReadSheet.Stands(Tongue.Length(Fin.Planform!.Span, 0), cover);
        ReadSheet.Stands(Tongue.Area(Fin.Planform.Area), cover);
        ReadSheet.Stands(Tongue.Duration(Fin.Plan!.Schedule.Elapsed), cover);
        ReadSheet.Stands(Tongue.Duration(Fin.Plan.Schedule.HandsOn), cover);
        ReadSheet.Stands(Tongue.Money(Fin.Plan.Bill.Used, Fin.Plan.Bill.Currency), cover);
    }

    [Fact]
    public void Cover_tells_every_verdict_with_its_value()
    {
        string cover = Sheets.Fairway.Chapter("");
        MakingResult making = MakingResult.Of(Fin);
        foreach (Verdict verdict in Fin.Verdicts.Concat(Fin.StrengthVerdicts).Concat(making.PrintVerdicts).Concat(making.PourVerdicts).Concat(making.CureVerdicts))
        {
            Assert.True(ReadSheet.StandsWrapped(Tongue.Words.Verdicts.Checked(verdict), cover), verdict.Checked);
            if (verdict.State != VerdictState.Holds)
                ReadSheet.Stands(Tongue.Words.Verdicts.Change(verdict), cover);
            if (verdict.Value is { } value)
                ReadSheet.Stands(verdict.State == VerdictState.Holds ? Tongue.Quantity(value) : Tongue.Numbers(verdict), cover);
        }
    }

    [Fact]
    public void Cut_list_tells_all_that_is_bought_with_its_length()
    {
        string needs = Sheets.Fairway.Chapter(Words.Needs);
        Assert.NotEmpty(Fin.Hardware);
        foreach (HardwareItem item in Fin.Hardware)
        {
            ReadSheet.Stands(Tongue.Words.Names.Size(item, Tongue), needs);
            ReadSheet.Stands(Tongue.Words.Names.Place(item), needs);
            if (item.Length > 0)
                ReadSheet.Stands(Tongue.Length(item.Length), needs);
        }

        ReadSheet.Stands(Tongue.Grams(Fin.Printed!.Plates.Sum(plate => plate.Time.Mass)), needs);
        ReadSheet.Stands(Tongue.Grams(Fin.Poured!.Parts.Sum(part => part.Batches.Batches.Sum(cup => cup.Mass.Value))), needs);
    }

    [Fact]
    public void Print_tells_time_plastic_and_stops_of_every_plate()
    {
        string print = Sheets.Fairway.Chapter(Words.Print);
        Assert.Contains(Fin.Printed!.Plates, plate => plate.Stops.Count > 0);
        foreach (PlatePrinted plate in Fin.Printed.Plates)
        {
            ReadSheet.Stands(Words.PrintPlate(plate.Number, Tongue.Range(plate.Time.Seconds, Tongue.Duration), Tongue.Grams(plate.Time.Mass)).Text, print);
            foreach (PartPrinted part in plate.Parts)
                ReadSheet.Stands(Tongue.Words.Names.Part(part.Part.Name), print);
            foreach (PrintStop stop in plate.Stops)
            {
                ReadSheet.Stands($"{stop.LayerNumber}{Tongue.Number(1e3 * stop.Height, 2)} mm", print);
                foreach (StopEntry item in stop.Items)
                    ReadSheet.Stands($"{Tongue.Number(1e3 * item.Clearance, 2)} mm", print);
            }
        }
    }

    [Fact]
    public void Pour_tells_ports_and_cups_of_every_part()
    {
        string pour = Sheets.Fairway.Chapter(Words.Pour);
        Assert.NotEmpty(Fin.Poured!.Parts);
        foreach (PartPoured part in Fin.Poured.Parts)
        {
            foreach ((int index, PouredPort port) in part.Ports.Index())
                ReadSheet.Stands($"{index + 1}{Tongue.Words.Names.Port(port.Name)}{Words.Role(port.IsFeed)}{Tongue.Length(port.Port.Diameter)}{Tongue.Length(DrillDepth.FromSkin(Fin.Parts!, part, port))}", pour);
            foreach (Batch cup in part.Batches.Batches)
                ReadSheet.Stands($"{cup.Number}{Tongue.Grams(cup.ResinMass!.Value.Value, 1)}{Tongue.Grams(cup.HardenerMass!.Value.Value, 1)}{Tongue.Grams(cup.Mass.Value, 1)}", pour);
            ReadSheet.Stands(Tongue.Words.Names.Attitude(part.Held(part.Attitude)), pour);
            ReadSheet.Stands(Tongue.Range(part.Need.Pores, volume => Tongue.Millilitres(volume)), pour);
        }
    }

    [Fact]
    public void Cure_tells_peaks_and_times_and_what_must_never_be_passed()
    {
        string cure = Sheets.Fairway.Chapter(Words.Cure);
        ReadSheet.Stands(Words.NeverAbove(Tongue.Temperature(Fin.Cured!.Softening)), cure);
        foreach (PartCured part in Fin.Cured.Parts.Where(part => part.IsWhole))
        {
            (double low, double high) = part.Range(run => run.Resin.Temperature);
            ReadSheet.Stands(Tongue.Range(new Ranged(part.Band.Nominal.Resin.Temperature, low, high), kelvin => Tongue.Temperature(kelvin)), cure);
            ReadSheet.Stands(Tongue.Duration(part.Band.Nominal.Resin.Time), cure);
            if (part.Case.Bath is { } bath)
                ReadSheet.Stands(Tongue.Duration(part.Water is { Status: WaterTimeStatus.Found } water ? Math.Max(water.Duration, bath.Duration) : bath.Duration), cure);
            if (double.IsFinite(part.Band.Nominal.Handling))
                ReadSheet.Stands(Tongue.Duration(part.Band.Nominal.Handling), cure);
        }
    }

    [Fact]
    public void Bench_tells_every_place_with_its_range()
    {
        string prove = Sheets.Fairway.Chapter(Words.Prove);
        BenchPrediction prediction = Fin.Bench!.Prediction!;
        foreach (StationBend bend in (StationBend[])[prediction.AtLoad, prediction.AtTip])
        {
            foreach (Ranged range in (Ranged[])[bend.LeadingEdge, bend.MidChord, bend.TrailingEdge])
                ReadSheet.Stands($"{Tongue.BareLength(range.Value)}{Words.FromTo(Tongue.BareLength(range.Low), Tongue.BareLength(range.High))}", prove);
            ReadSheet.Stands(Words.FromTo(Tongue.Angle(bend.Twist.Low, 2), Tongue.Angle(bend.Twist.High, 2)), prove);
        }

        ReadSheet.Stands(Tongue.Mass(Fin.Design!.Prove.MassKg), prove);
        ReadSheet.Stands(Tongue.Length(prediction.Load.Depth, 0), prove);
        foreach (double hertz in Fin.Vibration!.Dry)
            ReadSheet.Stands($"{Tongue.Number(hertz, 0)} Hz", prove);
    }

    [Fact]
    public void Torques_are_those_that_the_strength_advises()
    {
        string fit = Sheets.Fairway.Chapter(Words.Fit);
        Assert.NotEmpty(Fin.Loaded!.Torques);
        foreach (var torque in Fin.Loaded.Torques)
            ReadSheet.Stands(Tongue.Quantity(new(torque.Advice.Greatest, "N·m", 1)), fit);
    }

    [Fact]
    public void Smaller_cups_change_the_sheet()
    {
        FinPoured poured = Fin.Poured!;
        BatchPlan Smaller(PartPoured part) => BatchPlan.Of(part.Need.Total, poured.Resin, 0.041, 293.15);
        AssessmentResult changed = Fin with { Poured = poured with { Parts = [.. poured.Parts.Select(part => part with { Batches = Smaller(part) })] } };
        string cup = Tongue.Grams(changed.Poured.Parts[0].Batches.Batches[0].Mass.Value, 1);
        Assert.DoesNotContain(ReadSheet.Bare(cup), Sheets.Fairway.Chapter(Words.Pour), StringComparison.Ordinal);
        ReadSheet.Stands(cup, ReadSheet.Of(changed).Chapter(Words.Pour));
    }

    [Fact]
    public void Another_stop_changes_the_sheet()
    {
        FinPrinted printed = Fin.Printed!;
        PlatePrinted with = printed.Plates.First(plate => plate.Stops.Count > 0);
        PrintStop later = with.Stops[0] with { LayerNumber = 4321, Height = 0.86420 };
        AssessmentResult changed = Fin with { Printed = printed with { Plates = [.. printed.Plates.Select(plate => plate == with ? plate with { Stops = [later, .. plate.Stops.Skip(1)] } : plate)] } };
        ReadSheet.Stands("4321864.20 mm", ReadSheet.Of(changed).Chapter(Words.Print));
        Assert.DoesNotContain("4321864.20mm", Sheets.Fairway.All, StringComparison.Ordinal);
    }
}
