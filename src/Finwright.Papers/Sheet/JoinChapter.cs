using Finwright.Assessment.Loaded;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Quantities;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>Base and blade, then the strip, where there are such.</summary>
internal static class JoinChapter
{
    private const double PictureHeight = 0.06;

    // What is left over beside a template.
    private const double Over = 2e-3;

    /// <summary>Writes them.</summary>
    public static void Write(SheetPaper paper)
    {
        if (paper.Result.Solids?.Base is not null)
            Join(paper);
        if (paper.Design.Shape.Strip is { } strip)
            Strip(paper, strip);
    }

    private static void Join(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        bool bonded = paper.Design.Materials.RootBonded;
        paper.Chapter(words.Join, words.JoinSentence(paper.Design.Base.Fixing, bonded));
        paper.Judge(verdict => verdict.Code.StartsWith("joint-", StringComparison.Ordinal));
        if (bonded)
        {
            paper.Step(words.RoughenFaces, Cautions.Dust);
            paper.Step(words.BondBase, Cautions.Skin);
        }
        else
        {
            paper.Step(words.JoinDry);
        }

        NutTorque[] rods = [.. Torques.Of(paper).Where(torque => paper.Bought(HardwareKind.ThreadedRod).Any(item => item.Place == torque.Name))];
        if (rods.Length > 0)
            paper.Step(words.ClampRods(paper.Tongue.List([.. rods.Select(torque => $"{Torques.Name(paper, torque)} {Torques.Band(paper, torque)}")])));
        paper.Step(words.LookStraight);
    }

    private static void Strip(SheetPaper paper, Strip strip)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        string sheet = tongue.Length(1e-3 * strip.SheetMm, 2);
        paper.Chapter(words.Strip, words.StripSentence(sheet, tongue.Length(1e-3 * strip.SlotDepthMm), tongue.Length(1e-3 * strip.OverhangMm)));
        if (SheetPictures.Strip(paper.Result, tongue, paper.Flow.Width, PictureHeight) is { } picture)
            paper.Flow.Picture(picture, words.StripCaption);
        paper.Step(words.ClearSlot(tongue.Length(1e-3 * (strip.SheetMm + strip.AllowanceMm), 2), tongue.Length(1e-3 * strip.SlotDepthMm)));
        if (paper.Bought(HardwareKind.StripSheet) is [{ } item, ..])
            paper.Step(words.CutStrip(tongue.Length(item.Length, 0), tongue.Length(1e-3 * (strip.SlotDepthMm + strip.OverhangMm)), tongue.Length(Over, 0)), Cautions.Edges);
        paper.Step(words.RoughenStrip, Cautions.Dust);
        paper.Step(words.BondStrip, Cautions.Solvents, Cautions.Skin);
        paper.Step(words.TrimStrip);
    }
}
