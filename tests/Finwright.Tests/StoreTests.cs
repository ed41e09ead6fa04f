using System.Text.Json;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Tests;

/// <summary>The commands that care for the workshop's store.</summary>
public sealed class StoreTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private string File => _folder["workshop.finstore"];

    [Fact]
    public void A_store_that_is_not_there_is_told_and_not_made()
    {
        ProgramRun run = ProgramRun.Of("store", "--store", File);
        Assert.Equal((ExitCode.Good, ""), (run.ExitCode, run.Error));
        Assert.Contains("not there yet", run.Out, StringComparison.Ordinal);
        ProgramRun.Of("store", "restore", "outing", "1", "--store", File).IsRefusal();
        ProgramRun.Of("store", "backup", _folder["copy.finstore"], "--store", File).IsRefusal();
        Assert.Empty(_folder.Files());
    }

    [Fact]
    public void What_a_store_holds_is_counted()
    {
        Fill();
        JsonElement answer = ProgramRun.Of("store", "--store", File, "--json").Json();
        Assert.Equal("finwright-store", answer.GetProperty("kind").GetString());
        Assert.Equal((1, 1), (answer.GetProperty("answer").GetProperty("outings").GetInt32(), answer.GetProperty("answer").GetProperty("deleted").GetInt32()));
        ProgramRun run = ProgramRun.Of("store", "--store", File);
        Assert.Contains("      1  outings\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("      1  deleted things that can be had back\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_deleted_outing_is_listed_with_its_number_and_comes_back()
    {
        Fill();
        Assert.Matches(@"(?m)^  outing +2  \d{4}-\d\d-\d\d  \d{4}-\d\d-\d\d  2027-05-02 the bay$", ProgramRun.Of("store", "bin", "--store", File).Out);
        Assert.Equal("Back again: outing 2, 2027-05-02 the bay.\n", ProgramRun.Of("store", "restore", "outing", "2", "--store", File).Out);
        Assert.Equal("Nothing is deleted.\n", ProgramRun.Of("store", "bin", "--store", File).Out);
        using WorkshopStore store = WorkshopStore.Open(File);
        Assert.Equal(2, store.Outings.List().Count);
    }

    [Theory]
    [InlineData("boat", "2")]
    [InlineData("outing", "two")]
    [InlineData("outing", "-2")]
    [InlineData("outing", "1")]
    [InlineData("design", "2")]
    public void What_does_not_lie_in_the_bin_is_refused(string kind, string number)
    {
        Fill();
        ProgramRun.Of("store", "restore", kind, number, "--store", File).IsRefusal();
    }

    [Fact]
    public void A_backup_is_a_store_and_never_replaces_a_file()
    {
        Fill();
        string copy = _folder["copy.finstore"];
        Assert.StartsWith($"Wrote {copy}: ", ProgramRun.Of("store", "backup", copy, "--store", File).Out, StringComparison.Ordinal);
        Assert.Equal(1, ProgramRun.Of("store", "--store", copy, "--json").Json().GetProperty("answer").GetProperty("outings").GetInt32());
        Assert.Contains("exists already", ProgramRun.Of("store", "backup", copy, "--store", File).IsRefusal().Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_store_is_said_to_be_sound_and_its_rescue_keeps_everything()
    {
        Fill();
        ProgramRun check = ProgramRun.Of("store", "check", "--store", File);
        Assert.Equal(ExitCode.Good, check.ExitCode);
        Assert.EndsWith("\nThe store is sound.\n", check.Out, StringComparison.Ordinal);
        ProgramRun rescue = ProgramRun.Of("store", "rescue", _folder["rescued.finstore"], "--store", File);
        Assert.Equal(ExitCode.Good, rescue.ExitCode);
        Assert.Contains("  outing                      2\n", rescue.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_damaged_store_is_told_with_what_to_do_and_what_lies_beside_the_damage_is_rescued()
    {
        Fill();
        byte[] bytes = System.IO.File.ReadAllBytes(File);
        // Behind the header of a hundred bytes begins the list of tables: without it the database finds none of them.
        bytes.AsSpan(100, 400).Clear();
        System.IO.File.WriteAllBytes(File, bytes);
        ProgramRun looked = ProgramRun.Of("store", "--store", File);
        Assert.Contains("      1  outings\n", looked.Out, StringComparison.Ordinal);
        Assert.Contains("is damaged", looked.Error, StringComparison.Ordinal);
        Assert.Contains("store rescue", looked.Error.ReplaceLineEndings(" ").Replace("            ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Fails, ProgramRun.Of("store", "check", "--store", File).ExitCode);
        ProgramRun.Of("store", "restore", "outing", "2", "--store", File).IsRefusal();
        ProgramRun.Of("store", "backup", _folder["copy.finstore"], "--store", File);
        Assert.False(System.IO.File.Exists(_folder["copy.finstore"]));
        ProgramRun rescue = ProgramRun.Of("store", "rescue", _folder["rescued.finstore"], "--store", File, "--json");
        Assert.Equal(ExitCode.Fails, rescue.ExitCode);
        JsonElement answer = rescue.Json().GetProperty("answer");
        Assert.Equal(2, answer.GetProperty("kept").GetInt32());
        Assert.Equal(1, ProgramRun.Of("store", "--store", _folder["rescued.finstore"], "--json").Json().GetProperty("answer").GetProperty("outings").GetInt32());
        Assert.Equal(bytes, System.IO.File.ReadAllBytes(File));
    }

    [Fact]
    public void A_file_that_is_no_store_is_refused_and_not_touched()
    {
        string file = _folder.Write("notes.txt", "what the wind was like");
        Assert.Contains("is not a workshop store", ProgramRun.Of("store", "--store", file).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Equal("what the wind was like", System.IO.File.ReadAllText(file));
        Assert.Equal(["notes.txt"], _folder.Files());
    }

    private void Fill()
    {
        using WorkshopStore store = WorkshopStore.Open(File);
        store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "the estuary" }, null);
        Outing deleted = store.Outings.Add(new() { SailedOn = new(2027, 5, 2), Place = "the bay" }, null);
        store.Outings.Delete(deleted.Id);
    }
}
