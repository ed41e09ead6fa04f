namespace Finwright;

/// <summary>A part of the program whose numbers are held against the world.</summary>
public interface IEvidenceArea
{
    /// <summary>Name of its section in <c>docs/evidence.md</c>.</summary>
    static abstract string Name { get; }

    /// <summary>Every comparison, topic by topic.</summary>
    static abstract IReadOnlyList<EvidenceRow> Rows { get; }
}

/// <summary>Holds every comparison of one area, and its section of the document.</summary>
/// <typeparam name="TArea">The area.</typeparam>
public abstract class EvidenceTests<TArea>
    where TArea : IEvidenceArea
{
#pragma warning disable CA1000 // Data of a theory is static.
    public static TheoryData<int, string> Cases()
#pragma warning restore CA1000
    {
        TheoryData<int, string> cases = [];
        foreach ((int index, EvidenceRow row) in TArea.Rows.Index())
            cases.Add(index, row.What);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Value_agrees_with_its_source_or_is_told_as_a_miss(int index, string what)
    {
        EvidenceRow row = TArea.Rows[index];
        Assert.Equal(what, row.What);
        Assert.True(double.IsFinite(row.Computed), what);
        row.Hold();
    }

    [Fact]
    public void Document_shows_what_the_tests_find() => EvidenceDocument.Hold(TArea.Name, TArea.Rows);
}
