using System.Globalization;
using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.FromDesign;

/// <summary>Engraves the part number on the fin, and the allowances on the gauge.</summary>
/// <remarks>
/// The number stands on the root face of the blade, where the hull covers it. When blade and base are one print there is no root
/// face; it then stands on the port side of the base, which looks up when the part lies, and which the box covers.
/// </remarks>
internal static class EngravingFromDesign
{
    private const string NumberPath = "$.parts.number";

    /// <summary>The part number on the piece at the root; null when there is none or it has no room.</summary>
    /// <param name="work">The design.</param>
    /// <param name="root">The piece at the root, all else already cut.</param>
    /// <param name="kernel">Slices the piece.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static EngravedText? Number(PartWork work, SolidExpression root, ISolidKernel kernel, CancellationToken cancellation)
    {
        string number = work.Design.Parts.Number.Trim();
        if (number.Length == 0)
            return null;
        if (number.FirstOrDefault(c => !StrokeFont.TryGet(c, out _)) is var unknown and not '\0')
        {
            work.Findings.Add(new(
                "engraving-character", Severity.Error, NumberPath,
                $"The part number \"{number}\" holds '{unknown}', which has no engraved letter.",
                "Use capitals, digits, dash, dot and space."));
            return null;
        }

        (Placement face, string where) = work.AsOne ? (PortSide(work.Solids.Plan), "port side of the base") : (RootFace, "root face");
        EngravedText? engraved = EngravedText.Find(kernel, root, face, number, work.Engraving, work.Line, cancellation);
        if (engraved is null)
        {
            double height = StrokeText.LeastHeightInPens * work.Line, width = StrokeText.Width(number, height, work.Line);
            work.Findings.Add(new(
                "engraving-no-room", Severity.Caution, NumberPath,
                $"The part number \"{number}\" is not engraved: its smallest legible letters need {1000 * width:0.0} × {1000 * height:0.0} mm on the {where}, clear of bores and {PartWork.Mm(2 * work.Line)} from every edge.",
                "Use a shorter number, or write it on by hand."));
        }

        return engraved;
    }

    /// <summary>The allowances on the gauge, so that two gauges can be told apart; null when they have no room.</summary>
    /// <param name="work">The design.</param>
    /// <param name="gauge">The gauge.</param>
    /// <param name="kernel">Slices the gauge.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static EngravedText? Allowances(PartWork work, SolidExpression gauge, ISolidKernel kernel, CancellationToken cancellation)
    {
        Base fit = work.Design.Base;
        string text = $"L{Signed(fit.LengthAllowanceMm)} T{Signed(fit.ThicknessAllowanceMm)} D{Signed(fit.DepthAllowanceMm)}";
        double depth = Math.Min(work.Engraving, work.GaugeThickness / 3);
        // The plate must stay whole under the letters.
        return work.GaugeThickness - depth < 2 * work.Line + 0.1e-3
            ? null
            : EngravedText.Find(kernel, gauge, FitGauge.PlateFace(work.Solids.Plan, work.GaugeThickness), text, depth, work.Line, cancellation);
    }

    /// <summary>The root face seen from the hull: aft to the right, starboard up.</summary>
    private static Placement RootFace { get; } = new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default);

    /// <summary>The port side of the base: aft to the right, the hull below.</summary>
    private static Placement PortSide(BasePlan plan) =>
        Placement.Along(new(plan.MiddleX, -plan.Depth / 2, -plan.Width(-plan.Depth / 2) / 2), BaseFaces.Port(plan), new(1, 0, 0));

    private static string Signed(double millimetres) => millimetres.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);
}
