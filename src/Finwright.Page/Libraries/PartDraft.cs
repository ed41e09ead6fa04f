using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>A thing of the library that is being changed and not yet kept.</summary>
public interface ILibraryDraft
{
    /// <summary>What it is called.</summary>
    string Name { get; set; }

    /// <summary>Where it comes from, what to know of it.</summary>
    string Note { get; set; }

    /// <summary>What is to be said against it.</summary>
    IReadOnlyList<Finding> Findings { get; }

    /// <summary>The thing; null while something is wrong.</summary>
    LibraryContent? Content { get; }
}

/// <summary>A part of a design that is being changed: the same fields, ranges and rules as in the design itself.</summary>
public sealed class PartDraft : ILibraryDraft
{
    private readonly LibraryKind _kind;
    private IReadOnlyList<Finding> _refused = [];
    private IReadOnlyList<Finding> _findings;

    /// <summary>Begins with a part.</summary>
    public PartDraft(DesignPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        (_kind, Name, Note, Carrier) = (part.Kind, part.Name, part.Note, part.Carrier);
        _findings = Own(DesignReader.Read(DesignWriter.Write(Carrier)).Findings);
    }

    /// <inheritdoc/>
    public string Name { get; set; }

    /// <inheritdoc/>
    public string Note { get; set; }

    /// <summary>A design of which the fields of the kind count.</summary>
    public FinDesign Carrier { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings => [.. _refused, .. _findings];

    /// <summary>The fields that matter for what was chosen so far.</summary>
    public IReadOnlyList<string> Paths =>
    [
        .. PartFields.Of(_kind).Where(path => path switch
        {
            "$.base.deep_front_mm" => Carrier.Base.Box is BoxKind.TwoBoltDeep,
            "$.base.slot" => Carrier.Base.Box is BoxKind.LongSlot,
            "$.base.measured" => Carrier.Base.Box is BoxKind.Measured,
            "$.base.nut_depth_mm" => Carrier.Base.Box is not BoxKind.LongSlot,
            _ => true,
        }),
    ];

    /// <inheritdoc/>
    public LibraryContent? Content => Findings.Any(finding => finding.IsError) || string.IsNullOrWhiteSpace(Name) ? null : new DesignPart(_kind, Name.Trim(), Note.Trim(), Carrier);

    /// <summary>Changes a field.</summary>
    public void Set(string path, JsonNode? value) => Change(design => DesignEdit.Set(design, path, value));

    /// <summary>Changes the part.</summary>
    public void Change(Func<FinDesign, DesignReading> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        DesignReading reading = change(Carrier);
        if (reading.Design is { } design)
            (Carrier, _findings, _refused) = (design, Own(reading.Findings), []);
        else
            _refused = Own(reading.Findings);
    }

    private IReadOnlyList<Finding> Own(IEnumerable<Finding> findings) =>
        [.. findings.Where(finding => PartFields.Of(_kind).Any(path => finding.Path.StartsWith(path, StringComparison.Ordinal)))];
}
