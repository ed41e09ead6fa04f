using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using Finwright.Making.Motion;

namespace Finwright.Bench;

/// <summary>Reading a motion file of 100 MB: layers of walls and a wavy infill, as printers are given them.</summary>
[MemoryDiagnoser]
public class MotionBench
{
    private byte[] _file = [];

    [GlobalSetup]
    public void Prepare()
    {
        int size = DryRun.IsOn ? 2_000_000 : 100_000_000;
        StringBuilder text = new("G21\nG90\nM83\n", size + 1_000_000);
        for (int layer = 1; text.Length < size; layer++)
        {
            double z = 0.2 * (layer % 1000 + 1);
            text.Append(CultureInfo.InvariantCulture, $";LAYER {layer}\nG1 Z{z:0.###} F600\nG1 E-0.8 F1800\nG0 X50 Y50 F9000\nG1 E0.8 F1800\nG1 F1800\n");
            for (int line = 0; line < 20; line++)
            {
                for (int i = 0; i < 100; i++)
                    text.Append(CultureInfo.InvariantCulture, $"G1 X{50 + i * 1.3:0.###} Y{50 + 5 * line + 2 * Math.Sin(i * 0.3):0.###} E{0.05117:0.#####}\n");
            }
        }

        _file = Encoding.ASCII.GetBytes(text.ToString());
    }

    [Benchmark(Description = "read 100 MB")]
    public MotionReading Read()
    {
        using MemoryStream stream = new(_file);
        return MotionFile.Read(stream);
    }
}
