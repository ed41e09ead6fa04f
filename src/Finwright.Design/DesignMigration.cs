using Finwright.Design.Checks;
using Finwright.Design.Migration;
using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>Brings older design files up to the present format, one format at a time.</summary>
/// <remarks>Steps work on the file's own tree, so that findings still know the lines of the older file.</remarks>
internal static class DesignMigration
{
    private const string FormatKey = "format";

    // The step at index 0 leads from format 1 to format 2, and so on.
    private static readonly Action<Node>[] Steps = [Format1.ToFormat2];

    /// <summary>Brings a file's tree up to date, in place.</summary>
    /// <param name="root">The file's root object.</param>
    /// <param name="findings">Takes a note that says what was done, or why the file is refused.</param>
    /// <returns>The tree; null when the file is of a format that this program does not know.</returns>
    public static Node? BringUpToDate(Node root, List<Finding> findings)
    {
        // Without a usable number the file is read as the present format, which then reports the number itself.
        if (root.Find(FormatKey) is not { Kind: NodeKind.Number } given || !double.IsInteger(given.Number))
            return root;

        if (given.Number > FinDesign.CurrentFormat)
        {
            findings.Add(new Finding("newer-format", Severity.Error, $"$.{FormatKey}", $"The file has format {Quantity.Text(given.Number)}; this program knows formats up to {FinDesign.CurrentFormat}.", "Use the program that wrote the file, or a newer one.")
            {
                Line = given.Line,
                Value = Quantity.Text(given.Number),
                Limit = Quantity.Text(FinDesign.CurrentFormat),
            });
            return null;
        }

        if (given.Number is < 1 or FinDesign.CurrentFormat)
            return root;

        for (int format = (int)given.Number; format < FinDesign.CurrentFormat; format++)
            Steps[format - 1](root);
        int at = root.Members.FindIndex(member => member.Key == FormatKey);
        root.Members[at] = root.Members[at] with { Value = new Node(NodeKind.Number, given.Line) { Number = FinDesign.CurrentFormat } };
        findings.Add(new Finding("older-format", Severity.Note, $"$.{FormatKey}", $"The file has format {Quantity.Text(given.Number)} and was read as if it were format {FinDesign.CurrentFormat}; field names in findings are those of format {FinDesign.CurrentFormat}.", "Keep the design once to have the file in the present format.")
        {
            Line = given.Line,
            Value = Quantity.Text(given.Number),
            Limit = Quantity.Text(FinDesign.CurrentFormat),
        });
        return root;
    }
}
