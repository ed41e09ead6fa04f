using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Turns the base section of a design into a base in its place, with the owner's allowances.</summary>
/// <remarks>
/// Allowances change the outside and leave the bolts where the board has them: length grows at both ends alike, depth is
/// added at both top corners. The drawing's size stays the reference for where the bolts stand.
/// </remarks>
public static class BaseFromDesign
{
    // Shortest, thinnest and shallowest base that is still a base.
    private const double LeastLength = 20e-3, LeastWidth = 3e-3, LeastDepth = 5e-3;

    /// <summary>Makes the base.</summary>
    /// <param name="design">The design.</param>
    /// <param name="rootMiddleX">Middle of the blade's root, design axes, metres.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The base, or null when the numbers describe none.</returns>
    public static BasePlan? Plan(FinDesign design, double rootMiddleX, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        Base given = design.Base;
        double middleX = rootMiddleX - given.BladeOffsetMm * 1e-3;
        MetricThread thread = HardwareSizes.Of(design.Hardware.BoxBolts.Thread);
        BasePlan? drawn = given.Box switch
        {
            BoxKind.TwoBoltTapered => TwoBoltBase.Standard(middleX, thread),
            BoxKind.TwoBoltDeep => Deep(given, middleX, thread, findings),
            BoxKind.LongSlot => SlotTabBase.Plan(
                middleX, given.Slot.LengthMm * 1e-3, given.Slot.ThicknessMm * 1e-3, given.Slot.DepthMm * 1e-3,
                given.Slot.PinMm * 1e-3, given.Slot.PinDepthMm * 1e-3, HardwareSizes.Of(given.Slot.Screw)),
            _ => Measured(given.Measured, middleX, findings),
        };
        if (drawn is null)
            return null;
        BasePlan plan = drawn with
        {
            FrontX = drawn.FrontX - given.LengthAllowanceMm * 1e-3 / 2,
            HullLength = drawn.HullLength + given.LengthAllowanceMm * 1e-3,
            FrontDepth = drawn.FrontDepth + given.DepthAllowanceMm * 1e-3,
            RearDepth = drawn.RearDepth + given.DepthAllowanceMm * 1e-3,
            HullWidth = drawn.HullWidth + given.ThicknessAllowanceMm * 1e-3,
            DeepWidth = drawn.DeepWidth + given.ThicknessAllowanceMm * 1e-3,
        };
        return IsWhole(plan, given, findings) ? RoundedToFit(plan, given, findings) : null;
    }

    private static BasePlan? Deep(Base given, double middleX, MetricThread thread, ICollection<Finding> findings)
    {
        double frontDepth = given.DeepFrontMm * 1e-3;
        if (frontDepth >= TwoBoltBase.StandardFrontDepth)
            return TwoBoltBase.Deep(middleX, thread, frontDepth);
        findings.Add(new(
            "base-not-deep", Severity.Error, "$.base.deep_front_mm",
            $"A deep base with its front corner {Mm(frontDepth)} deep is shallower than the standard base, {Mm(TwoBoltBase.StandardFrontDepth)}.",
            "Choose the box \"two-bolt-tapered\", or a front depth of about 70 mm.")
        { Value = Mm(frontDepth), Limit = Mm(TwoBoltBase.StandardFrontDepth) });
        return null;
    }

    private static BasePlan? Measured(MeasuredBox? box, double middleX, ICollection<Finding> findings)
    {
        if (box is null)
        {
            findings.Add(new(
                "measurements-missing", Severity.Error, "$.base.measured",
                "The box is \"measured\", but no measurements are given.",
                "Fill in \"measured\": at least hull length, hull width, front depth, and the deep length or both end angles."));
            return null;
        }

        double front = box.FrontDepthMm * 1e-3, rear = (box.RearDepthMm ?? box.FrontDepthMm) * 1e-3;
        if (EndAngles(box, front, rear, findings) is not { } angles)
            return null;
        double clearance = box.ClearanceMm * 1e-3;
        double length = box.HullLengthMm * 1e-3;
        double boxFrontX = middleX - length / 2;
        return new()
        {
            FrontX = boxFrontX + clearance / 2,
            HullLength = length - clearance,
            FrontDepth = front,
            RearDepth = rear,
            FrontAngle = angles.Front,
            RearAngle = angles.Rear,
            CornerRadius = box.CornerRadiusMm * 1e-3,
            HullWidth = box.HullWidthMm * 1e-3 - clearance,
            DeepWidth = (box.DeepWidthMm ?? box.HullWidthMm) * 1e-3 - clearance,
            Bolts = [.. box.Bolts.Select(b => BoltAxis.Leaning(
                boxFrontX + b.FromFrontMm * 1e-3, b.LeanDegrees * Math.PI / 180, HardwareSizes.Of(b.Thread)))],
        };
    }

