using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Works;
using Finwright.Workshop.Comparing;

namespace Finwright.Tests.EndToEnd;

/// <summary>The page works out what the command line does, with its own session, in its own order and from its own memory.</summary>
[Collection(FiveFins.Name)]
public sealed class PageAgreesTests(PackedFins fins)
{
    // A fin takes a minute or two on a small computer; beyond this it hangs.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    // Each takes about a minute: by hand (docs/evidence.md).
    public static TheoryData<string> Names => [.. PackedFins.Names];

    [Theory]
    [Trait("Pace", "long")]
    [MemberData(nameof(Names))]
    public async Task The_page_shows_the_numbers_of_the_command_line(string name)
    {
        FinResults called = fins[name].Lines;
        FinResults shown = await OnThePage(DesignReader.ReadFile(fins[name].Design).Design!, TestContext.Current.CancellationToken);
        Assert.Equal(called.DesignSha256, shown.DesignSha256);
        Assert.Equal(Enum.GetValues<ResultGroup>(), shown.Groups.Order());
        Assert.Equal(called.Lines.Select(line => line.Key), shown.Lines.Select(line => line.Key), StringComparer.Ordinal);
        foreach ((ResultLine one, ResultLine other) in called.Lines.Zip(shown.Lines))
        {
            Assert.Equal((one.Key, one.Word, one.Unit), (other.Key, other.Word, other.Unit));
            AreEqual(one.Key, one.Value, other.Value);
            AreEqual(one.Key, one.Low, other.Low);
            AreEqual(one.Key, one.High, other.High);
        }
    }

    private async Task<FinResults> OnThePage(FinDesign design, CancellationToken cancellation)
    {
        using Desk desk = Desk.Open(new() { StorePath = fins.Folder[$"{design.Name}.finstore"], MadeBy = "Finwright in trial" });
        desk.Change(store => store.Shelf.Add(design.Name, new(design, Picture: null, "", "test"), []));
        using WorkFloor floor = new(TimeProvider.System);
        using OpenDesigns open = new(desk, floor, TimeProvider.System);
        DesignSession session = open.Open(design.Name)!;
        long since = TimeProvider.System.GetTimestamp();
        // The page keeps all results with the revision as soon as everything is worked out.
        while (session.Now.Reach < Reach.Everything || Kept() is null)
        {
            Assert.Null(session.Now.Fault);
            Assert.True(TimeProvider.System.GetElapsedTime(since) < Patience, $"the page stands at {session.Now.Reach}");
            await Task.Delay(TimeSpan.FromMilliseconds(50), cancellation);
        }

        return Kept()!;

        FinResults? Kept() => desk.Ask(store => Predictions.Kept(store, session.Base, desk.ProgramVersion));
    }

    // Relative; both have nine digits, and the same bits are promised.
    private static void AreEqual(string key, double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is double one && actual is double other)
            Assert.True(Math.Abs(one - other) <= 1e-9 * Math.Abs(one), $"{key}: {one} on the command line, {other} on the page");
    }
}
