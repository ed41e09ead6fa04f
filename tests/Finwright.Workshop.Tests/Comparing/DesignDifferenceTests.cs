using Finwright.Design;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Tests.Comparing;

public sealed class DesignDifferenceTests
{
    private static readonly FinDesign Design = SampleFins.Design();

    [Fact]
    public void Of_a_design_and_its_own_text_read_again_is_nothing() =>
        Assert.Empty(DesignDifference.Of(Design, DesignReader.Read(DesignWriter.Write(Design)).Design!));

    [Fact]
    public void Of_changes_gives_them_in_the_order_of_the_file_with_path_unit_and_per_cent()
    {
        FinDesign other = Design with
        {
            Prove = Design.Prove with { MassKg = 18 },
            Shape = Design.Shape with { Outline = Design.Shape.Outline with { SpanMm = 1.1 * Design.Shape.Outline.SpanMm } },
            Base = Design.Base with { RootHold = RootHold.Clamped },
        };
        IReadOnlyList<DesignChange> changes = DesignDifference.Of(Design, other);
        Assert.Equal(["$.shape.outline.span_mm", "$.base.root_hold", "$.prove.mass_kg"], changes.Select(change => change.Path), StringComparer.Ordinal);
        Assert.Equal(["mm", "", "kg"], changes.Select(change => change.Unit), StringComparer.Ordinal);
        Assert.Equal(10, changes[0].Percent!.Value, 1e-9);
        Assert.Equal(20, changes[2].Percent!.Value, 1e-9);
        Assert.Equal(("15", "18"), (changes[2].Old, changes[2].New));
        Assert.Equal(("joint", "clamped"), (changes[1].Old, changes[1].New));
        Assert.Null(changes[1].Percent);
        Assert.All(changes, change => Assert.Equal(DesignChangeKind.Changed, change.Kind));
        Assert.All(changes, change => Assert.NotEmpty(change.Meaning));
    }

    [Fact]
    public void Of_lists_matches_items_by_place_and_tells_what_was_added_and_removed()
    {
        CarbonRod rod = new() { DiameterMm = 4, RootChordPercent = 30 };
        FinDesign one = With(rod), two = With(rod with { DiameterMm = 5 }, rod with { RootChordPercent = 50 });
        IReadOnlyList<DesignChange> there = DesignDifference.Of(one, two), back = DesignDifference.Of(two, one);
        Assert.Equal(["$.hardware.carbon_rods[0].diameter_mm", "$.hardware.carbon_rods[1]"], there.Select(change => change.Path), StringComparer.Ordinal);
        Assert.Equal([DesignChangeKind.Changed, DesignChangeKind.Added], there.Select(change => change.Kind));
        Assert.Contains("root_chord_percent 50", there[1].New, StringComparison.Ordinal);
        Assert.Equal("", there[1].Old);
        Assert.Equal([DesignChangeKind.Changed, DesignChangeKind.Removed], back.Select(change => change.Kind));
        Assert.Equal(there[1].New, back[1].Old);

        static FinDesign With(params CarbonRod[] rods) => Design with { Hardware = Design.Hardware with { CarbonRods = rods } };
    }

    [Fact]
    public void Of_a_value_given_where_none_was_is_an_addition()
    {
        FinDesign given = Design with { Materials = Design.Materials with { WallFactorDeviationPercent = 4, Printed = Design.Materials.Printed with { ModulusGpa = 1.8 } } };
        IReadOnlyList<DesignChange> changes = DesignDifference.Of(Design, given);
        Assert.Equal([("$.materials.printed.modulus_gpa", "1.8", "GPa"), ("$.materials.wall_factor_deviation_percent", "4", "%")], changes.Select(change => (change.Path, change.New, change.Unit)));
        Assert.All(changes, change => Assert.Equal(DesignChangeKind.Added, change.Kind));
        Assert.All(changes, change => Assert.Null(change.Percent));
    }

    [Fact]
    public void Of_a_long_text_shows_its_beginning_and_length()
    {
        DesignChange change = Assert.Single(DesignDifference.Of(Design with { Note = "" }, Design with { Note = new('n', 500) }));
        Assert.Equal("nothing", change.Old);
        Assert.InRange(change.New.Length, 60, 100);
        Assert.Contains("(500 characters)", change.New, StringComparison.Ordinal);
    }
}
