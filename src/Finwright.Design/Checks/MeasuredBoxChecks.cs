using Finwright.Design.Fields;

namespace Finwright.Design.Checks;

/// <summary>Whether a box's measurements can be those of a box that a base can be pushed into.</summary>
internal static class MeasuredBoxChecks
{
    private const string Path = "$.base.measured";

    /// <summary>Deep length against end angles, mm: what a steel rule and an angle gauge agree to.</summary>
    private const double MeasuringErrorMm = 1;

    /// <summary>Least length left at the deep end, mm, and least distance between two bolts: an M6 nut and a wall on each side.</summary>
    private const double NutRoomMm = 14;

    private const double RadiansPerDegree = Math.PI / 180;

    public static IEnumerable<Finding> Of(MeasuredBox box) => [.. OfEnds(box), .. OfWidthAndCorners(box), .. OfBolts(box)];

    private static IEnumerable<Finding> OfEnds(MeasuredBox box)
    {
        double rearDepth = box.RearDepthMm ?? box.FrontDepthMm;
        if (box.FrontAngleDegrees is null != box.RearAngleDegrees is null)
        {
            string missing = box.FrontAngleDegrees is null ? "front_angle_degrees" : "rear_angle_degrees";
            yield return new("one-end-angle", Severity.Error, $"{Path}.{missing}", "Only one of the two end angles is given.", $"Add \"{missing}\", or give the deep length and no angles.");
            yield break;
        }

        if (box.FrontAngleDegrees is double front && box.RearAngleDegrees is double rear)
        {
            double deep = box.HullLengthMm - box.FrontDepthMm * Math.Tan(front * RadiansPerDegree) - rearDepth * Math.Tan(rear * RadiansPerDegree);
            if (box.DeepLengthMm is double measured && Math.Abs(measured - deep) > MeasuringErrorMm)
            {
                yield return new("box-inconsistent", Severity.Error, $"{Path}.deep_length_mm", $"The end angles and depths leave {Quantity.Text(Math.Round(deep, 1), "mm")} at the deep end, but {Quantity.Text(measured, "mm")} is given.", "Measure again, or give only the deep length or only the angles.")
                {
                    Value = Quantity.Text(measured, "mm"),
                    Limit = $"{Quantity.Text(Math.Round(deep, 1), "mm")} within {Quantity.Text(MeasuringErrorMm, "mm")}",
                };
            }
            else if (deep < NutRoomMm)
            {
                yield return new("box-ends-meet", Severity.Error, $"{Path}.front_angle_degrees", $"With these angles the end faces leave {Quantity.Text(Math.Round(deep, 1), "mm")} at the deep end; at least {Quantity.Text(NutRoomMm, "mm")} is needed.", "Measure the angles from square to the hull, not from the hull.")
                {
                    Value = Quantity.Text(Math.Round(deep, 1), "mm"),
                    Limit = Quantity.Text(NutRoomMm, "mm"),
                };
            }
            else if (deep > box.HullLengthMm)
            {
                yield return new("box-undercut", Severity.Error, $"{Path}.front_angle_degrees", "With these angles the box is longer inside than at the hull, so no base could be pushed in.", "Measure the angles again; positive means that a face leans toward the middle of the box.");
            }
        }
        else if (box.DeepLengthMm is double deepLength)
        {
            // Both ends lean alike: tan a = (hull length - deep length) / (front depth + rear depth).
            double angle = Math.Atan2(box.HullLengthMm - deepLength, box.FrontDepthMm + rearDepth) / RadiansPerDegree;
            double steepest = RecordForm.Of(typeof(MeasuredBox)).Find("front_angle_degrees")!.Maximum!.Value;
            if (deepLength > box.HullLengthMm)
            {
                yield return new("box-undercut", Severity.Error, $"{Path}.deep_length_mm", $"The box is {Quantity.Text(deepLength, "mm")} long inside and {Quantity.Text(box.HullLengthMm, "mm")} at the hull, so no base could be pushed in.", "Measure both lengths again.")
                {
                    Value = Quantity.Text(deepLength, "mm"),
                    Limit = Quantity.Text(box.HullLengthMm, "mm"),
                };
            }
            else if (angle > steepest)
            {
                yield return new("box-inconsistent", Severity.Error, $"{Path}.deep_length_mm", $"From the lengths and depths the ends lean {Quantity.Text(Math.Round(angle, 1), "°")}; at most {Quantity.Text(steepest, "°")} is accepted.", "Measure lengths and depths again.")
                {
                    Value = Quantity.Text(Math.Round(angle, 1), "°"),
                    Limit = Quantity.Text(steepest, "°"),
                };
            }
        }
        else
        {
            yield return new("box-ends-missing", Severity.Error, $"{Path}.deep_length_mm", "Nothing says how the ends of the box lean.", "Give the deep length, or both end angles.");
        }
    }

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

        double shallowest = Math.Min(box.FrontDepthMm, box.RearDepthMm ?? box.FrontDepthMm);
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
