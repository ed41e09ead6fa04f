using System.Diagnostics;
using System.Globalization;
using System.Text;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Pages;

/// <summary>What a printer would put down, drawn by poppler (Debian package poppler-utils).</summary>
public sealed class RulerOnPaperTests
{
    private const int DotsPerInch = 600;

    [Fact]
    public void A_line_of_100_mm_measures_100_mm_in_dots()
    {
        byte[] file = Press.Drawn(new DrawnStroke("ruler", new(Palette.Line, 1e-3), [new(0.01, 0.01), new(0.11, 0.01)], Closed: false));
        string folder = Directory.CreateTempSubdirectory("ruler").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "ruler.pdf"), file);
            ProcessStartInfo start = new("pdftoppm", ["-r", DotsPerInch.ToString(CultureInfo.InvariantCulture), "-gray", "-singlefile", "ruler.pdf", "ruler"]) { WorkingDirectory = folder };
            using Process process = Process.Start(start)!;
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            (int dots, int width) = DarkDots(File.ReadAllBytes(Path.Combine(folder, "ruler.pgm")), row: (int)(40 / 25.4 * DotsPerInch));
            Assert.Equal(210, width * 25.4 / DotsPerInch, 0.05);
            Assert.Equal(100, dots * 25.4 / DotsPerInch, 0.1);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Portable grey map: "P5 width height 255", one byte a dot.
    private static (int Dots, int Width) DarkDots(byte[] map, int row)
    {
        string[] head = Encoding.ASCII.GetString(map, 0, 40).Split(['\n', ' '], 5);
        Assert.Equal("P5", head[0]);
        int width = int.Parse(head[1], CultureInfo.InvariantCulture), height = int.Parse(head[2], CultureInfo.InvariantCulture);
        ReadOnlySpan<byte> line = map.AsSpan(map.Length - width * height + row * width, width);
        int dots = 0;
        foreach (byte dot in line)
            dots += dot < 128 ? 1 : 0;
        return (dots, width);
    }
}
