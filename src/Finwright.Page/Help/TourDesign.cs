using Finwright.Design;
using Finwright.Page.Hosting;
using Finwright.Page.Works;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Help;

/// <summary>The design that the tour walks over: a demo on the shelf, there to be changed.</summary>
public sealed class TourDesign(Desk desk, PageSettings settings)
{
    /// <summary>Finds it on the shelf, or puts it there.</summary>
    /// <returns>Its name on the shelf.</returns>
    /// <exception cref="StoreException">The store cannot be changed, or the program brought no demo along.</exception>
    public string Find()
    {
        // The one whose outline says most: a family with all its numbers.
        KeyValuePair<string, string> demo = settings.Demos.OrderByDescending(own => own.Key.Contains("delta", StringComparison.OrdinalIgnoreCase)).ThenBy(own => own.Key, StringComparer.Ordinal).FirstOrDefault();
        if (demo.Value is null || DesignReader.Read(demo.Value).Design is not { } design)
            throw new StoreException(StoreProblem.Wrong, "This program brought no demo design along.", "Open a design of your own; the help says what the tour would show.");
        string name = $"{design.Name} (tour)";
        if (desk.Ask(store => store.Shelf.Find(name)) is null)
            desk.Change(store => store.Shelf.Add(name, new(design with { Name = name }, Picture: null, "For the tour: change it as you like.", desk.MadeBy), []));
        return name;
    }
}
