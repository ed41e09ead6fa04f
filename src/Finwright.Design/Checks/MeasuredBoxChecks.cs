using Finwright.Design.Fields;

namespace Finwright.Design.Checks;

/// <summary>Whether a box's measurements can be those of a box that a base can be pushed into.</summary>
internal static class MeasuredBoxChecks
{
    private const string Path = "$.base.measured";

    /// <summary>Deep length against end angles, mm: what a rule and a protractor can disagree by on a usual box.</summary>
    private const double MeasuringErrorMm = 0.5;

    /// <summary>Least length left at the deep end, mm, and least distance between two bolts: an M6 nut and a wall on each side.</summary>
    private const double NutRoomMm = 14;

    private const double RadiansPerDegree = Math.PI / 180;

    public static IEnumerable<Finding> Of(MeasuredBox box) => [.. OfEnds(box), .. OfWidthAndCorners(box), .. OfBolts(box)];

    private static IEnumerable<Finding> OfEnds(MeasuredBox box)
    {
        if (EndTangents(box) is not (double front, double rear))
        {
            yield return new("box-ends-missing", Severity.Error, $"{Path}.deep_length_mm", "Nothing says how both ends of the box lean.", "Give the deep length, or both end angles.");
            yield break;
        }

        double deep = box.HullLengthMm - box.FrontDepthMm * front - RearDepthMm(box) * rear;
        Field angle = RecordForm.Of(typeof(MeasuredBox)).Find("front_angle_degrees")!;
        (double frontDegrees, double rearDegrees) = (Math.Atan(front) / RadiansPerDegree, Math.Atan(rear) / RadiansPerDegree);
        string decisive = box.DeepLengthMm is null ? $"{Path}.front_angle_degrees" : $"{Path}.deep_length_mm";
        if (box.DeepLengthMm is double measured && Math.Abs(measured - deep) > MeasuringErrorMm)
        {
            yield return new("box-inconsistent", Severity.Error, decisive, $"The end angles and depths leave {Quantity.Text(Math.Round(deep, 1), "mm")} at the deep end, but {Quantity.Text(measured, "mm")} is given.", "Measure again, or give only the deep length or only the angles.")
            {
                Value = Quantity.Text(measured, "mm"),
                Limit = $"{Quantity.Text(Math.Round(deep, 1), "mm")} within {Quantity.Text(MeasuringErrorMm, "mm")}",
            };
        }
        else if (deep > box.HullLengthMm)
        {
            yield return new("box-undercut", Severity.Error, decisive, $"The box is {Quantity.Text(Math.Round(deep, 1), "mm")} long inside and {Quantity.Text(box.HullLengthMm, "mm")} at the hull, so no base could be pushed in.", "Measure again; an end angle is positive when the face leans toward the middle of the box.")
            {
                Value = Quantity.Text(Math.Round(deep, 1), "mm"),
                Limit = Quantity.Text(box.HullLengthMm, "mm"),
            };
        }
        else if (box.DeepLengthMm is not null && (Math.Min(frontDegrees, rearDegrees) < angle.Minimum || Math.Max(frontDegrees, rearDegrees) > angle.Maximum))
        {
            yield return new("box-inconsistent", Severity.Error, decisive, $"From the lengths and depths the ends lean {Quantity.Text(Math.Round(frontDegrees, 1), "°")} in front and {Quantity.Text(Math.Round(rearDegrees, 1), "°")} behind; {Quantity.Text(angle.Minimum!.Value)} to {Quantity.Text(angle.Maximum!.Value, "°")} are accepted.", "Measure lengths and depths again.")
            {
                Value = $"{Quantity.Text(Math.Round(frontDegrees, 1), "°")}, {Quantity.Text(Math.Round(rearDegrees, 1), "°")}",
                Limit = $"{Quantity.Text(angle.Minimum.Value)} to {Quantity.Text(angle.Maximum.Value, "°")}",
            };
        }
        else if (deep < NutRoomMm)
        {
            yield return new("box-ends-meet", Severity.Error, decisive, $"The end faces leave {Quantity.Text(Math.Round(deep, 1), "mm")} at the deep end; at least {Quantity.Text(NutRoomMm, "mm")} is needed.", "Measure again, the angles from square to the hull and not from the hull.")
            {
                Value = Quantity.Text(Math.Round(deep, 1), "mm"),
                Limit = Quantity.Text(NutRoomMm, "mm"),
            };
        }
    }

