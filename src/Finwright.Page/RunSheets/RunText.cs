using Finwright.Page.Words;
using Finwright.Papers.Words;

namespace Finwright.Page.RunSheets;

/// <summary>Lays steps out in the words of the build sheet.</summary>
/// <param name="reader">Whoever reads it.</param>
internal sealed class RunText(Reader reader)
{
    private int _steps;

    public Reader T => reader;

    public Tongue Tongue => reader.Tongue;

    public SheetWords Words => reader.Tongue.Words.Sheet;

    /// <summary>The next step.</summary>
    /// <param name="words">What to do and why.</param>
    /// <param name="cautions">What to take care of, in the words of <see cref="Finwright.Making.Quantities.Cautions"/>.</param>
    public RunStep Step(StepWords words, params string[] cautions) => Step(words.Text, words.Reason, cautions);

    /// <inheritdoc cref="Step(StepWords, string[])"/>
    public RunStep Step(string text, string reason, params string[] cautions) =>
        new() { Id = $"s{++_steps}", Text = text, Reason = reason, Cautions = [.. cautions.Select(Tongue.Words.Verdicts.Caution)] };

    public string Part(string name) => Tongue.Words.Names.Part(name);

    /// <summary>A length in millimetres whatever the reader's units: programs of printers know no other.</summary>
    public string Millimetres(double metres, int decimals) => $"{Tongue.Number(1e3 * metres, decimals)} mm";
}
