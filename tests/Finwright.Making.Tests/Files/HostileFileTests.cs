using System.Globalization;
using System.Text;
using CsCheck;
using Finwright.Making.Cure;
using Finwright.Making.Files;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Files;

/// <summary>Whatever stands in a resin file or a cup test: a resin or a test, or findings that say why not; nothing thrown, and nothing read that cannot be worked with.</summary>
public sealed class HostileFileTests
{
    private static readonly string[] Values = ["null", "true", "0", "-1", "1e308", "1e400", "-0", "12.5", "\"\"", "\"12\"", "[]", "{}", "[1]", "{\"value\":1}", "{\"value\":2,\"low\":3,\"high\":1}", "NaN", "\"" + new string('x', 300) + "\"", ","];

    private static readonly string[] Pieces =
    [
        "{", "}", "[", "]", ",", ":", "\"", "\"name\"", "\"format\"", "1", "\"rate_1_per_s\"", "\"order_n\"", "null", "1e400", "-", "//", "/*", "*/", "\\", "\\ud800", "\n", "\uFEFF", "NaN", "\"value\"", "\"low\"", "\"source\"",
    ];

    [Fact]
    public void Random_bytes_are_no_resin() =>
        Gen.Byte.Array[0, 600].Hold(bytes => Assert.NotEmpty(Refused(bytes)), iter: 300);

    [Fact]
    public void Random_signs_of_a_resin_file_are_answered() =>
        Gen.Int[0, Pieces.Length - 1].Array[0, 80].Hold(picks => Assert.NotEmpty(Refused(Encoding.UTF8.GetBytes(string.Concat(picks.Select(p => Pieces[p]))))), iter: 2000);

    [Fact]
    public void Resin_files_with_a_few_bytes_changed_are_answered()
    {
        byte[] valid = Written("laminating-slow");
        Gen.Select(Gen.Int[0, valid.Length - 1].Array[1, 6], Gen.Byte.Array[6]).Hold((places, values) =>
        {
            byte[] changed = [.. valid];
            for (int i = 0; i < places.Length; i++)
                changed[places[i]] = values[i];
            Answered(changed);
        }, iter: 500);
    }

    [Fact]
    public void Resin_files_cut_anywhere_are_no_resin()
    {
        byte[] valid = Written("casting-slow");
        int last = Array.LastIndexOf(valid, (byte)'}');
        Gen.Int[0, last].Hold(length => Assert.NotEmpty(Refused(valid[..length])), iter: 200);
    }

    [Fact]
    public void Resin_files_with_a_number_replaced_by_anything_are_answered() =>
        Gen.Select(Gen.Int[0, ResinField.All.Count - 1], Gen.Int[0, Values.Length - 1]).Hold((field, value) =>
            Answered(Encoding.UTF8.GetBytes(Text(ResinField.All.Select((f, i) => i == field ? Values[value] : Middle(f))))), iter: 500);

    [Fact]
    public void Every_resin_that_is_read_can_be_followed_in_a_cup_and_between_walls() =>
        Gen.Int[0, 3].Array[ResinField.All.Count].Hold(ends =>
        {
            ResinReading reading = Answered(Encoding.UTF8.GetBytes(Text(ResinField.All.Select((f, i) => ends[i] switch { 0 => Shown(f.Data.Least), 1 => Shown(f.Data.Greatest), _ => Middle(f) }))));
            if (reading.Resin is not { } resin)
                return;
            CupRun cup = CupModel.Solve(new() { Resin = resin, Mass = 0.1, Diameter = 0.07, StartTemperature = 298.15, RoomTemperature = 295.15, Duration = 3600 });
            Assert.True(double.IsFinite(cup.Peak.Temperature));
            Assert.All(cup.History, moment => Assert.True(double.IsFinite(moment.Temperature) && moment.Conversion is >= 0 and <= 1));
            SlabCase slab = new() { Resin = resin, Thickness = 0.008, StartTemperature = 295.15, Surroundings = 295.15, Cooling = SurfaceCooling.Fixed(8), Duration = 3600 };
            Assert.True(double.IsFinite(CureSlab.Solve(slab).Centre.Temperature));
            Assert.InRange(Ignition.OfSlab(slab), 0, double.MaxValue);
        }, iter: 300);

