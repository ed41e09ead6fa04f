using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Hosting;
using Finwright.Page.Settings;
using Finwright.Page.Words;
using Finwright.Page.Works;
using Finwright.Papers;

namespace Finwright.Page.Tests;

/// <summary>A demo design, worked out to its strength once a test run, and readers who look at it.</summary>
internal static class MadeFin
{
    private static readonly Lazy<AssessmentResult> SailingMade = new(Work);

    /// <summary>An upright fin with box bolts and carbon rods: water and strength.</summary>
    public static AssessmentResult Sailing => SailingMade.Value;

    /// <summary>What is known when the fin was worked out in full.</summary>
    /// <param name="session">An open design.</param>
    /// <param name="change">What else is different.</param>
    public static void Publish(DesignSession session, Func<Standing, Standing>? change = null)
    {
        session.Stop();
        session.Publish(session.Now.Version, now =>
        {
            Standing known = now with { Sailing = Sailing, SailingVersion = now.Version, SailingIsQuick = false, Reach = Reach.Sailing, Work = null };
            return change is null ? known : change(known);
        });
    }

    /// <summary>A reader.</summary>
    public static Reader Reader(PaperLanguage language = PaperLanguage.English, PaperUnits units = PaperUnits.Metric)
    {
        PageSettings settings = new() { StorePath = ReaderFolders.NewStorePath(), MadeBy = "Finwright in trial" };
        ReaderSettings choice = new(settings);
        choice.Choose(new() { Language = language, Units = units });
        return new(choice, Desk.InMemory(), TimeProvider.System);
    }

    /// <summary>The top folder of the repository.</summary>
    public static string Root { get; } = Top();

    private static AssessmentResult Work()
    {
        using Assessor assessor = new(curves: CacheFolder.OpenCurves());
        return assessor.Assess(DesignReader.ReadFile(Path.Combine(Root, "examples", "fairway-upright.fin.json")), AssessmentDepth.Strength);
    }

    private static string Top()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "finwright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run from within the repository.");
        return folder;
    }
}
