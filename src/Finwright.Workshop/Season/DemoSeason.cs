using System.Text;
using Finwright.Assessment;
using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Season;

/// <summary>
/// An invented season to try the workshop with: three designs with their revisions, six builds, readings of the bench, outings with tracks. No fin was built, measured or sailed for it: readings come from
/// predictions with stiffness factors made up for them, tracks from a formula, places and people from nowhere (the tracks lie in the open sea).
/// </summary>
public static class DemoSeason
{
    /// <summary>Names of the demo designs that it needs, as in <c>examples</c>.</summary>
    public static IReadOnlyList<string> Designs { get; } = ["fairway-upright", "sandbar-delta", "eelgrass-rake"];

    /// <summary>Loads the season, all of it or nothing.</summary>
    /// <param name="store">The store; may hold other things.</param>
    /// <param name="demo">The demo designs by the names of <see cref="Designs"/>.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <param name="cancellation">Stops the work; nothing is loaded then.</param>
    /// <returns>How much came in.</returns>
    /// <exception cref="StoreException">A design or build of one of its names is there already, or the store cannot be changed.</exception>
    public static StoreContents Load(WorkshopStore store, Func<string, FinDesign> demo, string madeBy, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(demo);
        DesignBundle[] bundles =
        [
            Bundle(SeasonFins.Fairway(demo(Designs[0])), SeasonBuilds.Fairway, ["big sail", "fairway"], madeBy, cancellation),
            Bundle(SeasonFins.Sandbar(demo(Designs[1])), SeasonBuilds.Sandbar, ["low water"], madeBy, cancellation),
            Bundle(SeasonFins.Eelgrass(demo(Designs[2])), SeasonBuilds.Eelgrass, ["weed"], madeBy, cancellation),
        ];
        store.Together(() =>
        {
            foreach (DesignBundle bundle in bundles)
                RefuseTaken(store, bundle);
            foreach (DesignBundle bundle in bundles)
            {
                BundleImport.Take(store, bundle);
                // As when a build is entered by hand: the stock goes down.
                foreach (BundledBuild build in bundle.Builds!.Builds)
                    BuildStock.Take(store, store.Builds.Get(build.Name));
            }
        });
        return StoreContents.Of(store);
    }

    private static void RefuseTaken(WorkshopStore store, DesignBundle bundle)
    {
        string? taken = store.Shelf.Find(bundle.Name) is { } design ? $"design \"{design.Name}\"" : bundle.Builds!.Builds.Select(build => store.Builds.Find(build.Name)).FirstOrDefault(build => build is not null) is { } build ? $"build \"{build.Name}\"" : null;
        if (taken is not null)
            throw new StoreException(StoreProblem.Wrong, $"There is a {taken} here already, and the demo season has one of that name.", "Load it into a store of its own: --store demo.finstore. Nothing was changed.");
    }

    private static DesignBundle Bundle(IReadOnlyList<SeasonRevision> revisions, IReadOnlyList<SeasonBuild> builds, IReadOnlyList<string> tags, string madeBy, CancellationToken cancellation)
    {
        using Assessor assessor = new();
        List<BundledRevision> bundled = [];
        foreach (SeasonRevision own in revisions)
        {
            // As when a design is put onto the shelf: with the text of every file that it names, and a picture.
            AssessmentResult result = assessor.Assess(new DesignReading(own.Design, []), AssessmentDepth.Shape, cancellation: cancellation);
            string text = DesignWriter.Write(result.Design ?? own.Design), name = own.Design.Name;
            bundled.Add(new(
                bundled.Count + 1,
                own.Parent,
                own.Parent is int parent ? Reference.Of(name, parent) : "",
                Sha256.Of(Encoding.UTF8.GetBytes(text)),
                own.Note,
                new(own.Day, new(19, 0), TimeSpan.Zero),
                madeBy,
                text,
                result.Blade is { } blade ? ShelfPicture.Of(blade) : null,
                null));
        }

        return new(madeBy, revisions[0].Design.Name, tags, bundled[0].MadeAt, bundled, new(SeasonStock.Items, [.. builds.Select(own => own.Bundled())]));
    }
}
