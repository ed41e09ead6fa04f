using System.Buffers.Binary;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests.EndToEnd;

/// <summary>Five invented fins, one of each family, through every stage by the command line: reviewed numbers, and what physics and bookkeeping ask of any fin.</summary>
[Collection(FiveFins.Name)]
public sealed class FiveFinsTests(PackedFins fins)
{
    // STL: a header of 80 bytes and a count, then 50 bytes a triangle, of which the first twelve are its normal.
    private const int StlHeader = 84, StlTriangle = 50, StlNormal = 12;

    // kg/m, kg and kg/m³, from memory: M6 threaded rod of steel, a M6 nut, pultruded carbon rod.
    private const double ThreadedRodPerMetre = 0.175, Nut = 0.0025, CarbonDensity = 1550;

    // One of them on every run; all five take minutes, and run by hand (docs/evidence.md).
    private const string Always = "mudflat-delta";

    public static IEnumerable<TheoryDataRow<string>> Names =>
        PackedFins.Names.Select(name => name == Always ? new TheoryDataRow<string>(name) : new TheoryDataRow<string>(name).WithTrait("Pace", "long"));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_fin_is_checked_and_packed_without_an_error_and_every_command_answers_of_the_same_design(string name)
    {
        PackedFin fin = fins[name];
        Assert.True(fin.Pack.ExitCode == ExitCode.Good, fin.Pack.Out + fin.Pack.Error);
        Assert.Equal(ExitCode.Good, fin.Run("check").ExitCode);
        Assert.True(fin.Summary.GetProperty("can_be_made").GetBoolean());
        string design = fin.Summary.GetProperty("design_sha256").GetString()!;
        foreach (string command in (string[])["water", "strength", "bench", "print", "pour", "cure", "plan"])
        {
            ProgramRun run = fin.Run(command);
            // A verdict may fail; that is an answer.
            Assert.True(run.ExitCode is ExitCode.Good or ExitCode.Fails, command + run.Error);
            Assert.Equal("", run.Error);
            Assert.Contains(design, run.Out, StringComparison.Ordinal);
            Assert.Equal(File.ReadAllText(fin.FileOf($"{command}.json")), run.Out);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_key_numbers_of_a_fin_are_those_that_were_reviewed(string name)
    {
        // From our own earlier run, reviewed: a regression. Write them anew with FINWRIGHT_WRITE=1 and look at what changed.
        string file = Path.Combine(PackedFins.Source, $"{name}.expected.txt"), actual = KeyNumbers.Of(fins[name]);
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(file, actual);
        Assert.Empty(KeyNumbers.Differences(File.ReadAllText(file), actual));
    }

    [Fact]
    public void A_number_beyond_its_tolerance_a_new_word_and_a_missing_line_are_seen()
    {
        const string Reviewed = "drag = 20 N ~ 0.005\nverdict leeway = holds\n";
        Assert.Empty(KeyNumbers.Differences(Reviewed, "drag = 20.09 N ~ 0.005\nverdict leeway = holds\n"));
        Assert.Single(KeyNumbers.Differences(Reviewed, "drag = 20.11 N ~ 0.005\nverdict leeway = holds\n"));
        Assert.Single(KeyNumbers.Differences(Reviewed, "drag = 20 kN ~ 0.005\nverdict leeway = holds\n"));
        Assert.Single(KeyNumbers.Differences(Reviewed, "drag = 20 N ~ 0.005\nverdict leeway = fails\n"));
        Assert.Single(KeyNumbers.Differences(Reviewed, "drag = 20 N ~ 0.005\n"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_water_carries_what_is_asked_and_more_than_induced_drag_is_paid(string name)
    {
        JsonElement water = fins[name].Water;
        JsonElement cruise = water.Items("load_cases").Named("case", "cruise");
        Assert.Equal("found", cruise.GetProperty("status").GetString());
        double asked = cruise.Number("side_force_n");
        // The load over the depth, added up by trapezoids between the middles of the strips, to nothing at the tip and level to the hull. Tolerance 2 %: what trapezoids leave out of a load that falls steeply at the tip.
        JsonElement[] strips = [.. water.Items("span_load")];
        double span = fins[name].Summary.GetProperty("planform").Number("span_mm"), carried = 0, depth = 0, load = strips[0].Number("load_n_per_m");
        foreach (JsonElement strip in strips)
        {
            carried += 1e-3 * (strip.Number("depth_mm") - depth) * (strip.Number("load_n_per_m") + load) / 2;
            (depth, load) = (strip.Number("depth_mm"), strip.Number("load_n_per_m"));
        }

        carried += 1e-3 * (span - depth) * load / 2;
        Assert.InRange(Math.Abs(carried), 0.98 * asked, 1.02 * asked);
        // The same from the sweep, between its steps of half a degree. Tolerance 1 %: the sweep is of the same sections, but straight between its points.
        Assert.InRange(AtLeeway(water, cruise.Number("leeway_degrees")), 0.99 * asked, 1.01 * asked);
        JsonElement[] carrying = [.. water.Items("load_cases").Where(own => own.GetProperty("status").ValueKind == JsonValueKind.String && own.GetProperty("status").GetString() == "found")];
        Assert.NotEmpty(carrying);
        foreach (JsonElement drag in carrying.Select(own => own.GetProperty("drag")))
        {
            Assert.True(drag.Number("induced_n") > 0 && drag.Number("section_n") > 0);
            Assert.True(drag.Number("total_n") > drag.Number("induced_n") + drag.Number("section_n"));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_lift_slope_lies_between_a_fin_alone_and_one_under_an_endless_wall(string name)
    {
        PackedFin fin = fins[name];
        JsonElement planform = fin.Summary.GetProperty("planform"), state = fin.Water.GetProperty("water"), small = fin.Water.Items("sweep").First(point => point.Number("leeway_degrees") >= 1);
        Assert.InRange(small.Number("leeway_degrees"), 1, 2);
        double speed = small.Number("speed_m_per_s"), area = 1e-4 * planform.Number("area_cm2"), aspect = planform.Number("aspect_ratio");
        // By force and the area of the blade, not by the program's own coefficient.
        double coefficient = small.Number("side_force_n") / (0.5 * state.Number("density_kg_per_m3") * speed * speed * area);
        double slope = coefficient / (small.Number("leeway_degrees") * Math.PI / 180);
        // Helmbold, 1942, from memory, for a straight wing. 15 %: sweep, taper, thickness and the strip, which it does not know.
        Assert.InRange(slope, 0.85 * Helmbold(aspect), 1.15 * Helmbold(2 * aspect));
        Assert.InRange(slope, Helmbold(2 * aspect) / 2, 1.15 * Helmbold(2 * aspect));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_fin_weighs_what_its_plastic_resin_and_hardware_weigh(string name)
    {
        PackedFin fin = fins[name];
        JsonElement total = fin.Pour.GetProperty("total");
        JsonElement[] printed = [.. fin.Print.Items("parts").Where(part => part.GetProperty("name").GetString() != "gauge")];
        double stays = total.GetProperty("pores_ml").Number("value") + total.GetProperty("top_up_ml").Number("value");
        double density = total.GetProperty("total_grams").Number("value") / total.GetProperty("total_ml").Number("value");
        double plastic = printed.Sum(part => part.Number("plastic_grams"));
        double mass = plastic + density * stays + 1e3 * fin.Summary.Items("hardware").Sum(HardwareMass);
        // The hardware's share is an estimate on both sides, about a tenth of the whole at most: 2 %.
        double stated = fin.Lines["plan.fin_mass"]!.Value!.Value;
        Assert.InRange(mass, 0.98 * stated, 1.02 * stated);
        // Without reservoirs and losses, no more can stay than blade and base have room for.
        double volume = fin.Summary.Number("parts_volume_cm3");
        Assert.True(stays < volume);
        // Plastic of 1.27 g/cm³, the design's default, and pores fill the parts. Tolerance 0.5 %: layers against the mesh.
        Assert.InRange(plastic / 1.27 + total.GetProperty("pores_ml").Number("value"), 0.995 * volume, 1.005 * volume);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_files_to_print_hold_the_volume_that_is_stated(string name)
    {
        PackedFin fin = fins[name];
        JsonElement[] parts = [.. fin.Summary.Items("parts")];
        foreach (JsonElement part in parts)
            Assert.Equal(1, VolumeCm3(File.ReadAllBytes(fin.FileOf(part.GetProperty("file").GetString()!))) / part.Number("volume_cm3"), 1e-3);
        double sum = parts.Where(part => part.GetProperty("name").GetString() != "gauge").Sum(part => part.Number("volume_cm3"));
        Assert.Equal(1, sum / fin.Summary.Number("parts_volume_cm3"), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_cure_warms_and_every_reserve_is_positive(string name)
    {
        PackedFin fin = fins[name];
        JsonElement[] cured = [.. fin.Cure.Items("parts")];
        Assert.NotEmpty(cured);
        foreach (JsonElement part in cured)
        {
            // The room is at 20 °C, the bath at 15 °C, the design's defaults; the resin comes from the room. Neither end of the band need be the warmer: a fast cure may be over before the bath ends, a slow one peaks after it.
            Assert.All((string[])["slow", "nominal", "fast"], end => Assert.True(part.GetProperty(end).Number("peak_resin_celsius") >= 20));
            double peak = part.GetProperty("nominal").Number("peak_resin_celsius");
            // The inner face of a wall is never warmer than the hottest resin.
            Assert.True(part.GetProperty("nominal").Number("peak_wall_celsius") <= peak);
        }

        double[] reserves = [.. fin.Strength.Items("load_cases").SelectMany(own => own.Reserves())];
        Assert.NotEmpty(reserves);
        Assert.All(reserves, reserve => Assert.True(reserve > 0));
        Assert.True(fin.Bench.GetProperty("prediction").Number("firstCrackReserve") > 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Twice_the_weight_bends_a_fin_whose_joint_stays_closed_twice_as_far(string name)
    {
        double Tip(string root, string mass) => fins[name].Run("bench", "--root", root, "--mass-kg", mass).Json().GetProperty("deflectionMm").GetProperty("tip").Number("midChord");
        double one = Tip("elastic", "4"), two = Tip("elastic", "8");
        Assert.True(one > 0);
        // A linear plate: 1 % is far more than it may miss.
        Assert.InRange(two / one, 1.98, 2.02);
        // A joint that may open never makes it stiffer, nor two weights less than one.
        Assert.True(Tip("joint", "8") >= 0.999 * two);
        Assert.True(Tip("joint", "4") >= 0.999 * one);
    }

    private static double Helmbold(double aspectRatio) => 2 * Math.PI * aspectRatio / (2 + Math.Sqrt(4 + aspectRatio * aspectRatio));

    /// <summary>Side force of the sweep at a leeway, straight between its points.</summary>
    private static double AtLeeway(JsonElement water, double leeway)
    {
        JsonElement[] sweep = [.. water.Items("sweep")];
        int after = Array.FindIndex(sweep, point => point.Number("leeway_degrees") >= leeway);
        Assert.True(after > 0);
        (JsonElement low, JsonElement high) = (sweep[after - 1], sweep[after]);
        double share = (leeway - low.Number("leeway_degrees")) / (high.Number("leeway_degrees") - low.Number("leeway_degrees"));
        return low.Number("side_force_n") + share * (high.Number("side_force_n") - low.Number("side_force_n"));
    }

    /// <summary>Mass of what stays in the fin, kg; the board's bolts, pins and screws are not counted to it.</summary>
    private static double HardwareMass(JsonElement item)
    {
        double length = item.GetProperty("length_mm").ValueKind == JsonValueKind.Number ? 1e-3 * item.Number("length_mm") : 0;
        return item.GetProperty("count").GetInt32() * item.GetProperty("item").GetString() switch
        {
            "threaded-rod" => ThreadedRodPerMetre * length,
            "nut" => Nut,
            "carbon-rod" or "dowel" => CarbonDensity * Math.PI / 4 * Square(1e-3 * First(item)) * length,
            _ => 0,
        };
    }

    /// <summary>The number that a size begins with.</summary>
    private static double First(JsonElement item) => double.Parse(item.GetProperty("size").GetString()!.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);

    private static double Square(double value) => value * value;

    /// <summary>Volume of a binary STL in millimetres: the sum of the tetrahedra from its triangles to the first corner.</summary>
    private static double VolumeCm3(ReadOnlySpan<byte> stl)
    {
        int triangles = BinaryPrimitives.ReadInt32LittleEndian(stl[(StlHeader - 4)..]);
        Assert.Equal(StlHeader + triangles * StlTriangle, stl.Length);
        (double x0, double y0, double z0) = Corner(stl, 0, 0, default);
        double six = 0;
        for (int i = 0; i < triangles; i++)
        {
            (double ax, double ay, double az) = Corner(stl, i, 0, (x0, y0, z0));
            (double bx, double by, double bz) = Corner(stl, i, 1, (x0, y0, z0));
            (double cx, double cy, double cz) = Corner(stl, i, 2, (x0, y0, z0));
            six += ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx);
        }

        return six / 6 * 1e-3;

        static (double X, double Y, double Z) Corner(ReadOnlySpan<byte> stl, int triangle, int corner, (double X, double Y, double Z) from)
        {
            ReadOnlySpan<byte> place = stl[(StlHeader + triangle * StlTriangle + StlNormal * (corner + 1))..];
            return (BinaryPrimitives.ReadSingleLittleEndian(place) - from.X, BinaryPrimitives.ReadSingleLittleEndian(place[4..]) - from.Y, BinaryPrimitives.ReadSingleLittleEndian(place[8..]) - from.Z);
        }
    }
}
