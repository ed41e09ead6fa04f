using System.Diagnostics;
using System.Globalization;
using System.Text;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Templates;
using Finwright.Papers.Templates.Tiling;

namespace Finwright.Papers.Tests.Tiling;

/// <summary>What a printer would put down, drawn by poppler (Debian package poppler-utils).</summary>
public sealed class SheetOnPaperTests
{
    private const int DotsPerInch = 600;
    private const double Dot = 25.4 / DotsPerInch;

    [Fact]
    public void Ruler_and_template_measure_true_in_dots()
    {
        Drawing block = new();
        block.Add(new DrawnArea("block", TileSheets.Ink, [[new(0, 0), new(0.1323, 0), new(0.1323, 0.09), new(0, 0.09)]]));
        byte[] file = TileSheets.Write(TileSheets.Settings, new Template("block", "Block", "To measure.", block));
        PaperPage page = new PaperDocument(TileSheets.Settings, new("", "", "", (_, _) => "")).AddPage();
        int last = TileSheets.Read(file, found => found.Number)[^1];
        (byte[] dots, int width) = Print(file, last);

        double inBlock = 1e3 * TilePage.Window(page).Y + 45;
        (double From, double To)[] blocks = [.. Runs(dots, width, inBlock).Where(run => run.To - run.From > 50)];
        Assert.Equal(132.3, Assert.Single(blocks).To - blocks[0].From, 0.1);

        // Through the ticks of the ruler across, where only they are: a steel rule is held against their middles.
        double inTicks = 1e3 * (page.RoomTo.Y - RulerPair.Depth + 2e-3) + 0.7;
        double[] ticks = [.. Runs(dots, width, inTicks).Select(run => (run.From + run.To) / 2)];
        Assert.Equal(101, ticks.Length);
        Assert.Equal(100, ticks[^1] - ticks[0], 0.1);
        Assert.Equal(30, ticks[30] - ticks[0], 0.1);
    }

    // Dark stretches of a line across the page, millimetres.
    private static List<(double From, double To)> Runs(byte[] dots, int width, double y)
    {
        List<(double, double)> runs = [];
        int row = (int)(y / Dot) * width, start = -1;
        for (int x = 0; x <= width; x++)
        {
            bool dark = x < width && dots[row + x] < 160;
            if (dark && start < 0)
                start = x;
            if (!dark && start >= 0)
            {
                runs.Add((start * Dot, x * Dot));
                start = -1;
            }
        }

        return runs;
    }

    private static (byte[] Dots, int Width) Print(byte[] file, int page)
    {
        string folder = Directory.CreateTempSubdirectory("sheet").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "sheet.pdf"), file);
            string number = page.ToString(CultureInfo.InvariantCulture);
            ProcessStartInfo start = new("pdftoppm", ["-r", DotsPerInch.ToString(CultureInfo.InvariantCulture), "-gray", "-f", number, "-l", number, "-singlefile", "sheet.pdf", "sheet"]) { WorkingDirectory = folder };
            using Process process = Process.Start(start)!;
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            // Portable grey map: "P5 width height 255", one byte a dot.
            byte[] map = File.ReadAllBytes(Path.Combine(folder, "sheet.pgm"));
            string[] head = Encoding.ASCII.GetString(map, 0, 40).Split(['\n', ' '], 5);
            int width = int.Parse(head[1], CultureInfo.InvariantCulture), height = int.Parse(head[2], CultureInfo.InvariantCulture);
            return (map[^(width * height)..], width);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
