using System.Text;
using Finwright.Assessment.Packing;

namespace Finwright.Assessment.Tests.Packing;

public sealed class PackFolderTests : IDisposable
{
    private readonly string _place = Directory.CreateTempSubdirectory("finwright-pack-").FullName;

    private string Target => Path.Combine(_place, "pack");

    public void Dispose() => Directory.Delete(_place, recursive: true);

    [Fact]
    public void Write_makes_a_new_folder_with_its_parents_and_nothing_beside_it()
    {
        string deep = Path.Combine(_place, "a", "b");
        PackFolder.OfPacks.Write(deep, Pack("one"), overwrite: false, TestContext.Current.CancellationToken);
        Assert.Equal(["parts/blade.stl", "summary.json"], Names(deep));
        Assert.Equal("a", Path.GetFileName(Assert.Single(Directory.GetFileSystemEntries(_place))));
    }

    [Fact]
    public void Write_over_an_earlier_pack_takes_away_what_the_new_one_lacks_and_keeps_the_makers_own_files()
    {
        PackFolder.OfPacks.Write(Target, [.. Pack("one", "plate-1.3mf", "plate-2.3mf")], overwrite: false, TestContext.Current.CancellationToken);
        File.WriteAllText(Path.Combine(Target, "my notes.txt"), "sand the tip");
        PackFolder.OfPacks.Write(Target, [.. Pack("two", "plate-1.3mf")], overwrite: false, TestContext.Current.CancellationToken);
        Assert.Equal(["my notes.txt", "parts/blade.stl", "plate-1.3mf", "summary.json"], Names(Target));
        Assert.Equal("two", File.ReadAllText(Path.Combine(Target, "parts", "blade.stl")));
    }

    [Fact]
    public void Write_into_a_folder_of_other_files_is_refused_unless_allowed_and_then_keeps_them()
    {
        Directory.CreateDirectory(Target);
        File.WriteAllText(Path.Combine(Target, "holiday.jpg"), "sea");
        PackFolderException refusal = Assert.Throws<PackFolderException>(() => PackFolder.OfPacks.Write(Target, Pack("one"), overwrite: false, TestContext.Current.CancellationToken));
        Assert.Contains("--overwrite", refusal.Remedy, StringComparison.Ordinal);
        Assert.Equal(["holiday.jpg"], Names(Target));
        PackFolder.OfPacks.Write(Target, Pack("one"), overwrite: true, TestContext.Current.CancellationToken);
        Assert.Equal(["holiday.jpg", "parts/blade.stl", "summary.json"], Names(Target));
    }

    [Fact]
    public void Write_of_many_packs_at_once_into_one_folder_leaves_one_whole_pack()
    {
        string[] texts = ["one", "two", "three", "four", "five", "six"];
        Parallel.ForEach(texts, new ParallelOptions { MaxDegreeOfParallelism = texts.Length, CancellationToken = TestContext.Current.CancellationToken }, text =>
            PackFolder.OfPacks.Write(Target, [.. Pack(text, "plate-1.3mf")], overwrite: false, TestContext.Current.CancellationToken));
        Assert.Equal(["parts/blade.stl", "plate-1.3mf", "summary.json"], Names(Target));
        Assert.Contains(File.ReadAllText(Path.Combine(Target, "parts", "blade.stl")), texts, StringComparer.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(_place));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{\"kind\":\"something else\",\"files\":[]}")]
    [InlineData("{\"kind\":\"finwright-pack\"}")]
    [InlineData("{\"kind\":7,\"files\":[]}")]
    public void A_summary_that_is_not_ours_marks_no_earlier_pack(string summary)
    {
        Directory.CreateDirectory(Target);
        File.WriteAllText(Path.Combine(Target, "summary.json"), summary);
        Assert.Throws<PackFolderException>(() => PackFolder.OfPacks.Check(Target, overwrite: false));
    }

    [Theory]
    [InlineData("../precious.stl")]
    [InlineData("parts/../../precious.stl")]
    [InlineData("/etc/precious.stl")]
    [InlineData("parts/.hidden.stl")]
    [InlineData("notes.docx")]
    public void A_summary_that_points_elsewhere_deletes_nothing(string name)
    {
        string precious = Path.Combine(_place, "precious.stl");
        File.WriteAllText(precious, "keep me");
        Directory.CreateDirectory(Path.Combine(Target, "parts"));
        File.WriteAllText(Path.Combine(Target, "notes.docx"), "keep me");
        File.WriteAllText(Path.Combine(Target, "parts", ".hidden.stl"), "keep me");
        File.WriteAllText(Path.Combine(Target, "summary.json"), $$"""{"kind":"finwright-pack","files":[{"file":"{{name}}"}]}""");
        PackFolder.OfPacks.Write(Target, Pack("one"), overwrite: false, TestContext.Current.CancellationToken);
        Assert.True(File.Exists(precious));
        Assert.True(File.Exists(Path.Combine(Target, "notes.docx")));
        Assert.True(File.Exists(Path.Combine(Target, "parts", ".hidden.stl")));
    }

    [Fact]
    public void A_stopped_write_leaves_the_folder_as_it_was()
    {
        PackFolder.OfPacks.Write(Target, Pack("one"), overwrite: false, TestContext.Current.CancellationToken);
        Assert.Throws<OperationCanceledException>(() => PackFolder.OfPacks.Write(Target, Pack("two"), overwrite: false, new CancellationToken(canceled: true)));
        Assert.Equal(["parts/blade.stl", "summary.json"], Names(Target));
        Assert.Equal("one", File.ReadAllText(Path.Combine(Target, "parts", "blade.stl")));
        Assert.Throws<OperationCanceledException>(() => PackFolder.OfPacks.Write(Path.Combine(_place, "fresh"), Pack("two"), overwrite: false, new CancellationToken(canceled: true)));
        Assert.Equal("pack", Path.GetFileName(Assert.Single(Directory.GetFileSystemEntries(_place))));
    }

    [Fact]
    public void A_file_in_the_way_is_refused_with_a_remedy()
    {
        File.WriteAllText(Target, "a file");
        PackFolderException refusal = Assert.Throws<PackFolderException>(() => PackFolder.OfPacks.Check(Target, overwrite: true));
        Assert.Contains("is a file", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<PackFolderException>(() => PackFolder.OfPacks.Check(Path.Combine(Target, "below"), overwrite: false));
    }

    [Fact]
    public void What_an_interrupted_write_left_is_cleared_away()
    {
        Directory.CreateDirectory(Target);
        string left = PackFolder.WorkFolder(Target);
        Directory.CreateDirectory(left);
        File.WriteAllText(Path.Combine(left, "old.stl"), "half");
        PackFolder.OfPacks.Write(Target, Pack("one"), overwrite: false, TestContext.Current.CancellationToken);
        Assert.Equal(["parts/blade.stl", "summary.json"], Names(Target));
        Assert.False(Directory.Exists(left));
    }

    private static PackFile[] Pack(string content, params string[] more)
    {
        string[] names = [.. more, "parts/blade.stl"];
        string list = string.Join(",", names.Select(name => $$"""{"file":"{{name}}"}"""));
        return [.. names.Select(name => Named(name, content)), Named("summary.json", $$"""{"kind":"finwright-pack","files":[{{list}}]}""")];
    }

    private static PackFile Named(string name, string content) => new(name, Encoding.UTF8.GetBytes(content), "");

    private static string[] Names(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
