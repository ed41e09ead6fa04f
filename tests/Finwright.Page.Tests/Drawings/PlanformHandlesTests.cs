using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Page.Drawings;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Page.Tests.Drawings;

public sealed class PlanformHandlesTests
{
    private static readonly FinDesign Delta = new() { Name = "Delta", Shape = new() { Outline = new() { Family = OutlineFamily.WideDelta, SpanMm = 212, AreaCm2 = 286, RakeDegrees = 36, TipChordPercent = 22 } } };

    public static TheoryData<HandleKind> Numbers => [HandleKind.Rake, HandleKind.TipChord, HandleKind.RootChord];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_handle_of_a_family_comes_to_where_the_hand_puts_it(HandleKind kind)
    {
        foreach (FinDesign design in (FinDesign[])[Delta, With(Delta, Delta.Shape.Outline with { AreaCm2 = null, RootChordMm = 200 })])
        {
            PlanformHandle handle = Handle(design, kind);
            FinDesign moved = PlanformHandles.Move(design, handle, new(handle.At.X + 7, handle.At.Y), decimals: 4);
            Assert.Equal(handle.At.X + 7, Handle(moved, kind).At.X, 2);
            Assert.NotEqual(DesignWriter.Write(design), DesignWriter.Write(moved));
        }
    }

    [Fact]
    public void Dragging_the_tip_aft_gives_the_rake_of_the_line_from_the_root_to_it()
    {
        PlanformHandle tip = Handle(Delta, HandleKind.Rake);
        FinDesign moved = PlanformHandles.Move(Delta, tip, new(180, 0), decimals: 6);
        // The tip lies at span · tan(rake) aft of the root's quarter chord.
        Assert.Equal(double.RadiansToDegrees(Math.Atan2(180, 212)), moved.Shape.Outline.RakeDegrees!.Value, 3);
        Assert.Equal(Delta.Shape.Outline.SpanMm, moved.Shape.Outline.SpanMm);
    }

    [Fact]
    public void A_handle_stops_at_the_end_of_its_range()
    {
        Assert.Equal(70, PlanformHandles.Move(Delta, Handle(Delta, HandleKind.Rake), new(5000, 0)).Shape.Outline.RakeDegrees);
        Assert.Equal(800, PlanformHandles.Move(Delta, Handle(Delta, HandleKind.Span), new(0, 5000)).Shape.Outline.SpanMm);
        Assert.Equal(40, PlanformHandles.Move(Delta, Handle(Delta, HandleKind.Span), new(0, -5000)).Shape.Outline.SpanMm);
    }

    [Fact]
    public void Free_points_begin_where_the_family_had_them()
    {
        FinDesign free = FamilyChange.ToFree(Delta).Design!;
        Planform before = PlanformOf(Delta), after = PlanformOf(free);
        // Points are kept to a ten-thousandth of a millimetre.
        Assert.Equal(before.Area, after.Area, 1e-7);
        Assert.Equal(before.Rake, after.Rake, 1e-5);
    }

