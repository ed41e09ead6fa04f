using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Making.Tests.Cure;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Evidence;

/// <summary>Cure and cooling beside exact solutions and independent integrations.</summary>
internal static class CureEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Slabs(), .. Edge(), .. Parts(), .. Cups(), .. Convection()];

    private static IEnumerable<EvidenceRow> Slabs()
    {
        const string Topic = "Cure of a slab between two printed walls of 1.2 mm, 22 °C";
        const string Source = "Numerical reference, scipy: finite volumes, 100 cells through half the slab, BDF to 1e-9";
        const string Band = "band defended for this case: near ignition 1 % of cooling moves it by 2 K";
        foreach ((string name, double scale, double thickness, double coefficient, double peak, double time, double inside, double outside, double gel, double kelvins, double share) in new (string, double, double, double, double, double, double, double, double, double, double)[]
        {
            ("12 mm, still air (h 8)", 1, 0.012, 8.0, 165.04, 115.08, 151.32, 147.17, 107.70, 3, 0.02),
            ("25 mm, water (h 300)", 1, 0.025, 300, 32.538, 120.79, 23.91, 22.85, 326.65, 0.1, 0.01),
            ("12 mm, still air (h 8), rates times 0.4", 0.4, 0.012, 8, 28.547, 308.66, 27.86, 27.67, 967.83, 0.1, 0.01),
            ("12 mm, water (h 300), rates times 6", 6, 0.012, 300, 111.80, 22.13, 52.49, 35.60, 19.51, 1.5, 0.01),
        })
        {
            SlabCure cure = CureSlab.Solve(CureCases.Slab(CureCases.Scaled(scale), thickness, coefficient));
            string reason = kelvins > 1 ? Band : "cells and steps";
            yield return new(Topic, $"{name}: peak in the middle, °C", Source, peak, cure.Centre.Temperature - CureCases.IcePoint, kelvins, reason);
            yield return new(Topic, $"{name}: when, min", Source, time, cure.Centre.Time / 60, share * time, "a flat peak");
            yield return new(Topic, $"{name}: inner face of the wall, °C", Source, inside, cure.WallInside.Temperature - CureCases.IcePoint, kelvins, reason);
            yield return new(Topic, $"{name}: outer face of the wall, °C", Source, outside, cure.WallOutside.Temperature - CureCases.IcePoint, kelvins, reason);
            yield return new(Topic, $"{name}: conversion 0.6 in the middle, min", Source, gel, cure.GelAtCentre / 60, share * gel, "cells and steps");
        }
    }

    private static IEnumerable<EvidenceRow> Edge()
    {
        SlabCure more = CureSlab.Solve(CureCases.Slab(CureCases.Infusion, 0.012, 8.08));
        yield return new("Cure of a slab between two printed walls of 1.2 mm, 22 °C", "12 mm, still air, 1 % more cooling (h 8.08): peak in the middle, °C", "Numerical reference, scipy", 162.70, more.Centre.Temperature - CureCases.IcePoint, 3, "as for the case itself");
    }

    private static IEnumerable<EvidenceRow> Parts()
    {
        const string Topic = "Cure of a part in three dimensions";
        foreach ((string name, double scale, double coefficient, double peak, double kelvins) in new (string, double, double, double, double)[]
        {
            ("rates times 0.4, still air (h 8)", 0.4, 8, 28.547, 0.15),
            ("rates times 6, water (h 300)", 6, 300, 111.80, 2.5),
        })
        {
            PartVoxels voxels = CureBoxes.Box(new(0.06, 0.06, 0.0144), new(0, 0, 0.0012), new(0.03, 0.03, 0.0008), 0.3, false);
            PartCureCase part = new() { Resin = CureCases.Scaled(scale), InfillShare = 0, WallThickness = 0.0012, Room = CureCases.IcePoint + 22, InAir = SurfaceCooling.Fixed(coefficient), Options = new() };
            yield return new(Topic, $"12 mm between walls of 1.2 mm, cells of 0.8 mm that hold both, {name}: peak, °C", "Numerical reference, scipy: the slab above", peak, PartCure.Solve(voxels, part).Resin.Temperature - CureCases.IcePoint, kelvins, "cells that hold wall and resin together");
        }

        ResinSystem inert = CureCases.Infusion with { Kinetics = new(0, 50e3, 0, 50e3, 0, 1, 0, 0, 0.6) };
        PartCureCase cooled = new() { Resin = inert, InfillShare = 0, WallThickness = 0, Room = 300, InAir = SurfaceCooling.Fixed(20), Pours = [new(0, double.PositiveInfinity, 350)], Duration = 1200, Options = new(0.005) };
        PartCureResult box = PartCure.Solve(CureBoxes.Box(new(0.040, 0.030, 0.020), new(0, 0, 0), new(0.00125, 0.00125, 0.00125), 0.37), cooled);
        (double mean, double centre) = ExactSlab.Box(0.040, 0.030, 0.020, 20, inert.Conductivity, inert.Density * inert.HeatCapacity, 1200);
        const string Exact = "Exact: product of three slabs' series, Carslaw and Jaeger, from memory";
        yield return new(Topic, "Box of 40 by 30 by 20 mm cooling for 20 min (h 20), off the grid: mean over the beginning", Exact, mean, (box.History[^1].Mean - 300) / 50, 0.003, "a sixteenth of the least edge, second order");
        yield return new(Topic, "The same: middle over the beginning", Exact, centre, (box.History[^1].Hottest - 300) / 50, 0.005, "a sixteenth of the least edge, second order");
    }

    private static IEnumerable<EvidenceRow> Cups()
    {
        const string Topic = "Resin in a cup: 100 g, 70 mm, from 25 °C in a room of 22 °C, 8 W/(m² K)";
        const string Source = "Numerical reference, scipy: LSODA to 1e-10";
        CupRun cup = CupModel.Solve(new() { Resin = CureCases.Infusion, Mass = 0.1, Diameter = 0.07, StartTemperature = CureCases.IcePoint + 25, RoomTemperature = CureCases.IcePoint + 22, Cooling = SurfaceCooling.Fixed(8), Duration = 4 * 3600 });
        yield return new(Topic, "Peak, °C", Source, 212.645, cup.Peak.Temperature - CureCases.IcePoint, 0.5, "steps");
        yield return new(Topic, "When, min", Source, 89.65, cup.Peak.Time / 60, 0.1, "steps");
        yield return new(Topic, "Conversion 0.6, min", Source, 86.72, cup.Gel / 60, 0.1, "steps");
        yield return new(Topic, "After an hour, °C", Source, 42.63, cup.TemperatureAt(3600) - CureCases.IcePoint, 0.05, "steps");
        yield return new(Topic, "Gel of a thin layer kept at 40 °C, min", "Numerical reference, scipy: quad", 10463.437 / 60, SheetFit.GelTime(CureCases.Infusion, 313.15) / 60, 0.02, "rounding");
    }

    private static IEnumerable<EvidenceRow> Convection()
    {
        const string Topic = "Free convection on a standing wall";
        const string Source = "Churchill and Chu, 1975, Int. J. Heat Mass Transfer 18:1323 (abstract read); worked out with numpy";
        foreach ((string what, double viscosity, double diffusivity, double conductivity, double expansion, double height, double over, double nusselt, double coefficient) in new (string, double, double, double, double, double, double, double, double)[]
        {
            ("Air, 0.11 m, 10 K", 15.9e-6, 22.5e-6, 0.0263, 1 / 300.0, 0.11, 10.0, 17.44, 4.17),
            ("Air, 0.22 m, 30 K", 15.9e-6, 22.5e-6, 0.0263, 1 / 300.0, 0.22, 30, 42.46, 5.08),
            ("Water, 0.11 m, 10 K", 0.893e-6, 0.1457e-6, 0.607, 2.57e-4, 0.11, 10, 99.63, 549.8),
        })
        {
            double rayleigh = 9.80665 * expansion * over * height * height * height / (viscosity * diffusivity), found = SurfaceCooling.Nusselt(rayleigh, viscosity / diffusivity);
            yield return new(Topic, $"{what}: Nusselt number", Source, nusselt, found, 0.001 * nusselt, "gravity to four digits");
            yield return new(Topic, $"{what}: coefficient, W/(m² K)", Source, coefficient, found * conductivity / height, 0.002 * coefficient, "digits shown");
        }

        yield return new(Topic, "Water at 298 K, 0.11 m, 10 K, properties of this program: coefficient, W/(m² K)", Source, 549.8, SurfaceCooling.StillWater(0.11).At(303.15, 293.15), 0.04 * 549.8, "properties from memory, to 3 %");
        yield return new(Topic, "Radiation at 300 K, emissivity 0.9: coefficient, W/(m² K)", "4 ε σ T³, CODATA 2018", 5.51, SurfaceCooling.Radiation(300, 300, 0.9), 0.005, "digits shown");
    }
}
