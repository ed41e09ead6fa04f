using System.Globalization;
using Finwright.Design;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Shelf;

/// <summary>Copies on the shelf.</summary>
public static class ShelfCopy
{
    private const int LongestName = 80;

    /// <summary>Puts a copy of a revision onto the shelf, as the first revision of a design of its own that remembers where it came from.</summary>
    /// <param name="store">The store.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="name">Name of the copy.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <exception cref="StoreException">The name is taken or unusable, or the revision cannot be read any more.</exception>
    public static Revision Of(WorkshopStore store, Revision revision, string name, string madeBy)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(revision);
        FinDesign design = store.Shelf.Read(revision.Id).Design
            ?? throw new StoreException(StoreProblem.Wrong, $"{revision.Label} cannot be read as a design by this program.", "Take its design file and see what \"finwright check\" says of it.");
        IReadOnlyList<string> tags = store.Shelf.Find(revision.DesignName)?.Tags ?? [];
        return store.Shelf.Add(name, new(design with { Name = name.Trim() }, store.Shelf.Picture(revision.Id), $"As {revision.Label}.", madeBy), tags, revision.Id);
    }

    /// <summary>A name that no design has yet: the wanted one, or that with a number behind it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="wanted">The wanted one.</param>
    public static string FreeName(WorkshopStore store, string wanted)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(wanted);
        string name = wanted.Trim();
        for (int number = 2; store.Shelf.Find(name) is not null; number++)
        {
            string end = string.Create(CultureInfo.InvariantCulture, $" {number}");
            name = wanted.Trim()[..Math.Min(wanted.Trim().Length, LongestName - end.Length)] + end;
        }

        return name;
    }
}
