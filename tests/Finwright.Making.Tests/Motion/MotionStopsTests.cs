using System.Text;
using CsCheck;
using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

public sealed class MotionStopsTests
{
    private static string Tower(int layers, string end = "\n") =>
        ("G21\nG90\nM83\n" + string.Concat(Enumerable.Range(1, layers).Select(i => $";layer {i}\n" + MotionText.Square(0.2 * i))) + "M104 S0\n").Replace("\n", end, StringComparison.Ordinal);

    [Fact]
    public void Stop_before_a_layer_is_found_and_one_elsewhere_is_told()
    {
        string text = Tower(3) + "G1 E-1\nM601\nG1 E1\n" + MotionText.Square(0.8) + MotionText.Square(1.0).Replace("G1 Y90", "M0\nG1 Y90", StringComparison.Ordinal) + MotionText.Square(1.2);
        MotionSummary s = MotionText.Summary(text);
        Assert.Equal("M601 M0", string.Join(" ", s.Stops.Select(x => x.Word)));
        Assert.Equal(0.0006, s.Stops[0].After, 1e-12);
        Assert.Equal(0.0008, s.Stops[0].Before!.Value, 1e-12);
        // The layer from 0.6 to 0.8 mm begins at 0.6; the one from 0.8 to 1.0 at 0.8, but its stop comes in the middle of it.
        IReadOnlyList<StopCheck> checks = MotionStops.Compare(s, [new(0.0006, "nut"), new(0.0008, "rod"), new(0.0002, "early"), new(0.00005, "bed"), new(0.0019, "over")]);
        Assert.Equal([StopState.Present, StopState.WrongLayer, StopState.Missing, StopState.NotPossible, StopState.NotPossible], checks.Select(c => c.State));
        Assert.Equal("M0", checks[1].Found!.Word);
        Assert.Equal(0.0010, checks[1].LayerHeight!.Value, 1e-12);
    }