    // The two end angles from what was measured: hull length - deep length = front depth tan(front) + rear depth tan(rear).
    private static (double Front, double Rear)? EndAngles(MeasuredBox box, double front, double rear, ICollection<Finding> findings)
    {
        double? frontTangent = Tangent(box.FrontAngleDegrees), rearTangent = Tangent(box.RearAngleDegrees);
        if (box.DeepLengthMm is not { } deepLength)
        {
            if (frontTangent is { } f && rearTangent is { } r)
                return (Math.Atan(f), Math.Atan(r));
            findings.Add(new(
                "box-ends-missing", Severity.Error, "$.base.measured.deep_length_mm",
                "The shape of the box's ends is open: neither the length at the deep end nor both end angles are given.",
                "Measure the length at the deep end, or both end angles."));
            return null;
        }

        double shorter = (box.HullLengthMm - deepLength) * 1e-3;
        (double frontT, double rearT) = (frontTangent, rearTangent) switch
        {
            (null, null) => (shorter / (front + rear), shorter / (front + rear)),
            ({ } f, null) => (f, (shorter - front * f) / rear),
            (null, { } r) => ((shorter - rear * r) / front, r),
            ({ } f, { } r) => (f, r),
        };
        double byAngles = front * frontT + rear * rearT;
        // Half a millimetre is what a rule and a protractor can disagree by on a usual box.
        const double agree = 0.5e-3;
        if (Math.Abs(byAngles - shorter) > agree)
        {
            double implied = box.HullLengthMm * 1e-3 - byAngles;
            findings.Add(new(
                "box-inconsistent", Severity.Error, "$.base.measured.deep_length_mm",
                $"The box measures {Mm(deepLength * 1e-3)} at its deep end, but hull length, depths and end angles give {Mm(implied)}: {Mm(Math.Abs(implied - deepLength * 1e-3))} apart.",
                "Measure again, and leave out the deep length or the angles, whichever you trust less.")
            { Value = Mm(deepLength * 1e-3), Limit = $"{Mm(implied)} within {Mm(agree)}" });
            return null;
        }

        const double least = -5 * Math.PI / 180, most = 45 * Math.PI / 180;
        (double frontAngle, double rearAngle) = (Math.Atan(frontT), Math.Atan(rearT));
        if (frontAngle >= least && frontAngle <= most && rearAngle >= least && rearAngle <= most)
            return (frontAngle, rearAngle);
        findings.Add(new(
            "box-inconsistent", Severity.Error, "$.base.measured.deep_length_mm",
            $"From the lengths and depths the end faces would lean {Degrees(frontAngle)} in front and {Degrees(rearAngle)} behind; -5 to 45 degrees are possible.",
            "Measure both lengths and both depths again.")
        { Value = $"{Degrees(frontAngle)}, {Degrees(rearAngle)}", Limit = "-5 to 45 degrees" });
        return null;

        static double? Tangent(double? degrees) => degrees is { } d ? Math.Tan(d * Math.PI / 180) : null;
    }

    private static bool IsWhole(BasePlan plan, Base given, ICollection<Finding> findings)
    {
        string lengthPath = given.LengthAllowanceMm < 0 ? "$.base.length_allowance_mm" : given.Box switch
        {
            BoxKind.Measured => "$.base.measured.hull_length_mm",
            BoxKind.LongSlot => "$.base.slot.length_mm",
            _ => "$.base.length_allowance_mm",
        };
        string widthPath = given.ThicknessAllowanceMm < 0 ? "$.base.thickness_allowance_mm" : given.Box switch
        {
            BoxKind.Measured => "$.base.measured.hull_width_mm",
            BoxKind.LongSlot => "$.base.slot.thickness_mm",
            _ => "$.base.thickness_allowance_mm",
        };
        string depthPath = given.DepthAllowanceMm < 0 ? "$.base.depth_allowance_mm" : given.Box switch
        {
            BoxKind.Measured => "$.base.measured.front_depth_mm",
            BoxKind.LongSlot => "$.base.slot.depth_mm",
            _ => "$.base.depth_allowance_mm",
        };
        double topLength = plan.RearTop.X - plan.FrontTop.X;
        bool whole = AtLeast(Math.Min(plan.FrontDepth, plan.RearDepth), LeastDepth, "depth at its shallower end", depthPath)
            & AtLeast(Math.Min(plan.HullWidth, plan.DeepWidth), LeastWidth, "thickness", widthPath)
            & AtLeast(plan.HullLength, LeastLength, "length at the hull", lengthPath)
            && AtLeast(topLength, LeastLength, "length at the deep end", lengthPath);
        if (!whole)
            return false;
        // All four corners must turn the same way, or the top edge folds over an end face.
        Point2[] corners = [new(plan.FrontX, 0), plan.FrontTop, plan.RearTop, new(plan.RearX, 0)];
        for (int i = 0; i < 4; i++)
        {
            Point2 a = corners[i], b = corners[(i + 1) % 4], c = corners[(i + 2) % 4];
            if ((b - a).Cross(c - b) > 0)
                continue;
            findings.Add(new(
                "base-profile-folds", Severity.Error, depthPath,
                $"With {Mm(plan.FrontDepth)} depth in front and {Mm(plan.RearDepth)} behind over {Mm(plan.HullLength)}, the side view of the base bends inward.",
                "Bring the two depths closer together."));
            return false;
        }

        return true;

        bool AtLeast(double value, double least, string what, string path)
        {
            if (value >= least)
                return true;
            findings.Add(new(
                "base-too-small", Severity.Error, path,
                $"The base would have {Mm(value)} {what}; at least {Mm(least)} is needed.",
                "Check the measurement and the allowance.")
            { Value = Mm(value), Limit = Mm(least) });
            return false;
        }
    }

    private static BasePlan RoundedToFit(BasePlan plan, Base given, ICollection<Finding> findings)
    {
        double largest = plan.LargestCornerRadius();
        if (plan.CornerRadius <= largest)
            return plan;
        double used = Math.Floor(0.99 * largest * 1e4) / 1e4;
        findings.Add(new(
            "base-corner-radius", Severity.Caution, given.Box == BoxKind.Measured ? "$.base.measured.corner_radius_mm" : "$.base.depth_allowance_mm",
            $"The top corners cannot be rounded with {Mm(plan.CornerRadius)}; {Mm(used)} is used.",
            "Give a smaller radius, or check the depths.")
        { Value = Mm(plan.CornerRadius), Limit = Mm(largest) });
        return plan with { CornerRadius = used };
    }
}