    // Hull length - deep length = front depth tan(front) + rear depth tan(rear): what is not given follows from the rest,
    // and without any angle both ends lean alike.
    private static (double Front, double Rear)? EndTangents(MeasuredBox box)
    {
        double? front = Tangent(box.FrontAngleDegrees), rear = Tangent(box.RearAngleDegrees);
        double frontDepth = box.FrontDepthMm, rearDepth = RearDepthMm(box);
        return (front, rear, box.HullLengthMm - box.DeepLengthMm) switch
        {
            ({ } f, { } r, _) => (f, r),
            ({ } f, null, { } shorter) => (f, (shorter - frontDepth * f) / rearDepth),
            (null, { } r, { } shorter) => ((shorter - rearDepth * r) / frontDepth, r),
            (null, null, { } shorter) => (shorter / (frontDepth + rearDepth), shorter / (frontDepth + rearDepth)),
            _ => null,
        };
    }

    private static double? Tangent(double? degrees) => degrees is double d ? Math.Tan(d * RadiansPerDegree) : null;

    private static double RearDepthMm(MeasuredBox box) => box.RearDepthMm ?? box.FrontDepthMm;

    private static IEnumerable<Finding> OfWidthAndCorners(MeasuredBox box)
    {
        if (box.DeepWidthMm > box.HullWidthMm)
        {
            yield return new("box-undercut", Severity.Error, $"{Path}.deep_width_mm", $"The box is {Quantity.Text(box.DeepWidthMm.Value, "mm")} wide inside and {Quantity.Text(box.HullWidthMm, "mm")} at the hull, so no base could be pushed in.", "Measure both widths again.")
            {
                Value = Quantity.Text(box.DeepWidthMm.Value, "mm"),
                Limit = Quantity.Text(box.HullWidthMm, "mm"),
            };
        }

        double shallowest = Math.Min(box.FrontDepthMm, RearDepthMm(box));
        if (box.CornerRadiusMm > shallowest)
        {
            yield return new("corner-too-round", Severity.Error, $"{Path}.corner_radius_mm", $"The corners' radius is {Quantity.Text(box.CornerRadiusMm, "mm")}, but the base is only {Quantity.Text(shallowest, "mm")} deep there.", "Give a smaller radius.")
            {
                Value = Quantity.Text(box.CornerRadiusMm, "mm"),
                Limit = Quantity.Text(shallowest, "mm"),
            };
        }
    }

    private static IEnumerable<Finding> OfBolts(MeasuredBox box)
    {
        for (int i = 0; i < box.Bolts.Count; i++)
        {
            double here = box.Bolts[i].FromFrontMm;
            string path = $"{Path}.bolts[{i}].from_front_mm";
            if (here >= box.HullLengthMm)
            {
                yield return new("bolt-outside-box", Severity.Error, path, $"The bolt stands {Quantity.Text(here, "mm")} behind the front corner, but the box is {Quantity.Text(box.HullLengthMm, "mm")} long.", "Measure again, from the front corner at the hull.")
                {
                    Value = Quantity.Text(here, "mm"),
                    Limit = Quantity.Text(box.HullLengthMm, "mm"),
                };
            }

            if (i > 0 && here - box.Bolts[i - 1].FromFrontMm < NutRoomMm)
            {
                yield return new("bolts-too-near", Severity.Error, path, $"The bolt stands {Quantity.Text(here - box.Bolts[i - 1].FromFrontMm, "mm")} behind the one before it; the nuts need {Quantity.Text(NutRoomMm, "mm")}.", "List the bolts from the front, and measure their distances again.")
                {
                    Value = Quantity.Text(here - box.Bolts[i - 1].FromFrontMm, "mm"),
                    Limit = Quantity.Text(NutRoomMm, "mm"),
                };
            }
        }
    }
}
