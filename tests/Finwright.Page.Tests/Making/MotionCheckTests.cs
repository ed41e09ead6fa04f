using System.Globalization;
using System.Text;
using Finwright.Assessment.Made;
using Finwright.Making.Motion;
using Finwright.Page.Making;

namespace Finwright.Page.Tests.Making;

public sealed class MotionCheckTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-motion-").FullName;

    private static FinPrinted Printed => SmallFin.Made.Printed!;

    // The plate on which something is laid in.
    private static PlatePrinted Plate => Printed.Plates.First(plate => plate.Stops.Count > 0);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_file_like_the_plan_fits_and_gets_the_stops_it_lacks()
    {
        string file = Write(Plate, 1), copy = Path.Combine(_folder, "copy");
        MotionCheck check = Check(file);
        Assert.True(check.Fits, string.Join(' ', check.Findings.Select(finding => finding.Message)));
        Assert.Equal(Plate.Number, check.Plate!.Plate.Number);
        Assert.Equal(Plate.Stops.Count, check.Lacking.Count);
        StopInsertion insertion = check.Insert(file, copy, MotionCheck.UsualStop, TestContext.Current.CancellationToken);
        Assert.True(insertion.Proof!.Holds);
        Assert.Empty(Check(copy).Lacking);
        Assert.Equal(Plate.Stops.Count, File.ReadAllLines(copy).Count(line => line == MotionCheck.UsualStop));
    }

    [Fact]
    public void Half_the_plastic_is_said()
    {
        MotionCheck check = Check(Write(Plate, 0.5));
        Assert.False(check.Fits);
        Assert.Contains(check.Findings, finding => finding.Code.Contains("plastic", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_no_motion_file_is_said()
    {
        string file = Path.Combine(_folder, "picture");
        File.WriteAllBytes(file, [0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0, 0, 0]);
        MotionCheck check = Check(file);
        Assert.Null(check.Plate);
        Assert.Contains(check.Findings, finding => finding.IsError);
    }

    private static MotionCheck Check(string file) => MotionCheck.Of(file, SmallFin.Design, Printed, Plate.Number, MotionCheck.UsualStop, TestContext.Current.CancellationToken);

    /// <summary>A box as large as the plate's parts, layer by layer, with a share of the plastic that is planned.</summary>
    private string Write(PlatePrinted plate, double share)
    {
        Finwright.Making.Layers.PrintSettings settings = plate.Parts[0].Layers.Settings;
        int layers = plate.Parts.Max(part => part.Layers.Layers.Count);
        double width = 1e3 * (plate.Size.X - settings.LineWidth), depth = 1e3 * (plate.Size.Y - settings.LineWidth), filament = Math.PI / 4 * 1.75 * 1.75;
        double each = share * 1e9 * plate.Time.Volume / layers / filament / 4;
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int layer = 1; layer <= layers; layer++)
        {
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{1e3 * layer * settings.LayerHeight:0.###} F600\nG0 X20 Y20 F6000\n");
            text.Append(CultureInfo.InvariantCulture, $"G1 X{20 + width:0.###} E{each:0.#####} F1800\nG1 Y{20 + depth:0.###} E{each:0.#####}\nG1 X20 E{each:0.#####}\nG1 Y20 E{each:0.#####}\n");
        }

        string file = Path.Combine(_folder, $"plate-{share}.gcode");
        File.WriteAllText(file, text.ToString());
        return file;
    }
}
