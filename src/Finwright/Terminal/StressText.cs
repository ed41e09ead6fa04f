using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>Stresses and the joint as tables.</summary>
internal static class StressText
{
    /// <summary>Writes the most strained places, and the joint when there is one.</summary>
    public static void Write(TextWriter o, IReadOnlyList<StressSummary> stresses, JointSummary? joint)
    {
        o.WriteLine();
        o.WriteLine("  most strained                mm deep  mm aft   stress, MPa   bears, MPa   reserve");
        foreach (StressSummary own in stresses)
            o.WriteLine($"  {own.Name,-28}{own.DepthMm,8:0}{own.AftMm,8:0}{own.StressMpa,14:0.0}{own.StrengthMpa,13:0}{own.Reserve,10:0.0}");
        if (joint is null)
            return;
        o.WriteLine();
        o.WriteLine($"  joint at the hull: {Choice.Of(joint.Status)}, {100 * joint.ContactShare:0} % of the face in contact, gap {joint.GapMm:0.00} mm, pull {string.Join(" and ", joint.TensionsN.Select(pull => $"{pull:0}"))} N");
    }
}
