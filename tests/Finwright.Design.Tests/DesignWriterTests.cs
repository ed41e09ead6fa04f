using CsCheck;

namespace Finwright.Design.Tests;

public sealed class DesignWriterTests
{
    [Theory]
    [InlineData(Examples.Small, false)]
    [InlineData(Examples.Small, true)]
    [InlineData(Examples.Full, false)]
    [InlineData(Examples.Full, true)]
    public void Write_then_read_gives_the_same_design(string text, bool compact)
    {
        FinDesign design = DesignReader.Read(text).Design!;

        DesignReading again = DesignReader.Read(DesignWriter.Write(design, compact));

        Assert.Empty(again.Findings);
        Assert.Equal(DesignWriter.Write(design), DesignWriter.Write(again.Design!));
        Assert.Equal(DesignWriter.Canonical(design), DesignWriter.Canonical(again.Design!));
    }

    [Fact]
    public void Write_then_read_gives_the_same_design_for_whatever_can_be_read() =>
        JsonChange.Gen(Examples.Full).Hold(
            text =>
            {
                if (DesignReader.Read(text).Design is not FinDesign design)
                    return;
                string written = DesignWriter.Write(design);
                Assert.Equal(written, DesignWriter.Write(DesignReader.Read(written).Design!));
                Assert.Equal(written, DesignWriter.Write(DesignReader.Read(DesignWriter.Write(design, compact: true)).Design!));
            },
            iter: 1000);

    [Fact]
    public void Write_then_read_gives_the_same_number_to_the_last_bit() =>
        Gen.Double[-800, 1200].Hold(aft =>
        {
            FinDesign design = Small() with
            {
                Shape = new Shape
                {
                    Outline = new Outline { Family = OutlineFamily.Free, LeadingEdge = [new OutlinePoint { DepthMm = 0, AftMm = aft }] },
                },
            };

            FinDesign again = DesignReader.Read(DesignWriter.Write(design)).Design!;

            Assert.Equal(aft, again.Shape.Outline.LeadingEdge[0].AftMm);
        });

    [Fact]
    public void Write_compact_leaves_out_what_equals_its_default()
    {
        // Written out by hand: the format, and the fields that must be given or differ.
        const string expected = """
            {
              "format": 2,
              "name": "Saltmarsh 24",
              "shape": {
                "outline": {
                  "family": "steep-rake",
                  "span_mm": 240,
                  "root_chord_mm": 130
                }
              }
            }

            """;

        Assert.Equal(expected, DesignWriter.Write(Small(), compact: true));
    }

    [Fact]
    public void Write_puts_each_point_of_a_section_on_one_line_and_ends_lines_with_LF()
    {
        string written = DesignWriter.Write(DesignReader.Read(Examples.Full).Design!);

        Assert.Contains("\n          [0.7, -0.03],\n", written, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', written);
        Assert.EndsWith("}\n", written, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Für Ebbe & Flut <ein \"Versuch\"> \\ 葦 🌊")]
    [InlineData("tab\tline\nend")]
    public void Write_then_read_keeps_any_text(string note) =>
        Assert.Equal(note, DesignReader.Read(DesignWriter.Write(Small() with { Note = note })).Design!.Note);

    [Fact]
    public void Write_refuses_what_the_format_cannot_say()
    {
        Assert.Throws<ArgumentException>(() => DesignWriter.Write(Small() with { Prove = new Prove { MassKg = double.NaN } }));
        Assert.Throws<ArgumentException>(() => DesignWriter.Write(Small() with { Prove = null! }));
        Assert.Throws<ArgumentException>(() => DesignWriter.Write(Small() with { Base = new Base { Box = (BoxKind)99 } }));
    }

    [Fact]
    public void Canonical_tells_apart_designs_that_differ_in_one_number_only()
    {
        FinDesign design = Small();

        Assert.NotEqual(DesignWriter.Canonical(design), DesignWriter.Canonical(design with { Prove = new Prove { MassKg = Math.BitIncrement(15) } }));
        Assert.Equal(DesignWriter.Canonical(design), DesignWriter.Canonical(design with { Prove = new Prove { MassKg = 15 } }));
    }

    private static FinDesign Small() => DesignReader.Read(Examples.Small).Design!;
}
