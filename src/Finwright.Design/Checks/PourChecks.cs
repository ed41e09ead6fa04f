using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>Where the resin comes from, and whether the pours rise.</summary>
internal static class PourChecks
{
    private const string Group = "$.pour";

    public static IEnumerable<Finding> Of(Pour pour)
    {
        ResinChoice resin = pour.System;
        int sources = (resin.Name is null ? 0 : 1) + (resin.File is null ? 0 : 1) + (resin.Content is null ? 0 : 1);
        if (sources > 1)
            yield return new("resin-given-twice", Severity.Error, $"{Group}.system", "The resin system is given more than once.", "Keep one of \"name\", \"file\" and \"content\".");
        else if (resin.File is string file && FileName.Problem(file) is string problem)
            yield return new("file-outside-folder", Severity.Error, $"{Group}.system.file", $"\"{JsonPath.Shown(file)}\" {problem}.", "Put the file beside the design file and write its name alone.") { Value = JsonPath.Shown(file) };

        if (pour is { Attitude: PourPosition.Auto, TiltDegrees: not 0 })
            yield return new("not-used", Severity.Note, $"{Group}.tilt_degrees", "The tilt is not used, because the attitude is found by itself.", "Name an attitude, or take the tilt out.");

        for (int i = 1; i < pour.Stages.Count; i++)
        {
            PourStage before = pour.Stages[i - 1], stage = pour.Stages[i];
            if (stage.ToPercent <= before.ToPercent)
            {
                yield return new("pours-not-rising", Severity.Error, $"{Group}.stages[{i}].to_percent", $"Pour {i + 1} reaches {Quantity.Text(stage.ToPercent, "%")}, no higher than pour {i} with {Quantity.Text(before.ToPercent, "%")}.", "Let each pour reach higher than the one before.")
                {
                    Value = Quantity.Text(stage.ToPercent, "%"),
                    Limit = Quantity.Text(before.ToPercent, "%"),
                };
            }

            if (stage.AfterHours <= before.AfterHours)
            {
                yield return new("pours-not-later", Severity.Error, $"{Group}.stages[{i}].after_hours", $"Pour {i + 1} comes after {Quantity.Text(stage.AfterHours, "h")}, no later than pour {i} with {Quantity.Text(before.AfterHours, "h")}.", "Let each pour come later than the one before.")
                {
                    Value = Quantity.Text(stage.AfterHours, "h"),
                    Limit = Quantity.Text(before.AfterHours, "h"),
                };
            }
        }

        if (pour.Stages is [{ AfterHours: not 0 }, ..])
            yield return new("first-pour-late", Severity.Error, $"{Group}.stages[0].after_hours", "Hours count from the first pour, so the first pour comes after 0 h.", "Write 0.") { Value = Quantity.Text(pour.Stages[0].AfterHours, "h"), Limit = Quantity.Text(0, "h") };
        if (pour.Stages is [.., { ToPercent: < 100 } last])
            yield return new("last-pour-low", Severity.Caution, $"{Group}.stages[{pour.Stages.Count - 1}].to_percent", $"The last pour reaches {Quantity.Text(last.ToPercent, "%")} only: the pores above stay empty, weak, and open to water.", "Let the last pour reach 100 %.") { Value = Quantity.Text(last.ToPercent, "%"), Limit = Quantity.Text(100, "%") };
    }
}
