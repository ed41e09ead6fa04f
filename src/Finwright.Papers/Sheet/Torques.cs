using Finwright.Assessment.Loaded;
using Finwright.Assessment.Verdicts;
using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Sheet;

/// <summary>How hard bolts and rods may be tightened, as the sheet tells it.</summary>
internal static class Torques
{
    /// <summary>All that were worked out.</summary>
    public static IReadOnlyList<NutTorque> Of(SheetPaper paper) => paper.Result.Loaded?.Torques ?? [];

    /// <summary>Which bolt or rod.</summary>
    public static string Name(SheetPaper paper, NutTorque torque) => paper.Result.Hardware.FirstOrDefault(item => item.Place == torque.Name) is { } item
        ? paper.Tongue.Words.Names.Place(item)
        : paper.Tongue.Words.Names.Feature(torque.Name);

    /// <summary>From least to greatest.</summary>
    public static string Band(SheetPaper paper, NutTorque torque)
    {
        string least = Shown(paper, torque.Advice.Least), greatest = Shown(paper, torque.Advice.Greatest);
        return !torque.Advice.IsPossible ? paper.Words.NoTorque(least, greatest)
            : torque.Advice.Least > 0 ? paper.Words.FromTo(least, greatest)
            : paper.Words.AtMost(greatest);
    }

    /// <summary>A torque, N·m.</summary>
    public static string Shown(SheetPaper paper, double torque) => paper.Tongue.Quantity(new Quantity(torque, "N·m", 1));

    /// <summary>The advice for something bought; null when there is none.</summary>
    public static NutTorque? Of(SheetPaper paper, HardwareItem item) => Of(paper).FirstOrDefault(torque => torque.Name == item.Place);
}
