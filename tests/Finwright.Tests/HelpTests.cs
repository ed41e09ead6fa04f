using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class HelpTests
{
    public static TheoryData<string> Commands => [.. ProgramCommands.All.Select(command => command.Call["finwright ".Length..])];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Help_of_a_command_says_what_it_does_how_to_call_it_and_gives_an_example(string command)
    {
        ProgramRun run = ProgramRun.Of([.. command.Split(' '), "--help"]);
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Contains($"finwright {command}", run.Out, StringComparison.Ordinal);
        foreach (string heading in (string[])["How to call it", "Options", "Example", "Exit codes", "--trace"])
            Assert.Contains(heading, run.Out, StringComparison.Ordinal);
        Assert.Equal("", run.Error);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    [InlineData("")]
    public void Help_fits_80_columns(string command)
    {
        ProgramRun run = command.Length == 0 ? ProgramRun.Of() : ProgramRun.Of([.. command.Split(' '), "--help"]);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Help_of_a_command_below_a_command_is_called_by_its_whole_path_and_the_command_above_names_it()
    {
        ProgramRun below = ProgramRun.Of("bench", "fit", "--help"), above = ProgramRun.Of("bench", "--help");
        Assert.Contains("finwright bench fit FILE READINGS [options]", below.Out, StringComparison.Ordinal);
        Assert.Contains("--trace", below.Out, StringComparison.Ordinal);
        Assert.Contains("finwright bench [FILE] [options]\n  finwright bench COMMAND ...", above.Out, StringComparison.Ordinal);
        Assert.Contains("\n  fit ", above.Out, StringComparison.Ordinal);
        Assert.All((below.Out + above.Out).Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Help_of_the_program_names_every_command_and_every_exit_code()
    {
        ProgramRun run = ProgramRun.Of("--help");
        Assert.All(Commands.Where(command => !command.Data.Contains(' ', StringComparison.Ordinal)), command => Assert.Contains($"\n  {command.Data} ", run.Out, StringComparison.Ordinal));
        foreach (ExitCode code in Enum.GetValues<ExitCode>())
            Assert.Contains($"{(int)code} ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Called_without_words_it_shows_the_help() => Assert.Equal(ProgramRun.Of("--help").Out, ProgramRun.Of().Out);

    [Fact]
    public void Version_is_the_assembly_s_and_nothing_else() =>
        Assert.Matches(@"^finwright \d+\.\d+\.\d+\n$", ProgramRun.Of("--version").Out);

    [Theory]
    [InlineData("sail")]
    [InlineData("check")]
    [InlineData("check", "a.fin.json", "b.fin.json")]
    [InlineData("check", "a.fin.json", "--colour")]
    [InlineData("pack", "a.fin.json")]
    [InlineData("new", "a.fin.json", "--span-mm", "deep")]
    [InlineData("new", "a.fin.json", "--span-mm", "NaN")]
    [InlineData("new", "a.fin.json", "--family", "banana")]
    [InlineData("section", "naca-0010", "--points", "1")]
    [InlineData("--trace")]
    [InlineData("bench")]
    [InlineData("bench", "fit")]
    [InlineData("bench", "fit", "a.fin.json")]
    [InlineData("bench", "a.fin.json", "--root", "loose")]
    [InlineData("materials", "petg-printed", "epoxy-ambient")]
    [InlineData("strength", "a.fin.json", "--root", "loose")]
    [InlineData("cure-slab", "--thickness-mm", "0")]
    [InlineData("cure-slab", "--infill", "75")]
    [InlineData("motion")]
    [InlineData("motion", "a.gcode", "--insert-stops", "b.gcode")]
    [InlineData("motion", "a.gcode", "--plate", "2")]
    [InlineData("resins", "glue")]
    [InlineData("resins", "--copy", "my.resin.json")]
    [InlineData("resins", "fit")]
    [InlineData("resins", "fit", "a.csv", "--pot-life-minutes", "40")]
    [InlineData("print")]
    [InlineData("outing", "measure")]
    [InlineData("outing", "add", "a.gpx", "--grip", "6")]
    [InlineData("outing", "show", "first")]
    [InlineData("outing", "compare", "one")]
    [InlineData("cure", "a.fin.json", "--settings", "b.part.json")]
    public void A_wrong_call_is_refused_with_one_message(params string[] words) => ProgramRun.Of(words).IsRefusal();

    [Fact]
    public void A_word_with_an_at_sign_is_a_word_not_a_file_of_arguments() =>
        Assert.Contains("@home.fin.json", ProgramRun.Of("check", "@home.fin.json").IsRefusal().Error, StringComparison.Ordinal);
}
