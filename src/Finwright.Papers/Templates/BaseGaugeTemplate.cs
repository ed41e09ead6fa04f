using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>The base from the side and across, to cut from card and try in the box.</summary>
internal static class BaseGaugeTemplate
{
    private const double First = 9e-3, Across = 30e-3, Beyond = 5e-3;

    // So far from the corner the angle of an end face is told, as a share of the base's depth.
    private const double AngleShare = 0.55;

    public static Template Draw(TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        BasePlan plan = fin.Solids.Plan;
        Point2 front = new(plan.FrontX, 0), rear = new(plan.RearX, 0);
        sheet.Ring("base", TemplatePens.Edge, plan.Ring());
        sheet.Key(TemplatePens.Edge, words.CutLine);

        sheet.Dimensions.Across(front, rear, First);
        sheet.Dimensions.Across(plan.FrontTop, plan.RearTop, -plan.Depth - First);
        sheet.Dimensions.Down(plan.FrontTop, front, Math.Min(plan.FrontX, plan.FrontTop.X) - First);
        sheet.Dimensions.Down(plan.RearTop, rear, Math.Max(plan.RearX, plan.RearTop.X) + First);
        sheet.Dimensions.Angle(front, Math.PI / 2, Math.PI / 2 - plan.FrontAngle, AngleShare * plan.FrontDepth);
        sheet.Dimensions.Angle(rear, Math.PI / 2, Math.PI / 2 + plan.RearAngle, AngleShare * plan.RearDepth);
        if (plan.CornerRadius > 0 && Corner(plan) is { } corner)
            sheet.Dimensions.Leader(corner.At, corner.At + 6e-3 * corner.Out, "R " + tongue.BareLength(plan.CornerRadius));

        List<IReadOnlyList<string>> rows = [];
        foreach ((int index, BoltAxis bolt) in plan.Bolts.Index())
            rows.Add(Bolt(sheet, plan, bolt, Mark(index), tongue));
        if (plan.PlateScrew is { } screw)
            rows.Add(Bolt(sheet, plan, screw, Mark(rows.Count), tongue));
        if (plan.Pin is { } pin)
        {
            Point2 at = new(pin.Middle.X, pin.Middle.Y);
            sheet.Ring("bolts", TemplatePens.Thin, Rounds.Circle(at, pin.Diameter / 2));
            Marks.Cross(sheet.Drawing, "bolts", at, 0.8 * pin.Diameter);
            sheet.SayNear(Mark(rows.Count), at, pin.Diameter + 1e-3, bold: true);
            rows.Add([Mark(rows.Count), words.CrossPin(tongue.Length(pin.Diameter)), tongue.BareLength(at.X - plan.FrontX), tongue.BareLength(-at.Y), ""]);
        }

        if (rows.Count > 0)
            sheet.Key(TemplatePens.Middle, words.BoltAxis);
        sheet.Table(new(["", words.WhatHead, words.FromFrontCornerHead, words.AboveHullHead, words.LeanHead], [false, false, true, true, true], rows));
        Section(sheet, plan, words);
        sheet.Say(words.Front, new(plan.FrontX + 2e-3, -2e-3));
        return sheet.Finish("base-gauge", words.BaseTitle, words.BaseUse);
    }

    private static string Mark(int index) => ((char)('A' + index)).ToString();

    /// <summary>Draws the axis of a bolt with its mark at the top, and gives its row of the table.</summary>
    private static IReadOnlyList<string> Bolt(TemplateSheet sheet, BasePlan plan, BoltAxis bolt, string mark, Tongue tongue)
    {
        Point3 top = plan.OnTopEdge(bolt.AtHull, bolt.Up), end = top + Beyond * bolt.Up, foot = bolt.AtHull - Beyond * bolt.Up;
        Point2 upper = new(end.X, end.Y);
        sheet.Stroke("bolts", TemplatePens.Middle, new Point2(foot.X, foot.Y), upper);
        Marks.Cross(sheet.Drawing, "bolts", new(bolt.AtHull.X, 0), 2e-3);
        sheet.SayNear(mark, upper, 2e-3, bold: true);
        return [mark, tongue.Words.Templates.Bolt(bolt.Thread.ToString()), tongue.BareLength(bolt.AtHull.X - plan.FrontX), tongue.BareLength(0), tongue.Angle(Math.Atan2(bolt.Up.X, -bolt.Up.Y))];
    }

    /// <summary>The base cut across, deep end up, beside the side view.</summary>
    private static void Section(TemplateSheet sheet, BasePlan plan, TemplateWords words)
    {
        double middle = Math.Max(plan.RearX, plan.RearTop.X) + Across + Math.Max(plan.HullWidth, plan.DeepWidth) / 2;
        double hull = plan.HullWidth / 2, deep = plan.DeepWidth / 2, depth = plan.Depth;
        Point2 a = new(middle - hull, 0), b = new(middle - deep, -depth), c = new(middle + deep, -depth), d = new(middle + hull, 0);
        sheet.Ring("across", TemplatePens.Edge, [a, b, c, d]);
        sheet.Dimensions.Across(a, d, First);
        sheet.Dimensions.Across(b, c, -depth - First);
        sheet.Say(words.CutAcross, new(middle, -depth / 2), TextAnchor.Middle);
    }

    /// <summary>The middle of the rounding of the front corner, and the way out of it; null when it cannot be found.</summary>
    private static (Point2 At, Point2 Out)? Corner(BasePlan plan)
    {
        Point2 sharp = plan.FrontTop, back = new Point2(plan.FrontX, 0) - sharp, ahead = plan.RearTop - sharp;
        Point2 inward = 1 / back.Length * back + 1 / ahead.Length * ahead;
        if (inward.Length < 1e-6)
            return null;
        Point2 unit = 1 / inward.Length * inward;
        double half = Math.Acos(Math.Clamp(unit.Dot(1 / back.Length * back), -1, 1));
        return (sharp + plan.CornerRadius * (1 / Math.Sin(half) - 1) * unit, -1 * unit);
    }
}
