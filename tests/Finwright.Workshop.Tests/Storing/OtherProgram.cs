using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Another program that has the store open: this assembly, started again to do one of the things below instead of tests.</summary>
internal static class OtherProgram
{
    private const string Word = "other-program";

    /// <summary>Starts it.</summary>
    /// <param name="task">What it does.</param>
    /// <param name="store">The store's file.</param>
    /// <param name="name">What its designs are called.</param>
    /// <param name="through">A program, with its own arguments, that starts it; none for starting it at once.</param>
    public static Process Start(string task, string store, string name, params IReadOnlyList<string> through)
    {
        string[] words = [.. through, "dotnet", typeof(OtherProgram).Assembly.Location, Word, task, store, name];
        return Process.Start(new ProcessStartInfo(words[0], words[1..]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true })!;
    }

    /// <summary>Starts it and waits for its end.</summary>
    /// <returns>Its lines; the last one "end" when it came to its end.</returns>
    public static async Task<IReadOnlyList<string>> Run(string task, string store, string name, params IReadOnlyList<string> through)
    {
        using Process process = Start(task, store, name, through);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, output + await error);
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Adds a design with a picture, a build of it and an outing with a track: one change that is whole or not at all.</summary>
    public static void AddSeason(WorkshopStore store, string name, int points) =>
        AddSeason(store, name, points, () => store.Shelf.Add(name, SampleFins.BareEntry(name), ["season"]).Id);

    private static void AddSeason(WorkshopStore store, string name, int points, Func<long> addDesign) => store.Together(() =>
    {
        Build build = store.Builds.Add(new() { RevisionId = addDesign(), Name = name, Note = new('n', points % 900) });
        byte[] track = new byte[points];
        track.AsSpan().Fill((byte)points);
        store.Outings.Add(new() { SailedOn = new(2027, 5, 1), BuildId = build.Id, Place = name }, new(name, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(name))), track));
        store.Outings.Change(store.Outings.List(build.Id)[0] with { Grip = 3 });
    });

    [ModuleInitializer]
    internal static void Initialise()
    {
        string[] words = Environment.GetCommandLineArgs();
        int at = Array.IndexOf(words, Word);
        if (at < 0)
            return;
        try
        {
            Do(words[at + 1], words[at + 2], words[at + 3]);
            Say("end");
            Environment.Exit(0);
        }
        catch (Exception problem)
        {
            Console.Error.WriteLine(problem);
            Environment.Exit(1);
        }
    }

    private static void Do(string task, string path, string name)
    {
        switch (task)
        {
            case "add until killed":
                using (WorkshopStore store = WorkshopStore.Open(path))
                {
                    for (int i = 0; ; i++)
                    {
                        string season = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
                        AddSeason(store, season, i * 7919 % 20_000, () => AddRevision(store, store.Connection.Insert("design", ("name", season), ("added_at", DateTimeOffset.UnixEpoch)), 1));
                        Say("added " + season);
                        if (i % 3 == 2)
                        {
                            store.Together(() => AddRevision(store, store.Shelf.Find(season)!.Id, 2));
                            Say("revised " + season);
                        }
                    }
                }

            case "add 100":
                using (WorkshopStore store = WorkshopStore.Open(path))
                {
                    for (int i = 0; i < 100; i++)
                        store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = name }, null);
                }

                break;

            case "hold a change until told":
                using (WorkshopStore store = WorkshopStore.Open(path))
                {
                    store.Together(() =>
                    {
                        AddSeason(store, name, 100);
                        Say("holding");
                        Console.In.ReadLine();
                    });
                }

                break;

            case "add until refused":
                using (WorkshopStore store = WorkshopStore.Open(path))
                {
                    try
                    {
                        for (int i = 0; ; i++)
                        {
                            string season = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
                            AddSeason(store, season, 20_000);
                            Say("added " + season);
                        }
                    }
                    catch (StoreException refusal)
                    {
                        Say($"{refusal.Problem}: {refusal.Message}");
                    }
                }

                break;

            case "back up":
                using (WorkshopStore store = WorkshopStore.Open(path))
                {
                    try
                    {
                        StoreBackup.Write(store, Path.Combine(Path.GetDirectoryName(path)!, name));
                    }
                    catch (StoreException refusal)
                    {
                        Say($"{refusal.Problem}: {refusal.Message}");
                    }
                }

                break;

            case "look and try to change":
                try
                {
                    using WorkshopStore store = WorkshopStore.Open(path);
                    Say($"outings {store.Outings.List().Count}");
                    Say($"refusal {store.Refusal?.Problem}");
                    store.Outings.Add(new() { SailedOn = new(2027, 5, 2) }, null);
                    Say("changed");
                }
                catch (StoreException refusal)
                {
                    Say($"{refusal.Problem}: {refusal.Message}");
                }

                break;

            default:
                throw new ArgumentException($"Unknown task {task}.", nameof(task));
        }
    }

    /// <summary>Adds a revision as the shelf does, of a text that need not be worked out: writing designs is most of a short life.</summary>
    private static long AddRevision(WorkshopStore store, long design, int number)
    {
        long revision = store.Connection.Insert(
            "revision",
            ("design_id", design), ("number", number), ("hash", new string('0', 64)), ("note", ""), ("made_at", DateTimeOffset.UnixEpoch), ("made_by", "test"), ("text", new string('t', 3000)));
        store.Connection.Insert("picture", ("revision_id", revision), ("svg", "<svg/>"));
        return revision;
    }

    // One write to the pipe a line, so that a killed program leaves whole lines or none.
    private static void Say(string line)
    {
        Console.Out.Write(line + "\n");
        Console.Out.Flush();
    }
}
