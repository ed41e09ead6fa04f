namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishTemplates
{
    public override string BookTitle => "Templates";

    public override string MeasureTitle => "Measure this first";

    public override string PrintTrue => "Print at 100 % (\"actual size\"), without fitting to the page. Print this page first and leave the others until it is right.";

    public override string MeasureBoth => "Measure both rulers with a steel rule and write down what they measure. Right is 99.8 to 100.2 mm.";

    public override string RulerHead => "Ruler";

    public override string MeasuredHead => "Measured, mm";

    public override string TypeHead => "When it is off, type this and the number";

    public override string RulerAcross => "across";

    public override string RulerDown => "down";

    public override string WhatToType => "When a ruler is off, check the print settings first: off by more than 2 mm, the page was mostly fitted to the paper. Still off: make the papers again with what both rulers measure, for example \"finwright papers my-fin.fin.json --out my-fin-papers --ruler-across-mm 98.5 --ruler-down-mm 99.2\", print this page and measure once more.";

    public override string ScalePutRight(string across, string down) => $"Scale put right for a printer that prints 100 mm as {across} mm across and {down} mm down.";

    public override string ListHead => "Templates";

    public override string TemplateHead => "Template";

    public override string UseHead => "What for";

    public override string SheetsHead => "Sheets";

    public override string SheetsFromTo(string first, string last) => $"{first} to {last}";

    public override string AssemblyHead => "How sheets go together";

    public override string JoinSheets => "Cut along the long dashes; lay the edge on the dots of the neighbour, crosses with the same number on one another.";

    public override string RightOf(string sheet) => $"right of {sheet}";

    public override string LeftOf(string sheet) => $"left of {sheet}";

    public override string BelowSheet(string sheet) => $"below {sheet}";

    public override string AboveSheet(string sheet) => $"above {sheet}";
}
