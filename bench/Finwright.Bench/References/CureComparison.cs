using System.Text.Json;
using Finwright.Making.Cure;
using Finwright.Making.Resins;

namespace Finwright.Bench.References;

/// <summary>The cure of a slab, against a general solver of stiff equations on the same cells.</summary>
internal static class CureComparison
{
    private const double IcePoint = 273.15, WallThickness = 0.0012, InfillShare = 0.15, Film = 8, Room = 293.15, Day = 24 * 3600, Slowed = 0.45;

    // Each step of ours may err by 0.02 K, and errors add up to a few times that.
    private const double PeakLimit = 0.1;

    // Share of the time itself: the peak of a slow cure is so flat that hundredths of a kelvin move it by a minute in five hours.
    private const double TimeLimit = 0.003;

    private static readonly GlassTransitionCurve Glass = new(216.15, 364.15, 0.36903);

    private static readonly ResinSystem Resin = new()
    {
        Name = "compared",
        Title = "Compared",
        Remark = "An infusion resin.",
        Kinetics = new(35982, 54960, 3574.1, 44289, 0.39845, 1.5361, 460e3, 0.001, 0.6),
        GlassTransition = Glass,
        Density = 1150,
        HeatCapacity = 1700,
        Conductivity = 0.20,
    };

    /// <summary>A slow cure that stays cool, and one that runs away.</summary>
    private static readonly (double Thickness, double RateFactor, int Cells)[] Cases = [(0.016, Slowed, 40), (0.020, 1, 40), (0.020, 1, 160)];

    /// <summary>A method of the reference: with our tolerances on each step, or so finely that it stands for the exact answer.</summary>
    private static readonly (string Name, string Method, double Relative, double OverTemperature, double OverConversion)[] Methods =
    [
        ("BDF, our tolerances", "BDF", 1e-12, 0.02, 1e-4),
        ("LSODA, our tolerances", "LSODA", 1e-12, 0.02, 1e-4),
        ("LSODA to 1e-9", "LSODA", 1e-9, 1e-6, 1e-9),
    ];

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "";
        foreach ((double thickness, double rateFactor, int cells) in Cases)
        {
            SlabCase slab = new()
            {
                Resin = Resin,
                Thickness = thickness,
                WallThickness = WallThickness,
                InfillShare = InfillShare,
                StartTemperature = Room,
                Surroundings = Room,
                Cooling = SurfaceCooling.Fixed(Film),
                Duration = Day,
                RateFactor = rateFactor,
                Cells = cells,
            };
            (Times times, SlabCure cure) = Sampling.Usual.Measure(() => CureSlab.Solve(slab));
            if (cure.Status is not CureStatus.Done)
                throw new InvalidOperationException($"The slab of {thickness} m ended with {cure.Status}.");
            foreach ((string title, string method, double relative, double overTemperature, double overConversion) in Methods)
            {
                JsonElement answer = ReferenceProgram.Ask(
                    ReferenceProgram.Python, "cure_slab.py", "python3 python3-numpy python3-scipy",
                    new { slab = Told(slab), method, relative, overTemperature, overConversion, timing = Sampling.Usual.Told });
                name = ReferenceProgram.Name(answer) + ", solve_ivp, the same cells by the method of lines";
                // With our tolerances the reference errs more than ours may: it holds them for the mean over all cells, ours for each.
                double share = relative < 1e-10 ? 3 : 1, peak = answer.GetProperty("peak").GetDouble(), time = answer.GetProperty("time").GetDouble();
                string size = $"{thickness * 1000} mm, rate × {rateFactor}, {cells} + {Math.Max(4, cells / 5)} cells; steps {cure.Steps} and {answer.GetProperty("steps").GetInt32()}";
                rows.Add(new(
                    $"peak, against {title}", size, "°C", cure.Centre.Temperature - IcePoint, peak - IcePoint,
                    Math.Abs(cure.Centre.Temperature - peak), "K", share * PeakLimit, times, ReferenceProgram.Times(answer)));
                rows.Add(new("its time", size, "min", cure.Centre.Time / 60, time / 60, Math.Abs(cure.Centre.Time - time), "s", share * TimeLimit * time, null, null));
            }
        }

        return new("Cure of a slab, one day", name, rows);
    }

    private static object Told(SlabCase slab)
    {
        (CureKinetics kinetics, PlasticHeat plastic) = (Resin.Kinetics, slab.Plastic);
        return new
        {
            cells = slab.Cells,
            thickness = slab.Thickness,
            wallThickness = slab.WallThickness,
            infillShare = slab.InfillShare,
            start = slab.StartTemperature,
            surroundings = slab.Surroundings,
            duration = slab.Duration,
            film = slab.Cooling.Coefficient,
            plasticDensity = plastic.Density,
            plasticHeatCapacity = plastic.HeatCapacity,
            plasticConductivity = plastic.Conductivity,
            density = Resin.Density,
            heatCapacity = Resin.HeatCapacity,
            conductivity = Resin.Conductivity,
            rate1 = slab.RateFactor * kinetics.Rate1,
            activation1 = kinetics.Activation1,
            rate2 = slab.RateFactor * kinetics.Rate2,
            activation2 = kinetics.Activation2,
            orderM = kinetics.OrderM,
            orderN = kinetics.OrderN,
            heatOfReaction = kinetics.HeatOfReaction,
            initialConversion = kinetics.InitialConversion,
            glassUncured = Glass.Uncured,
            glassCured = Glass.Cured,
            glassShape = Glass.Shape,
            glassOffset = CureRate.GlassOffset,
            glassSteepness = CureRate.GlassSteepness,
        };
    }
}
