using Finwright.Assessment.Loaded;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Quantities;
using Finwright.Papers.Words;
using Finwright.Strength.Joints;

namespace Finwright.Papers.Sheet;

/// <summary>The base in the box of the board.</summary>
internal static class FitChapter
{
    // Washers that builders use under bolt heads.
    private const double Washer = 1.5e-3;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue, Base own) = (paper.Words, paper.Tongue, paper.Design.Base);
        paper.Chapter(words.Fit, words.FitSentence);
        paper.Judge(verdict => verdict.Code is "base" or "tightening" || verdict.Code.StartsWith("joint-", StringComparison.Ordinal));
        if (own.Gauge)
            paper.Step(words.GaugeAgain);
        paper.Step(words.Soap);
        paper.Step(words.Knock, Cautions.Dust);
        paper.Flow.Head(words.FitHead);
        paper.Flow.Table([new(words.SymptomColumn, 3), new(words.CureColumn, 7)], [.. words.FitTable.Select(row => (IReadOnlyList<string>)[row.Symptom, row.Cure])]);
        paper.Flow.Text(words.Allowances(tongue.Length(1e-3 * own.LengthAllowanceMm, 2), tongue.Length(1e-3 * own.ThicknessAllowanceMm, 2), tongue.Length(1e-3 * own.DepthAllowanceMm, 2)));
        paper.Flow.Blanks(words.AllowanceBlanks);
        if (own.Box == BoxKind.LongSlot)
            paper.Step(words.PinAndScrew);
        else if (paper.Bought(HardwareKind.BoxBolt) is { Count: > 0 } bolts)
            Bolts(paper, bolts);
        else
            paper.Step(words.NoBolts);
    }

    private static void Bolts(SheetPaper paper, IReadOnlyList<HardwareItem> bolts)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.StepAbove(words.BoltLengths);
        paper.Flow.Table(
            [
                new(words.BoltColumn, 2.6), new(words.InsideColumn, 1.6, IsNumber: true), new(words.BoardColumn, 1.6), new(words.BuyColumn, 1.6),
                new(words.TorqueColumn, 2.4), new(words.TorqueLimitColumn, 3.2),
            ],
            [.. bolts.Select(bolt => Row(bolt, Torques.Of(paper, bolt)))],
            boxed: true);
        if (Torques.Of(paper).Count == 0)
            paper.Flow.Text(words.TorqueUnknown);
        paper.Step(words.Tighten(words.FromTo(Torques.Shown(paper, TighteningTorque.HandTight.Low), Torques.Shown(paper, TighteningTorque.HandTight.High))));
        paper.Step(words.SealBolts(tongue.Length(Washer)));

        IReadOnlyList<string> Row(HardwareItem bolt, NutTorque? torque) =>
        [
            tongue.Words.Names.Place(bolt), tongue.Length(bolt.Length), "", "",
            torque is null ? words.NotKnown : Torques.Band(paper, torque), torque is null ? words.NotKnown : words.LimitOf(torque.Advice.LimitedBy),
        ];
    }
}