    [Fact]
    public void Cup_tests_with_a_few_bytes_changed_are_answered()
    {
        byte[] valid = Encoding.UTF8.GetBytes("# my cup\nmass_g;100\nroom_celsius;21,5\ncup_diameter_mm;65\nminutes;celsius\n0;22\n5;22,5\n10;23,4\n20;26\n30;31,5\n");
        Gen.Select(Gen.Int[0, valid.Length - 1].Array[1, 4], Gen.Byte.Array[4]).Hold((places, values) =>
        {
            byte[] changed = [.. valid];
            for (int i = 0; i < places.Length; i++)
                changed[places[i]] = values[i];
            CupTestReading reading = CupTestFile.Read(changed);
            Assert.Equal(reading.Test is null, reading.Findings.Count > 0);
        }, iter: 1000);
    }

    [Fact]
    public void Every_cup_test_that_is_read_can_be_fitted() =>
        // Readings drawn at random teach nothing about a resin: the fit must still end with an answer or a status.
        Gen.Select(Gen.Double[5, 500], Gen.Double[10, 200], Gen.Double[-5, 50], Gen.Double[-20, 200].Array[5, 12]).Hold((mass, diameter, room, celsius) =>
        {
            StringBuilder text = new(string.Create(CultureInfo.InvariantCulture, $"mass_g;{mass:F1}\nroom_celsius;{room:F1}\ncup_diameter_mm;{diameter:F0}\n"));
            for (int i = 0; i < celsius.Length; i++)
                text.Append(CultureInfo.InvariantCulture, $"{7 * i};{celsius[i]:F1}\n");
            CupTestReading reading = CupTestFile.Read(Encoding.UTF8.GetBytes(text.ToString()));
            Assert.Equal(celsius[0] < 100, reading.Test is not null);
            if (reading.Test is null)
                return;
            CupFitResult fit = CupFit.Solve(ResinLibrary.Get("laminating-slow"), reading.Test, TestContext.Current.CancellationToken);
            Assert.True(fit.Resin is null || double.IsFinite(fit.Resin.Kinetics.Rate1) && fit.Resin.Kinetics.Rate1 > 0);
        }, iter: 16);

    private static IReadOnlyList<Design.Finding> Refused(byte[] bytes)
    {
        ResinReading reading = Answered(bytes);
        Assert.Null(reading.Resin);
        return reading.Findings;
    }

    private static ResinReading Answered(byte[] bytes)
    {
        ResinReading reading = ResinFile.Read(bytes);
        Assert.Equal(reading.Resin is null, reading.Findings.Any(finding => finding.IsError));
        Assert.All(reading.Findings, finding => Assert.True(finding.Message.Length > 0 && finding.Remedy.Length > 0));
        return reading;
    }

    private static byte[] Written(string name)
    {
        using MemoryStream stream = new();
        ResinFile.Write(stream, ResinLibrary.Get(name));
        return stream.ToArray();
    }

    private static string Middle(ResinField field) =>
        ResinLibrary.Get("laminating-slow").Numbers.TryGetValue(field.Data.Key, out ResinNumber? number) ? Shown(number.Range.Value) : Shown((field.Data.Least + field.Data.Greatest) / 2);

    private static string Shown(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private static string Text(IEnumerable<string> numbers) =>
        "{ \"format\": 1, \"name\": \"wild\", \"title\": \"Wild\", \"remark\": \"For a test.\", " + string.Join(", ", ResinField.All.Zip(numbers, (f, n) => $"\"{f.Data.Key}\": {n}")) + " }";
}
