using Finwright.Workshop.Shelf;

namespace Finwright.Page.Shelf;

/// <summary>A line of the tree within one row; shares of the row's height from its top.</summary>
/// <param name="FromLane">Lane where it begins.</param>
/// <param name="FromShare">How far down it begins.</param>
/// <param name="ToLane">Lane where it ends.</param>
/// <param name="ToShare">How far down it ends.</param>
public readonly record struct TreeLine(int FromLane, double FromShare, int ToLane, double ToShare);

/// <summary>A revision in the tree.</summary>
/// <param name="Revision">The revision.</param>
/// <param name="Lane">Its lane, from 0.</param>
/// <param name="Lines">Lines that cross or touch its row.</param>
public sealed record TreeRow(Revision Revision, int Lane, IReadOnlyList<TreeLine> Lines);

/// <summary>Revisions of a design as a tree, the latest on top: what goes on from a revision keeps its lane, what branches off gets one of its own.</summary>
public static class RevisionTree
{
    private const double Middle = 0.5;

    /// <summary>Lays the tree out.</summary>
    /// <param name="revisions">All revisions of one design.</param>
    /// <returns>The rows, the latest first.</returns>
    public static IReadOnlyList<TreeRow> Of(IReadOnlyList<Revision> revisions)
    {
        ArgumentNullException.ThrowIfNull(revisions);
        Revision[] byNumber = [.. revisions.OrderBy(own => own.Number)];
        Dictionary<string, int> places = byNumber.Index().ToDictionary(own => own.Item.Label, own => own.Index, StringComparer.OrdinalIgnoreCase);
        int[] lanes = new int[byNumber.Length];
        HashSet<int> goneOn = [];
        int used = 0;
        for (int i = 0; i < byNumber.Length; i++)
            lanes[i] = ParentOf(i) is int parent && goneOn.Add(parent) ? lanes[parent] : used++;

        List<TreeLine>[] lines = [.. byNumber.Select(_ => new List<TreeLine>())];
        for (int child = 0; child < byNumber.Length; child++)
        {
            if (ParentOf(child) is not int parent)
                continue;
            lines[child].Add(new(lanes[child], Middle, lanes[child], 1));
            for (int between = parent + 1; between < child; between++)
                lines[between].Add(new(lanes[child], 0, lanes[child], 1));
            lines[parent].Add(new(lanes[child], 0, lanes[parent], Middle));
        }

        return [.. byNumber.Index().Reverse().Select(own => new TreeRow(own.Item, lanes[own.Index], lines[own.Index]))];

        // A parent comes before its child; one of another design is not in this tree.
        int? ParentOf(int child) => places.TryGetValue(byNumber[child].Parent, out int parent) && parent < child ? parent : null;
    }
}