    [Theory]
    [InlineData(0.59, 0.8)] // the layer from 0.6: its middle, 0.7, is the first above
    [InlineData(0.60, 0.8)]
    [InlineData(0.69, 0.8)]
    [InlineData(0.71, 1.0)]
    public void Height_between_layers_belongs_to_the_first_layer_whose_middle_lies_above(double millimetres, double layer)
    {
        StopCheck check = Assert.Single(MotionStops.Compare(MotionText.Summary(Tower(6)), [new(millimetres * 1e-3, "nut")]));
        Assert.Equal(layer * 1e-3, check.LayerHeight!.Value, 1e-12);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Stop_is_put_before_the_move_that_leaves_the_layer_and_nothing_else_changes(string end)
    {
        string text = Tower(6, end);
        (string copy, StopInsertion insertion) = Insert(text, [new(0.0006, "nut"), new(0.00061, "second nut"), new(0.0010, "rod")], "M600");
        Assert.True(insertion.Proof!.Holds);
        Assert.Equal(text.Length, insertion.Proof.BytesCompared);
        Assert.Equal(3, insertion.Inserted.Count);
        string before = $";layer 4{end}", after = $"G1 Z0.8 F600{end}";
        Assert.Contains(before + "M600" + end + after, copy, StringComparison.Ordinal);
        Assert.Equal(text, copy.Replace("M600" + end, "", StringComparison.Ordinal));
        Assert.Equal("M600", copy.Split(end)[(int)insertion.Inserted[0].Line - 1]);
        Assert.Equal("M600", copy.Split(end)[(int)insertion.Inserted[2].Line - 1]);
        // A second time there is nothing to do.
        (string again, StopInsertion second) = Insert(copy, [new(0.0006, "nut")], "M600");
        Assert.Empty(again);
        Assert.Null(second.Proof);
        Assert.Equal("stop-present", Assert.Single(second.Findings).Code);
    }

    [Fact]
    public void Hop_that_carries_the_first_path_of_a_layer_keeps_the_stop_before_it()
    {
        string text = "G21\nM83\n" + MotionText.Square(0.2) + "G1 E-1 F1800\nG1 X60 E-0.2\nG1 Z0.9\nG0 X50 Y50\nG1 Z0.4\nG1 E1.2\n" + MotionText.Square(0.4)[(MotionText.Square(0.4).IndexOf('\n', StringComparison.Ordinal) + 1)..] + MotionText.Square(0.6);
        (string copy, StopInsertion insertion) = Insert(text, [new(0.0002, "nut")], "PAUSE");
        Assert.True(insertion.Proof!.Holds);
        Assert.Contains("G1 X60 E-0.2\nPAUSE\nG1 Z0.9\n", copy, StringComparison.Ordinal);
        // A file without a move of its own between layers: before the rising path itself.
        (string direct, StopInsertion _) = Insert("G21\nM83\nG1 Z0.2 F600\nG1 X10 E1\nG1 X0 Z0.2 E1\nG92 E0\nG1 X10 Y1 Z0.4 E1\nG1 X20 E1\nG1 X30 E1\n", [new(0.0002, "nut")], "M0");
        Assert.Contains("G92 E0\nM0\nG1 X10 Y1 Z0.4", direct, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("M0", "N1 G21\nN2 G1 Z0.2 F1\nG1 X9 E1\nG1 Z.4\nG1 X0 E1\n", "numbered-lines")]
    [InlineData("G1 X0", "", "bad-stop-line")]
    [InlineData("M83", "", "bad-stop-line")]
    [InlineData("X10", "", "bad-stop-line")]
    [InlineData("T1", "", "bad-stop-line")]
    [InlineData("M0*3", "", "bad-stop-line")]
    [InlineData("M0\nG28", "", "bad-stop-line")]
    [InlineData("; nothing", "", "bad-stop-line")]
    [InlineData("", "", "bad-stop-line")]
    [InlineData("M0", "\0", "not-text")]
    public void What_would_spoil_the_file_is_refused(string line, string text, string code)
    {
        (string copy, StopInsertion insertion) = Insert(text.Length > 0 ? text : Tower(4), [new(0.0002, "nut")], line);
        Assert.Empty(copy);
        Assert.Null(insertion.Proof);
        Assert.Equal(code, Assert.Single(insertion.Findings).Code);
    }

    [Fact]
    public void Parts_one_after_another_and_heights_outside_are_refused()
    {
        string two = Tower(10) + string.Concat(Enumerable.Range(1, 10).Select(i => MotionText.Square(0.2 * i, 40, 150)));
        Assert.Equal(10, MotionText.Summary(two).Layers.Count);
        Assert.Equal("not-layer-by-layer", Insert(two, [new(0.0002, "nut")], "M0").Insertion.Findings[0].Code);
        Assert.Equal("stop-not-possible", Insert(Tower(4), [new(0.5, "nut"), new(0.0002, "rod")], "M0").Insertion.Findings[0].Code);
    }

    [Fact]
    public void Files_are_copied_whole_or_not_at_all()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            string source = Path.Combine(folder, "a"), target = Path.Combine(folder, "b");
            File.WriteAllText(source, Tower(5));
            Assert.Equal("same-file", MotionStops.Insert(source, source, [new(0.0002, "nut")], cancellation: TestContext.Current.CancellationToken).Findings[0].Code);
            Assert.Equal("stop-not-possible", MotionStops.Insert(source, target, [new(1, "nut")], cancellation: TestContext.Current.CancellationToken).Findings[0].Code);
            Assert.False(File.Exists(target));
            Assert.True(MotionStops.Insert(source, target, [new(0.0002, "nut")], cancellation: TestContext.Current.CancellationToken).Proof!.Holds);
            Assert.Equal(Tower(5).Length + 3, new FileInfo(target).Length);
            Assert.Equal(2, Directory.GetFiles(folder).Length);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Fact]
    public void Random_files_take_random_stops_and_stay_what_they_were() =>
        Gen.Select(Gen.Int[2, 12], Gen.Int[0, 3].Array[30], Gen.Double[0.1, 2.4].Array[1, 4], Gen.Bool).Hold((layers, extras, heights, windows) =>
        {
            string[] between = ["G1 E-1\n", "G1 Z9 F900\n", "; words\n", "G92 E0\n"];
            StringBuilder text = new("G21\nM83\n");
            for (int i = 1; i <= layers; i++)
            {
                for (int j = 0; j < 3; j++)
                    text.Append(between[extras[(3 * i + j) % 30]]);
                text.Append(MotionText.Square(0.2 * i));
            }

            string file = windows ? text.Replace("\n", "\r\n").ToString() : text.ToString();
            NeededStop[] needed = [.. heights.Select((h, i) => new NeededStop(h * 1e-3, $"item {i}"))];
            (string copy, StopInsertion insertion) = Insert(file, needed, "M25");
            bool possible = heights.All(h => h >= 0.1 && h < 0.2 * layers - 0.1);
            Assert.Equal(possible, insertion.Proof is not null);
            if (!possible)
                return;
            Assert.True(insertion.Proof!.Holds);
            Assert.Equal(file, copy.Replace(windows ? "M25\r\n" : "M25\n", "", StringComparison.Ordinal));
            Assert.All(MotionStops.Compare(MotionText.Summary(copy), needed), c => Assert.Equal(StopState.Present, c.State));
        }, iter: 200);

    private static (string Copy, StopInsertion Insertion) Insert(string text, IReadOnlyList<NeededStop> needed, string line)
    {
        using MemoryStream input = new(Encoding.ASCII.GetBytes(text)), output = new();
        StopInsertion insertion = MotionStops.Insert(input, output, needed, line);
        return (Encoding.ASCII.GetString(output.ToArray()), insertion);
    }
}
