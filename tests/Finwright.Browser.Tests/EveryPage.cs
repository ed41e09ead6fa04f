using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>The pages of the invented season, each by a name for its picture. A page that is added is added here.</summary>
internal static class EveryPage
{
    /// <summary>Name and address.</summary>
    public static readonly IReadOnlyDictionary<string, string> Paths = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["shelf"] = "/",
        ["sheet"] = "/design/Sandbar%20delta",
        ["revisions"] = "/design/Fairway%20upright/revisions",
        ["start"] = "/start",
        ["compare"] = "/compare?a=Sandbar%20delta&b=Fairway%20upright",
        ["build"] = "/builds/Sandbar%20one",
        ["stock"] = "/stock",
        ["outings"] = "/outings",
        ["outing"] = "/outings/1",
        ["outings-compare"] = "/outings/compare",
        ["libraries"] = "/libraries",
        ["boxes"] = "/libraries/box",
        ["measure-box"] = "/libraries/box/measure",
        ["resins"] = "/libraries/resin",
        ["cup"] = "/libraries/resin/cup",
        ["phone"] = "/phone",
        ["runs"] = "/run",
        ["help"] = "/help",
        ["glossary"] = "/help/glossary",
        ["evidence"] = "/help/evidence",
        ["tour"] = "/tour",
        ["settings"] = "/settings",
        ["not-there"] = "/nowhere",
    };

    /// <summary>Opens one and waits until it listens.</summary>
    /// <param name="visit">The browser.</param>
    /// <param name="name">Name of the page.</param>
    public static async Task<IPage> Open(Visit visit, string name)
    {
        // The browser notes a page that is not there as an error of its own.
        visit.MayLoseServer = name == "not-there";
        if (name == "tour")
        {
            // The tour leads on to a design of its own.
            await visit.Go(Paths[name]);
            await visit.Page.WaitForURLAsync("**/design/**");
            await Visit.IsLive(visit.Page);
            return visit.Page;
        }

        if (name != "runs")
            return await visit.Go(Paths[name]);
        // Run sheets are plain pages: they have nothing to wait for.
        await visit.Page.GotoAsync(new Uri(new Uri(visit.Page.Url), Paths[name]).AbsoluteUri);
        return visit.Page;
    }
}
