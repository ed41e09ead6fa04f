using System.Globalization;
using System.Text;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>What a bundle holds, for a person who opens it without the program.</summary>
internal static class BundleNotes
{
    /// <summary>The notes as Markdown.</summary>
    public static string Of(DesignBundle bundle)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"# {Plain(bundle.Name)}\n\nA windsurf fin, exported by {Plain(bundle.MadeBy)}. \"finwright import\" takes this file in; `revisions` holds the design files.\n");
        if (bundle.Tags.Count > 0)
            text.Append(CultureInfo.InvariantCulture, $"\nTags: {string.Join(", ", bundle.Tags.Select(Plain))}\n");
        text.Append("\n## Revisions\n");
        foreach (BundledRevision own in bundle.Revisions)
            text.Append(CultureInfo.InvariantCulture, $"- {own.Number}, {own.MadeAt:yyyy-MM-dd}{(own.MadeFrom.Length > 0 ? $", from {Plain(own.MadeFrom)}" : "")}{(own.Note.Length > 0 ? $": {Plain(own.Note)}" : "")}\n");
        if (bundle.Builds is { Builds.Count: > 0 } builds)
        {
            text.Append("\n## Builds\n");
            foreach (BundledBuild own in builds.Builds)
                text.Append(CultureInfo.InvariantCulture, $"- {Plain(own.Name)}, of revision {own.Revision}{(own.MadeOn is DateOnly day ? $", {day:yyyy-MM-dd}" : "")}: {Counted(own.Bench.Count, "day")} on the bench, {Counted(own.Outings.Count, "outing")}{(own.Problems.Length > 0 ? $". What went wrong: {Plain(own.Problems)}" : "")}\n");
        }

        return text.ToString();
    }

    private static string Counted(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    // Words of a person stay words: on one line, without signs that Markdown or a page would take for more.
    private static string Plain(string text)
    {
        StringBuilder plain = new();
        foreach (char sign in text)
        {
            if (char.IsControl(sign))
                plain.Append(' ');
            else if (sign is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '|' or '&')
                plain.Append('\\').Append(sign);
            else
                plain.Append(sign);
        }

        return plain.ToString();
    }
}
