using Finwright.Design;

namespace Finwright.Papers.Words;

/// <summary>What the build sheet says. Numbers come formatted, names in the reader's language.</summary>
public abstract partial class SheetWords
{
    /// <summary>What the paper is.</summary>
    public abstract string Kind { get; }

    /// <summary>Head of a column to tick.</summary>
    public abstract string Done { get; }

    /// <summary>So many parts.</summary>
    public abstract string Parts(int count);

    /// <summary>So many plates.</summary>
    public abstract string Plates(int count);

    /// <summary>So many cups.</summary>
    public abstract string Cups(int count);

    /// <summary>So many stops; "no stop" for none.</summary>
    public abstract string Stops(int count);

    /// <summary>Standing or lying.</summary>
    public abstract string Lies(PrintAttitude attitude);

    /// <summary>A part in a table.</summary>
    public abstract string PartColumn { get; }

    /// <summary>A limit that must not be passed upward.</summary>
    public abstract string AtMost(string limit);

    /// <summary>A limit that must not be passed downward.</summary>
    public abstract string AtLeast(string limit);

    /// <summary>From one number to another.</summary>
    public abstract string FromTo(string low, string high);

    /// <summary>Something that is not known, in a table.</summary>
    public abstract string NotKnown { get; }
}
