using System.Text;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Papers;

/// <summary>
/// What papers were made, as <c>papers.json</c> and <c>finwright papers --json</c> give it. Field names are these properties in lower case with underscores.
/// </summary>
public sealed record PapersSummary
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = PackFolder.OfPapers.ListKind;

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>Name of the fin; null when the design could not be read.</summary>
    public required string? Name { get; init; }

    /// <summary>SHA-256 of the design's content.</summary>
    public required string DesignSha256 { get; init; }

    /// <summary>Date on the papers.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Paper.</summary>
    public required string Paper { get; init; }

    /// <summary>Language.</summary>
    public required PaperLanguage Language { get; init; }

    /// <summary>Units.</summary>
    public required PaperUnits Units { get; init; }

    /// <summary>What the ruler across an earlier print measured; 100 for a printer that prints to scale.</summary>
    public required double RulerAcrossMm { get; init; }

    /// <summary>What the ruler down an earlier print measured.</summary>
    public required double RulerDownMm { get; init; }

    /// <summary>Verdicts that fail; the build sheet's first page says so.</summary>
    public required int VerdictsThatFail { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>The files.</summary>
    public IReadOnlyList<FileSummary> Files { get; init; } = [];

    /// <summary>Sums up what the papers stand on.</summary>
    /// <param name="result">The fin.</param>
    /// <param name="settings">How the papers are made.</param>
    public static PapersSummary Of(AssessmentResult result, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(settings);
        int fail = result.HasErrors ? 0 : AllVerdicts.Of(result).Count(verdict => verdict.State is VerdictState.Fails);
        string checks = fail switch { 0 => "No check fails.", 1 => "One check fails; it stands on the first page of the build sheet.", _ => $"{fail} checks fail; they stand on the first page of the build sheet." };
        return new()
        {
            MadeBy = $"Finwright {settings.ProgramVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            Date = settings.Date,
            Paper = settings.Paper.Name,
            Language = settings.Language,
            Units = settings.Units,
            RulerAcrossMm = Math.Round(1e3 * settings.Rulers.Across, 3),
            RulerDownMm = Math.Round(1e3 * settings.Rulers.Down, 3),
            VerdictsThatFail = fail,
            Sentence = result.HasErrors ? "No papers were made." : $"Papers of {result.Design?.Name} on {settings.Paper.Name}. {checks} Print at 100 % and measure the rulers before you use a template.",
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }

    /// <summary>The summary with the papers, and all files with the summary's own among them.</summary>
    /// <param name="papers">The papers.</param>
    public (PapersSummary Summary, IReadOnlyList<PackFile> Files) With(IReadOnlyList<PackFile> papers)
    {
        ArgumentNullException.ThrowIfNull(papers);
        const string what = "which papers these are and how they were made, for programs";
        string list = PackFolder.OfPapers.ListName;
        PapersSummary full = this with { Files = [.. papers.Select(paper => new FileSummary(paper.Path, paper.What)), new(list, what)] };
        return (full, [.. papers, new(list, Encoding.UTF8.GetBytes(AnswerJson.Write(full)), what)]);
    }
}
