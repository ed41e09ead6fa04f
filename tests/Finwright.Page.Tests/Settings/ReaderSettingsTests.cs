using Finwright.Page.Hosting;
using Finwright.Page.Settings;
using Finwright.Papers;

namespace Finwright.Page.Tests.Settings;

public sealed class ReaderSettingsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-reader-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_choice_is_kept_and_open_pages_are_told_only_when_they_look_other()
    {
        ReaderSettings settings = new(Page);
        int told = 0;
        settings.Changed += () => told++;
        settings.Choose(settings.Choice with { TourSeen = true });
        Assert.Equal(0, told);
        settings.Choose(settings.Choice with { Language = PaperLanguage.German, Units = PaperUnits.Inch });
        Assert.Equal(1, told);
        Assert.Equal(settings.Choice, new ReaderSettings(Page).Choice);
    }

    private PageSettings Page => new() { StorePath = Path.Combine(_folder, "w.finstore"), MadeBy = "test" };
}
