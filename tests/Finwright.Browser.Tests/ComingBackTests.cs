using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class ComingBackTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_browser_that_was_closed_is_led_to_where_its_reader_was()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        await page.EvaluateAsync("() => document.querySelector('#pour').scrollIntoView()");
        await Wait.Until(() => page.EvaluateAsync<bool>("() => JSON.parse(localStorage.getItem('finwright-places'))[0].y > 500"));
        await page.EvaluateAsync("() => scrollBy(0, 150)");
        await Wait.Until(() => page.EvaluateAsync<bool>("() => JSON.parse(localStorage.getItem('finwright-places'))[0].y === scrollY"));
        double was = await page.EvaluateAsync<double>(TopOfPour);
        await page.CloseAsync();
        // A new window, opened at the address that the program shows when it is started again.
        await served.Kill();
        await served.Start();
        IPage again = await visit.Window(served.Entry.AbsoluteUri);
        await again.WaitForURLAsync("**/design/Sandbar%20delta");
        await Browser.Tests.Visit.IsLive(again);
        await Wait.Until(() => again.EvaluateAsync<bool>($"was => document.querySelector('#pour') && Math.abs(({TopOfPour})() - was) < 100", was));
        // What stands above has become taller or shorter: the reader stays with what was read.
        await again.EvaluateAsync("() => document.querySelector('#brief').style.setProperty('padding-bottom', '700px')");
        await Wait.Until(() => again.EvaluateAsync<bool>($"was => Math.abs(({TopOfPour})() - was) < 100", was));
        visit.NothingWentWrong();
    }

    private const string TopOfPour = "() => document.querySelector('#pour').getBoundingClientRect().top";
}