    [Fact]
    public void A_free_point_moves_and_no_other()
    {
        FinDesign free = FamilyChange.ToFree(Delta).Design!;
        PlanformHandle third = PlanformHandles.Of(free).Single(handle => handle is { Kind: HandleKind.LeadingPoint, Index: 2 });
        FinDesign moved = PlanformHandles.Move(free, third, new(third.At.X - 6, third.At.Y + 3), decimals: 4);
        DesignOutline old = free.Shape.Outline, now = moved.Shape.Outline;
        Assert.Equal(old.TrailingEdge, now.TrailingEdge);
        Assert.Equal([2], Enumerable.Range(0, old.LeadingEdge.Count).Where(i => old.LeadingEdge[i] != now.LeadingEdge[i]));
        Assert.Equal(old.LeadingEdge[2].AftMm - 6, now.LeadingEdge[2].AftMm, 4);
        Assert.Equal(old.LeadingEdge[2].DepthMm + 3, now.LeadingEdge[2].DepthMm, 4);
        Assert.Equal(["$.shape.outline.leading_edge[2].aft_mm", "$.shape.outline.leading_edge[2].depth_mm"], Changes(free, moved).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Root_points_stay_at_the_hull_and_points_keep_their_order()
    {
        FinDesign free = FamilyChange.ToFree(Delta).Design!;
        PlanformHandle root = PlanformHandles.Of(free).Single(handle => handle is { Kind: HandleKind.TrailingPoint, Index: 0 });
        Assert.Equal(0, PlanformHandles.Move(free, root, new(150, 40)).Shape.Outline.TrailingEdge[0].DepthMm);
        PlanformHandle second = PlanformHandles.Of(free).Single(handle => handle is { Kind: HandleKind.TrailingPoint, Index: 1 });
        OutlinePoint deep = PlanformHandles.Move(free, second, new(150, 4000)).Shape.Outline.TrailingEdge[1];
        Assert.Equal(free.Shape.Outline.TrailingEdge[2].DepthMm, deep.DepthMm);
    }

    [Fact]
    public void The_tip_of_both_edges_moves_as_one_and_the_fin_can_still_be_drawn()
    {
        FinDesign free = FamilyChange.ToFree(Delta).Design!;
        PlanformHandle tip = PlanformHandles.Of(free).Single(handle => handle.Kind is HandleKind.MeetingPoint);
        foreach (double depth in (double[])[240, 205])
        {
            FinDesign moved = PlanformHandles.Move(free, tip, new(tip.At.X, depth));
            Assert.Equal(moved.Shape.Outline.LeadingEdge[^1], moved.Shape.Outline.TrailingEdge[^1]);
            Assert.Equal(depth * 1e-3, PlanformOf(moved).Span, 9);
        }
    }

    [Fact]
    public void Points_come_between_two_others_and_go_again()
    {
        FinDesign free = FamilyChange.ToFree(Delta).Design!;
        int count = free.Shape.Outline.LeadingEdge.Count;
        FinDesign more = PlanformHandles.AddPoint(free, OutlineEdge.Leading, 1);
        Assert.Equal(count + 1, more.Shape.Outline.LeadingEdge.Count);
        Assert.InRange(more.Shape.Outline.LeadingEdge[2].DepthMm, free.Shape.Outline.LeadingEdge[1].DepthMm, free.Shape.Outline.LeadingEdge[2].DepthMm);
        Assert.Equal(DesignWriter.Write(free), DesignWriter.Write(PlanformHandles.TakePoint(more, OutlineEdge.Leading, 2)));
        Assert.False(PlanformHandles.MayTakePoint(free, OutlineEdge.Leading, 0));
        Assert.False(PlanformHandles.MayTakePoint(free, OutlineEdge.Leading, count - 1));
    }

    [Fact]
    public void A_section_moves_along_the_span_but_not_past_its_neighbours()
    {
        FinDesign design = Delta with { Shape = Delta.Shape with { Sections = [new() { AtPercent = 0 }, new() { AtPercent = 45 }, new() { AtPercent = 100 }] } };
        PlanformHandle middle = PlanformHandles.Of(design).Single(handle => handle is { Kind: HandleKind.Section, Index: 1 });
        Assert.Equal(0.45 * 212, middle.At.Y, 9);
        Assert.Equal(60, PlanformHandles.Move(design, middle, new(0, 0.6 * 212)).Shape.Sections[1].AtPercent);
        FinDesign far = PlanformHandles.Move(design, middle, new(0, 400));
        Assert.InRange(far.Shape.Sections[1].AtPercent, 90, 99.9);
        Assert.DoesNotContain(DesignValidation.Check(far), finding => finding.IsError);
    }

    [Fact]
    public void Another_family_keeps_depth_and_area()
    {
        foreach (FinDesign design in (FinDesign[])[Delta, FamilyChange.Sized(Delta, area: false).Design!, FamilyChange.ToFree(Delta).Design!])
        {
            Planform before = PlanformOf(design), after = PlanformOf(FamilyChange.To(design, OutlineFamily.Raked).Design!);
            Assert.Equal(before.Span, after.Span, 1e-5);
            // Numbers of a family are kept to a hundredth.
            Assert.Equal(before.Area, after.Area, 5e-6);
        }
    }

    private static FinDesign With(FinDesign design, DesignOutline outline) => design with { Shape = design.Shape with { Outline = outline } };

    private static PlanformHandle Handle(FinDesign design, HandleKind kind) => PlanformHandles.Of(design).Single(handle => handle.Kind == kind);

    private static Planform PlanformOf(FinDesign design) => Planform.Of(OutlineFromDesign.Create(design.Shape.Outline, [])!);

    private static IEnumerable<string> Changes(FinDesign first, FinDesign second) => Workshop.Comparing.DesignDifference.Of(first, second).Select(change => change.Path);
}
