using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>What is to be said of a scene whose data are old, quick, or not there.</summary>
internal static class SceneNotes
{
    /// <summary>Why nothing is known yet.</summary>
    /// <param name="standing">What is known.</param>
    /// <param name="reader">The reader.</param>
    /// <param name="problem">Why the work gave no answer; null when it was not reached.</param>
    public static string Missing(Standing standing, Reader reader, string? problem = null)
    {
        if (problem is not null)
            return reader[problem];
        if (standing.Findings.Any(finding => finding.IsError))
            return reader["The design cannot be made as it is, so this was not worked out: see the verdicts."];
        if (standing.Fault is not null)
            return reader["A fault in the program kept this from being worked out: see the verdicts."];
        return standing.IsStopped
            ? reader["Not worked out: the work was stopped. Go on with it beside the verdicts."]
            : reader["This is still being worked out; until then the fin is shown as it looks."];
    }

    /// <summary>Whether water and strength speak of the design as it is.</summary>
    public static string Sailing(Standing standing, Reader reader) =>
        standing.SailingIsOld ? reader["Before the last change: the new one is being worked out. The thin line is the fin as it is now."]
        : standing.SailingIsQuick ? reader["A first look, with sections solved before the change."]
        : "";

    /// <summary>Whether print, pour and cure speak of the design as it is.</summary>
    public static string Made(Standing standing, Reader reader) => standing.MadeIsOld ? reader["Before the last change."] : "";

    /// <summary>The plain fin in place of what is not known.</summary>
    public static DrawnScene? Instead(Standing standing, SceneRequest asked, Reader reader, string why, string says) =>
        PlainScene.Of(standing, asked, reader) is { } plain ? plain with { Says = says, Note = why, IsThere = false } : null;

    /// <summary>Sentences one after the other.</summary>
    public static string Both(string first, string second) => first.Length == 0 ? second : second.Length == 0 ? first : $"{first} {second}";
}
