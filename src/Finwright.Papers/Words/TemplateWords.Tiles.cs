namespace Finwright.Papers.Words;

/// <content>What the pages say on which templates are tiled.</content>
public abstract partial class TemplateWords
{
    /// <summary>What the paper of templates is called.</summary>
    public abstract string BookTitle { get; }

    /// <summary>Title of the first page.</summary>
    public abstract string MeasureTitle { get; }

    /// <summary>How to print.</summary>
    public abstract string PrintTrue { get; }

    /// <summary>Below the two rulers: what to do with them.</summary>
    public abstract string MeasureBoth { get; }

    /// <summary>Head of a column: which ruler.</summary>
    public abstract string RulerHead { get; }

    /// <summary>Head of a column: what was measured.</summary>
    public abstract string MeasuredHead { get; }

    /// <summary>Head of a column: what to type.</summary>
    public abstract string TypeHead { get; }

    /// <summary>The ruler across the page.</summary>
    public abstract string RulerAcross { get; }

    /// <summary>The ruler down the page.</summary>
    public abstract string RulerDown { get; }

    /// <summary>An example of what to type.</summary>
    public abstract string WhatToType { get; }

    /// <summary>That the printer's scale was put right.</summary>
    /// <param name="across">What the ruler across measured, millimetres.</param>
    /// <param name="down">What the ruler down measured, millimetres.</param>
    public abstract string ScalePutRight(string across, string down);

    /// <summary>Head above the list of templates.</summary>
    public abstract string ListHead { get; }

    /// <summary>Head of a column: the template.</summary>
    public abstract string TemplateHead { get; }

    /// <summary>Head of a column: what it is for.</summary>
    public abstract string UseHead { get; }

    /// <summary>Head of a column: its sheets.</summary>
    public abstract string SheetsHead { get; }

    /// <summary>From one sheet to another.</summary>
    public abstract string SheetsFromTo(string first, string last);

    /// <summary>Head above the maps of sheets.</summary>
    public abstract string AssemblyHead { get; }

    /// <summary>How sheets are joined.</summary>
    public abstract string JoinSheets { get; }

    /// <summary>Place of a sheet.</summary>
    public abstract string RightOf(string sheet);

    /// <summary>Place of a sheet.</summary>
    public abstract string LeftOf(string sheet);

    /// <summary>Place of a sheet.</summary>
    public abstract string BelowSheet(string sheet);

    /// <summary>Place of a sheet.</summary>
    public abstract string AboveSheet(string sheet);
}
